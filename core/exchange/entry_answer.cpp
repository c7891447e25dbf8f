#include "core/exchange/entry_answer.h"

#include "core/base/outcomes/figure_text.h"
#include "core/exchange/bike_json.h"
#include "core/exchange/list_view.h"
#include "core/exchange/problem_answer.h"
#include "core/lists/catalogue/bike_reader.h"
#include "core/lists/catalogue/list_judgement.h"
#include "core/lists/keeping/free_ids.h"
#include "core/lists/keeping/list_slips.h"

#include <algorithm>

namespace saddlerule {
namespace {

void judgement_fields(JsonWriter& json, const Bike* bike, const Problem* problem,
                      const std::vector<Slip>& slips, std::size_t number) {
    json.key("bike");
    if (bike)
        write_bike_facts(json, *bike);
    else
        json.null();
    json.key("problem");
    if (problem)
        write(json, *problem);
    else
        json.null();
    json.key("slips");
    write_slips(json, slips, number);
}

/// The id as the entry has it; a bike without one is called by its name.
std::string id_cell(const KeptList& list, std::string_view source) {
    const auto entry = read_entry(source);
    return entry ? cell_of(*entry, source, "id", cell_context(list.facts)) : std::string();
}

} // namespace

std::string entry_answer(const KeptList& list, std::size_t number, bool with_next_id) {
    const JudgedEntry entry = judged_entry(list.catalogue, number);
    const std::string_view source = list.entries[number - 1].source;
    SlipFinder finder(list);
    JsonWriter json;
    json.object([&] {
        field(json, "number", number);
        text_field(json, "id", entry.id());
        if (with_next_id)
            text_field(json, "next_id", FreeIds(list).after(id_cell(list, source)));
        text_field(json, "name", entry.name());
        cells_field(json, list, source);
        judgement_fields(json, entry.bike, entry.set_aside ? &entry.set_aside->problem : nullptr,
                         finder.slips_of(number), number);
        field(json, "source", source);
    });
    return json.take();
}

std::string check_entry_answer(const KeptList& list, std::size_t number, std::span<const FieldCell> cells) {
    const std::string_view before = number == 0 ? std::string_view("{}") : list.entries[number - 1].source;
    const std::string source = entry_with(before, cells, cell_context(list.facts));
    const auto value = read_entry(source);
    auto bike = value ? read_bike(*value, {.text = source,
                                           .units = list.facts.units,
                                           .currency = list.facts.currency,
                                           .places = nullptr,
                                           .origin = no_origin})
                      : value.problem();
    const Bike* replaced = number == 0 ? nullptr : judged_entry(list.catalogue, number).bike;
    std::optional<Problem> problem;
    if (!bike) {
        problem = bike.problem();
    } else if (bike->id.empty()) {
        bike.value().id = bike->name;
    } else if (std::any_of(list.catalogue.bikes.begin(), list.catalogue.bikes.end(), [&](const Bike& other) {
                   return &other != replaced && !other.id_from_name && other.id == bike->id;
               })) {
        problem = Problem{.code = ProblemCode::bike_id_given_twice,
                          .figures = {{"id", excerpt(bike->id)}},
                          .where = "id",
                          .position = {},
                          .cell = {}};
    }
    SlipFinder finder(list);
    JsonWriter json;
    json.object([&] {
        const Bike* usable = problem ? nullptr : &*bike;
        judgement_fields(json, usable, problem ? &*problem : nullptr,
                         finder.slips_of({.source = source,
                                          .bike = usable,
                                          .problem = problem ? &*problem : nullptr,
                                          .replaced = replaced}),
                         number);
    });
    return json.take();
}

std::size_t number_of_id(const Catalogue& catalogue, const std::string& id) {
    const auto has_id = [&](const auto& entry) { return entry.id == id; };
    const auto bike = std::find_if(catalogue.bikes.begin(), catalogue.bikes.end(), has_id);
    if (bike != catalogue.bikes.end())
        return number_of_bike(catalogue, static_cast<std::size_t>(bike - catalogue.bikes.begin()));
    const auto aside = std::find_if(catalogue.set_aside.begin(), catalogue.set_aside.end(), has_id);
    return aside == catalogue.set_aside.end() ? 0 : aside->number;
}

void cells_field(JsonWriter& json, const KeptList& list, std::string_view source) {
    json.key("cells").object([&] {
        const auto entry = read_entry(source);
        if (!entry)
            return;
        for (const FieldCell& cell : cells_of(*entry, source, cell_context(list.facts)))
            json.any_key(cell.name).text(cell.cell);
    });
}

} // namespace saddlerule
