#include "core/exchange/catalogue_answer.h"

#include "core/exchange/bike_json.h"
#include "core/exchange/problem_answer.h"

namespace saddlerule {
namespace {

void summary_field(JsonWriter& json, const Catalogue& catalogue) {
    json.key("list").object([&] {
        text_field(json, "title", catalogue.title);
        field(json, "measured_on", catalogue.measured_on);
        field(json, "units", unit_name(catalogue.units));
        text_field(json, "currency", catalogue.currency ? catalogue.currency->code() : std::string_view());
        field(json, "bikes", catalogue.bikes.size());
    });
}

} // namespace

void write(JsonWriter& json, const std::vector<SetAside>& set_aside) {
    json.array_of(set_aside, [&](const SetAside& entry) {
        json.object([&] {
            field(json, "number", entry.number);
            text_field(json, "id", entry.id);
            text_field(json, "name", entry.name);
            problem_fields(json, entry.problem);
            field(json, "source", entry.source);
        });
    });
}

std::string load_answer(const Catalogue& catalogue) {
    JsonWriter json;
    json.object([&] {
        summary_field(json, catalogue);
        field(json, "set_aside", catalogue.set_aside);
        field(json, "notes", catalogue.notes);
    });
    return json.take();
}

std::string load_refusal(const Problem& problem, const std::vector<SetAside>& set_aside) {
    JsonWriter json;
    json.object([&] {
        field(json, "error", problem);
        field(json, "set_aside", set_aside);
    });
    return json.take();
}

std::string list_answer(const Catalogue* catalogue) {
    if (catalogue == nullptr)
        return R"({"list":null,"bikes":[],"set_aside":[],"notes":[]})";
    constexpr std::size_t usual_facts_size = 720;
    JsonWriter json(catalogue->bikes.size() * usual_facts_size);
    json.object([&] {
        summary_field(json, *catalogue);
        json.key("bikes").array_of(catalogue->bikes, [&](const Bike& bike) { write_bike_facts(json, bike); });
        field(json, "set_aside", catalogue->set_aside);
        field(json, "notes", catalogue->notes);
    });
    return json.take();
}

} // namespace saddlerule
