#include "core/exchange/side_view_answer.h"

#include "core/exchange/assess_answer.h"
#include "core/exchange/json_writer.h"
#include "core/fit/drawing/leg_turn.h"
#include "core/fit/verdict/saddle_window.h"

namespace saddlerule {
namespace {

void wheel_field(JsonWriter& json, std::string_view name, const WheelOutline& wheel) {
    json.key(name).object([&] {
        field(json, "x", wheel.axle.x);
        field(json, "y", wheel.axle.y);
        field(json, "radius", wheel.radius);
        field(json, "rim", wheel.rim);
    });
}

void tube_field(JsonWriter& json, std::string_view name, const Tube& tube, std::string_view from,
                std::string_view to) {
    json.key(name).object([&] {
        field(json, from, tube.from);
        field(json, to, tube.to);
    });
}

void angle_field(JsonWriter& json, std::string_view name, Angle angle) {
    json.key(name).number(angle.in_degrees(), 1);
}

std::optional<std::string> foot_name(const std::optional<FootOnFloor>& foot) {
    if (!foot)
        return std::nullopt;
    switch (*foot) {
    case FootOnFloor::flat:
        return "flat";
    case FootOnFloor::ball:
        return "ball";
    case FootOnFloor::tiptoe:
        return "tiptoe";
    case FootOnFloor::off_the_floor:
        break;
    }
    return "off_the_floor";
}

void write_pose(JsonWriter& json, const LegPose& pose) {
    json.object([&] {
        angle_field(json, "crank_deg", pose.crank);
        field(json, "hip", pose.hip);
        field(json, "knee", pose.knee);
        field(json, "ankle", pose.ankle);
        field(json, "pedal", pose.pedal);
        angle_field(json, "knee_flexion_deg", pose.knee_flexion);
    });
}

void write_turn(JsonWriter& json, const LegTurn& turn) {
    json.object([&] {
        json.key("poses").array_of(turn.poses, [&](const LegPose& pose) { write_pose(json, pose); });
        angle_field(json, "least_flexion_deg", turn.least_flexion);
        angle_field(json, "greatest_flexion_deg", turn.greatest_flexion);
        field(json, "stature_assumed", turn.stature_assumed);
    });
}

/// Null where there is nothing to turn; `obstacle` where the leg cannot follow the pedal.
void leg_field(JsonWriter& json, const SideView& view, const Rider& rider, Length inseam_in_shoes) {
    json.key("leg");
    const auto drawn = leg_turn(view, rider, inseam_in_shoes);
    if (!drawn)
        json.null();
    else if (const auto* obstacle = std::get_if<LegObstacle>(&*drawn))
        json.object([&] { field(json, "obstacle", name_of(*obstacle)); });
    else
        write_turn(json, *std::get_if<LegTurn>(&*drawn));
}

} // namespace

std::string side_view_answer(const SideView& view, const Rider& rider, Length inseam_in_shoes) {
    JsonWriter json;
    json.object([&] {
        wheel_field(json, "rear_wheel", view.rear_wheel);
        wheel_field(json, "front_wheel", view.front_wheel);
        field(json, "bottom_bracket", view.bottom_bracket);
        field(json, "crank_mm", view.crank);
        tube_field(json, "seat_tube", view.seat_tube, "bottom", "top");
        json.key("saddle").object([&] {
            field(json, "lowest", view.saddle_lowest);
            field(json, "highest", view.saddle_highest);
            field(json, "setting", view.saddle_setting);
        });
        tube_field(json, "head", view.head, "bottom", "top");
        field(json, "grip", view.grip);
        tube_field(json, "top_tube", view.top_tube, "rear", "front");
        field(json, "inseam_mm", inseam_in_shoes);
        field(json, "window_mm", saddle_window(inseam_in_shoes, rider.stage, rider.confidence));
        field(json, "foot", foot_name(view.foot));
        leg_field(json, view, rider, inseam_in_shoes);
        json.key("assumed").array_of(view.assumed, [&](std::string_view name) { json.text(name); });
    });
    return json.take();
}

} // namespace saddlerule
