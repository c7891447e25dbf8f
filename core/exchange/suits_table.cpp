#include "core/exchange/suits_table.h"

#include "core/base/outcomes/figure_text.h"
#include "core/exchange/bike_json.h"
#include "core/exchange/rider_request.h"
#include "core/lists/table/spreadsheet_guard.h"
#include "core/lists/table/table_writing.h"
#include "core/planning/suits/typical_years.h"

#include <optional>

namespace saddlerule {
namespace {

class SuitsTable {
public:
    SuitsTable() {
        for (const char* name : {"id", "name", "wheel_in", "saddle_lowest_mm", "saddle_highest_mm"})
            add(name);
        for (const Stage stage : every_stage) {
            for (const char* what : {"_from_mm", "_to_mm", "_age_from", "_age_to"})
                add(std::string(wire_name(stage_names, stage)) + what);
        }
        end_row();
    }

    void add_row(const BikeSuits& one) {
        const Bike& bike = *one.bike;
        add(with_guard(bike.id));
        add(with_guard(bike.name));
        const auto inches = nominal_inches(bike.wheel);
        add(inches ? figure_text(*inches) : "");
        add_length(bike.saddle_lowest);
        add_length(bike.saddle_highest);
        for (const auto& range : one.stages) {
            const InseamRange legs = range.value_or(InseamRange{});
            const YearRange years = range ? years_.of(legs.from, legs.to) : YearRange{};
            add_length(legs.from);
            add_length(legs.to);
            add(years.from ? std::to_string(*years.from) : "");
            add(years.to ? std::to_string(*years.to) : "");
        }
        end_row();
    }

    std::string take() { return std::move(table_); }

private:
    void add(const std::string& cell) {
        if (!at_start_)
            table_ += ',';
        at_start_ = false;
        append_table_cell(table_, cell, ',');
    }

    void add_length(const std::optional<Length>& length) {
        add(length ? figure_text(length->in_millimetres(), 1) : "");
    }

    void end_row() {
        table_ += table_line_end;
        at_start_ = true;
    }

    TypicalYears years_;
    std::string table_;
    bool at_start_ = true;
};

} // namespace

std::string suits_table(std::span<const BikeSuits> bikes) {
    SuitsTable table;
    for (const BikeSuits& one : bikes)
        table.add_row(one);
    return table.take();
}

} // namespace saddlerule
