// Table places: rows and named columns of what is in a list in a table.
#pragma once

#include "core/lists/catalogue/entry_places.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace saddlerule {

/// The origin of an entry is its row.
class TablePlaces : public EntryPlaces {
public:
    using Names = std::vector<std::pair<std::string, std::string>>;
    using Rows = std::vector<std::pair<std::string, std::size_t>>;

    /// `headings` are the columns' headings by the fields' names, `header_rows` the rows in which the list
    /// says something of itself by the names of that.
    TablePlaces(Names headings, Rows header_rows)
        : headings_(std::move(headings)), header_rows_(std::move(header_rows)) {}

    void place_in_entry(Problem& problem, std::size_t origin, std::size_t /*offset*/,
                        std::string_view field) override {
        const std::string heading = found(headings_, field);
        problem.cell = CellPlace{.row = origin, .column_name = heading};
        for (auto& [name, figure] : problem.figures) {
            if (name == "field" && !heading.empty())
                figure = heading;
        }
    }
    void place_in_header(Problem& problem, std::size_t /*offset*/, std::string_view field) override {
        if (const std::size_t row = found(header_rows_, field))
            problem.cell = CellPlace{.row = row, .column_name = {}};
    }

private:
    template <typename Value>
    static Value found(const std::vector<std::pair<std::string, Value>>& places, std::string_view name) {
        // Of a name that comes twice the second one is the fault.
        const auto place = std::find_if(places.rbegin(), places.rend(),
                                        [&](const auto& candidate) { return candidate.first == name; });
        return place == places.rend() ? Value() : place->second;
    }

    Names headings_;
    Rows header_rows_;
};

} // namespace saddlerule
