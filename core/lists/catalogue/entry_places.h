// Entry places: where the parts of a list are in the file that it came from, so that a problem can be shown
// there.
#pragma once

#include "core/base/outcomes/problem.h"

#include <cstddef>
#include <string_view>

namespace saddlerule {

/// Each form of a list has its own: lines and columns in JSON, rows and named columns in a table.
class EntryPlaces {
public:
    EntryPlaces() = default;
    EntryPlaces(const EntryPlaces&) = delete;
    EntryPlaces& operator=(const EntryPlaces&) = delete;
    virtual ~EntryPlaces() = default;

    /// Tells `problem` where it is. `origin` is what the reader gave for the entry, `offset` counts the
    /// bytes behind the beginning of the entry's text, `field` is empty for the entry as a whole.
    virtual void place_in_entry(Problem& problem, std::size_t origin, std::size_t offset,
                                std::string_view field) = 0;

    /// The same for what a list says of itself; `offset` is that in the header's text.
    virtual void place_in_header(Problem& problem, std::size_t offset, std::string_view field) = 0;
};

/// The origin of an entry that came from no file.
constexpr std::size_t no_origin = static_cast<std::size_t>(-1);

} // namespace saddlerule
