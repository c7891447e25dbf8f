#include "core/exchange/changes_answer.h"

#include "core/exchange/rider_request.h"

namespace saddlerule {
namespace {

Json bike_json(const Bike* bike) {
    return bike ? Json{{"id", bike->id}, {"name", bike->name}} : Json();
}

Json change_json(const ChangedAnswer& change, const Rider& rider) {
    Json json = {{"kind", name_of(change.kind)}};
    switch (change.kind) {
    case ChangeKind::longer_reading:
    case ChangeKind::shorter_reading:
        json["reading_shift_mm"] = to_json(change.supposition.reading_shift);
        break;
    case ChangeKind::next_stage:
        json["stage"] = wire_name(stage_names, stage_after(rider.stage).value_or(rider.stage));
        break;
    case ChangeKind::higher_budget:
    case ChangeKind::lower_budget:
        json["budget"] = rounded(change.supposition.budget->in_main_units(), 3);
        break;
    }
    json["first"] = bike_json(change.first);
    return json;
}

} // namespace

Json changes_answer(const AnswerChanges& changes, const Rider& rider) {
    Json list = Json::array();
    for (const ChangedAnswer& change : changes.changes)
        list.push_back(change_json(change, rider));
    return {{"first", bike_json(changes.first)}, {"changes", std::move(list)}};
}

} // namespace saddlerule
