#include "core/exchange/catalogue_answer.h"

#include "core/exchange/bike_json.h"
#include "core/exchange/list_view.h"
#include "core/exchange/problem_answer.h"

namespace saddlerule {

void write_set_aside(JsonWriter& json, const SetAside& entry) {
    json.object([&] {
        field(json, "number", entry.number);
        text_field(json, "id", entry.id);
        text_field(json, "name", entry.name);
        problem_fields(json, entry.problem);
        field(json, "source", entry.source);
    });
}

void write(JsonWriter& json, const std::vector<SetAside>& set_aside) {
    json.array_of(set_aside, [&](const SetAside& entry) { write_set_aside(json, entry); });
}

void table_field(JsonWriter& json, const TableSketch* table) {
    if (!table)
        return;
    json.key("table").object([&] {
        field(json, "heading_row", table->heading_row);
        json.key("columns").array_of(table->columns, [&](const SketchedColumn& column) {
            json.object([&] {
                field(json, "heading", column.heading);
                json.key("field");
                if (column.field)
                    json.text(column.field->name);
                else
                    json.null();
                field(json, "values", column.values);
            });
        });
    });
}

std::string load_answer(const KeptList& list, const TableSketch* table) {
    JsonWriter json;
    json.object([&] {
        list_summary_field(json, list);
        field(json, "set_aside", list.catalogue.set_aside);
        field(json, "notes", list.catalogue.notes);
        table_field(json, table);
    });
    return json.take();
}

std::string load_refusal(const Problem& problem, const std::vector<SetAside>& set_aside,
                         const TableSketch* table) {
    JsonWriter json;
    json.object([&] {
        field(json, "error", problem);
        field(json, "set_aside", set_aside);
        table_field(json, table);
    });
    return json.take();
}

std::string list_answer(const KeptList* list, const std::vector<SlipMark>& slips) {
    constexpr std::size_t usual_facts_size = 720;
    const KeptList none;
    const KeptList& shown = list ? *list : none;
    const Catalogue& catalogue = shown.catalogue;
    JsonWriter json(catalogue.bikes.size() * usual_facts_size);
    json.object([&] {
        if (list)
            list_summary_field(json, *list);
        else
            json.key("list").null();
        list_counts_field(json, shown, slips, std::nullopt);
        list_offers_field(json, shown);
        json.key("bikes").array_of(catalogue.bikes, [&](const Bike& bike) { write_bike_facts(json, bike); });
        field(json, "set_aside", catalogue.set_aside);
        field(json, "notes", catalogue.notes);
    });
    return json.take();
}

} // namespace saddlerule
