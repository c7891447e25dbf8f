#include "core/exchange/read_riders_answer.h"

#include "core/exchange/json_writer.h"
#include "core/exchange/problem_answer.h"
#include "core/exchange/rider_request.h"
#include "core/planning/club/rider_table.h"

namespace saddlerule {
namespace {

/// In the form in which requests take a rider.
void write_read_rider(JsonWriter& json, const TableRider& one) {
    const Rider& rider = one.rider;
    json.object([&] {
        json.key("readings").array_of(rider.readings, [&](const Reading& reading) {
            json.object([&] {
                field(json, "on", reading.on);
                field(json, "inseam_mm", reading.inseam);
                field(json, "shoes", reading.shoes);
            });
        });
        field(json, "born", rider.born);
        field(json, "stature_mm", rider.stature);
        field(json, "mass_kg", rider.mass);
        json.key("stage");
        if (one.stage_said)
            json.text(wire_name(stage_names, rider.stage));
        else
            json.null();
    });
}

void write_read_row(JsonWriter& json, const TableRider& one) {
    json.object([&] {
        field(json, "row", one.row);
        field(json, "id", one.id);
        field(json, "measured", one.measured);
        json.key("cells").object([&] {
            for (std::size_t i = 0; i < rider_columns; ++i)
                field(json, name_of(static_cast<RiderColumn>(i)), one.cells[i]);
        });
        json.key("rider");
        write_read_rider(json, one);
        field(json, "problems", one.problems);
    });
}

} // namespace

std::string read_riders(RequestFields& fields) {
    const CalendarDate today = fields.required_day("today");
    const auto text = fields.optional_text("text");
    fields.require(text.has_value(), "text", ProblemWord::rider_table);
    const LengthUnit units = fields.optional_choice("units", typing_units).value_or(LengthUnit::centimetre);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    const auto table = read_rider_table(*text, units, today);
    if (!table)
        return error_answer(table.problem());
    JsonWriter json;
    json.object([&] {
        json.key("riders").array_of(table->riders, [&](const TableRider& one) { write_read_row(json, one); });
        field(json, "set_aside", table->set_aside);
        json.key("columns").array_of(table->columns, [&](RiderColumn column) { json.text(name_of(column)); });
        json.key("unknown_columns").array_of(table->unknown_columns, [&](const std::string& name) {
            json.text(name);
        });
        field(json, "heading_row", table->heading_row);
    });
    return json.take();
}

std::string write_riders(RequestFields& fields) {
    const JsonValue* given = fields.optional("riders");
    fields.require(given != nullptr, "riders", ProblemWord::list_of_riders);
    std::vector<RiderCells> rows;
    const auto items = fields.optional_list("riders", ProblemWord::list_of_riders);
    for (std::size_t i = 0; i < items.size(); ++i) {
        RequestFields cells(items[i], fields.path_of(with_index("riders", i)));
        RiderCells& row = rows.emplace_back();
        for (std::size_t column = 0; column < rider_columns; ++column)
            row[column] = cells.optional_text(name_of(static_cast<RiderColumn>(column))).value_or("");
        if (auto problem = cells.finish())
            fields.report(std::move(*problem));
    }
    if (auto problem = fields.finish())
        return error_answer(*problem);
    JsonWriter json;
    json.object([&] { field(json, "text", write_rider_table(rows)); });
    return json.take();
}

} // namespace saddlerule
