// Catalogue builder: from the entries of a file, whatever form it has, to a kept list. Readers of files hand
// over one entry after the other.
#pragma once

#include "core/base/json/located_json.h"
#include "core/base/outcomes/result.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/catalogue/list_header.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace saddlerule {

class CatalogueBuilder {
public:
    /// `places` is the file's; the list takes it over.
    explicit CatalogueBuilder(std::unique_ptr<EntryPlaces> places);

    EntryPlaces& places() { return *list_.places; }
    KeptList& list() { return list_; }

    /// What the bikes that follow are read by. Called once before the first of them.
    void read_by(const ReadingFacts& facts);

    /// Judges the next entry. `text` is what it was read from; the entry's part of it has to last as long as
    /// the list (see KeptList::texts). `origin` is for EntryPlaces, and not no_origin; `fields` are as for
    /// judge_entry().
    void take(const JsonValue& entry, std::string_view text, std::size_t origin,
              std::span<const CatalogueField* const> fields = {});

    std::size_t count() const { return count_; }
    /// The refusal of a list that has more bikes than it may.
    std::optional<Problem> too_many();

    /// Forgets the entries, so that they can be read again by other facts.
    void start_again();

    /// The list, with ids for all its bikes and notes on what came up. Call take_header before. A list of
    /// which nothing can be used is refused unless it is to be mended, and what was set aside in it goes to `refused`, where that is
    /// given.
    Result<KeptList> finish(std::vector<SetAside>* refused, bool to_mend);

private:
    KeptList list_;
    std::size_t count_ = 0;
    std::size_t first_too_many_ = no_origin;
};

} // namespace saddlerule
