// Kept list: a list as people keep it: what was read of it, and beside that everything as it was written, so
// that it can be edited and saved without loss.
#pragma once

#include "core/lists/catalogue/catalogue.h"
#include "core/lists/catalogue/entry_places.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// What the bikes of a list are read by.
struct ReadingFacts {
    std::optional<LengthUnit> units; ///< none where the list names none, and then it has no bare numbers
    std::optional<Currency> currency;

    friend bool operator==(const ReadingFacts&, const ReadingFacts&) = default;
};

enum class ListForm { json, table };

/// One entry as it was written. Its number is its place in the list, from 1.
struct ListEntry {
    std::string_view source;                ///< its JSON text; lasts as long as the list
    std::size_t origin = no_origin;         ///< for EntryPlaces
    std::shared_ptr<const std::string> own; ///< what `source` views where it is in no file
};

struct KeptList {
    Catalogue catalogue;
    std::size_t header_notes = 0; ///< how many of the notes, the first ones, are not about entries
    ReadingFacts facts;
    std::vector<ListEntry> entries;
    /// What the file says of itself, without its bikes, as it was written and in that order.
    std::vector<UnknownField> header;
    /// Once the header has been edited: what it was in the file, with the notes on that and their places.
    std::vector<UnknownField> header_in_file;
    std::vector<Problem> header_notes_in_file;
    ListForm form = ListForm::json;
    std::unique_ptr<EntryPlaces> places; ///< in the file that it came from; null where it came from none
    /// What the sources view: the file's text, or that of a table's rows put in JSON.
    std::vector<std::shared_ptr<const std::string>> texts;
};

} // namespace saddlerule
