#include "core/exchange/changes_answer.h"

#include "core/exchange/json_writer.h"
#include "core/exchange/rider_request.h"

namespace saddlerule {
namespace {

void first_field(JsonWriter& json, const Bike* bike) {
    json.key("first");
    if (bike == nullptr) {
        json.null();
        return;
    }
    json.object([&] {
        field(json, "id", bike->id);
        field(json, "name", bike->name);
    });
}

void write_change(JsonWriter& json, const ChangedAnswer& change, const Rider& rider) {
    json.object([&] {
        field(json, "kind", name_of(change.kind));
        switch (change.kind) {
        case ChangeKind::longer_reading:
        case ChangeKind::shorter_reading:
            field(json, "reading_shift_mm", change.supposition.reading_shift);
            break;
        case ChangeKind::next_stage:
            field(json, "stage", wire_name(stage_names, stage_after(rider.stage).value_or(rider.stage)));
            break;
        case ChangeKind::higher_budget:
        case ChangeKind::lower_budget:
            json.key("budget").number(change.supposition.budget->in_main_units(), 3);
            break;
        }
        first_field(json, change.first);
    });
}

} // namespace

std::string changes_answer(const AnswerChanges& changes, const Rider& rider) {
    JsonWriter json;
    json.object([&] {
        first_field(json, changes.first);
        json.key("changes").array_of(changes.changes,
                                     [&](const ChangedAnswer& change) { write_change(json, change, rider); });
    });
    return json.take();
}

} // namespace saddlerule
