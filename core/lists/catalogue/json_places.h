// JSON places: lines and columns of what is in a list in JSON.
#pragma once

#include "core/base/text/text_position.h"
#include "core/lists/catalogue/entry_places.h"

namespace saddlerule {

/// The origin of an entry is where it begins in the text.
class JsonPlaces : public EntryPlaces {
public:
    /// In `text`, which must outlive this.
    explicit JsonPlaces(std::string_view text) : positions_(text) {}

    void place_in_entry(Problem& problem, std::size_t origin, std::size_t offset,
                        std::string_view /*field*/) override {
        problem.position = positions_.at(origin + offset);
    }
    void place_in_header(Problem& problem, std::size_t offset, std::string_view /*field*/) override {
        problem.position = positions_.at(offset);
    }

private:
    TextPositions positions_;
};

} // namespace saddlerule
