#include "core/exchange/taped_bikes.h"

#include "core/lists/catalogue/bike_ids.h"
#include "core/lists/catalogue/bike_reader.h"
#include "core/lists/keeping/list_slips.h"

#include <algorithm>

namespace saddlerule {
namespace {

bool holds_id(const std::vector<Bike>& bikes, const std::string& id) {
    return std::any_of(bikes.begin(), bikes.end(), [&](const Bike& bike) { return bike.id == id; });
}

/// Whether the id is taken, by the list or by an earlier taped bike.
bool is_taken(const std::string& id, const TapedBikes& taped, const Catalogue* list) {
    return !id.empty() && (holds_id(taped.bikes, id) || (list != nullptr && holds_id(list->bikes, id)));
}

} // namespace

TapedBikes taped_bikes(RequestFields& fields, std::string_view request_text, const Catalogue* list) {
    TapedBikes taped;
    const auto units = fields.optional_choice("taped_units", typing_units);
    const JsonValue* entries = fields.optional("taped");
    if (entries == nullptr)
        return taped;
    if (entries->kind != JsonValue::Kind::array) {
        fields.report("taped", ProblemCode::request_field_wrong_type,
                      {{"found", entries->kind_name()}, {"kind", ProblemWord::list_of_bikes}});
        return taped;
    }
    const BikeContext context{.text = request_text,
                              .units = units.value_or(LengthUnit::centimetre),
                              .currency = list != nullptr ? list->currency : std::nullopt,
                              .places = nullptr,
                              .origin = no_origin};
    KeptList by_themselves; // what their figures count in; no list that they are compared with
    by_themselves.facts = {.units = context.units, .currency = context.currency};
    SlipFinder slips(by_themselves);
    for (std::size_t i = 0; i < entries->items.size(); ++i) {
        const JsonValue& entry = entries->items[i];
        const std::string path = fields.path_of("taped[" + std::to_string(i) + "]");
        const auto put_aside = [&](Problem problem) {
            taped.set_aside.push_back(
                set_aside_entry(entry, i + 1, std::move(problem).within(path), request_text));
        };
        auto bike = read_bike(entry, context);
        if (!bike)
            put_aside(std::move(bike).problem());
        else if (is_taken(bike->id, taped, list))
            put_aside({.code = ProblemCode::bike_id_given_twice,
                       .figures = {{"id", bike->id}},
                       .where = "id",
                       .position = {}});
        else {
            std::vector<Problem>& notes = taped.notes.emplace_back();
            for (Slip& slip : slips.slips_of({.source = entry.written_in(request_text), .bike = &*bike}))
                notes.push_back(std::move(slip.problem).within(path));
            taped.bikes.push_back(std::move(bike).value());
        }
    }
    give_missing_ids(taped.bikes);
    return taped;
}

} // namespace saddlerule
