#include "core/exchange/side_view_answer.h"

#include "core/drawing/leg_turn.h"
#include "core/fit/saddle_window.h"

namespace saddlerule {
namespace {

Json point_json(const PlanePoint& point) {
    return {{"x", to_json(point.x)}, {"y", to_json(point.y)}};
}

Json point_json(const std::optional<PlanePoint>& point) {
    return point ? point_json(*point) : Json();
}

Json wheel_outline_json(const WheelOutline& wheel) {
    Json json = point_json(wheel.axle);
    json["radius"] = to_json(wheel.radius);
    json["rim"] = to_json(wheel.rim);
    return json;
}

Json tube_json(const Tube& tube, const char* from, const char* to) {
    return {{from, point_json(tube.from)}, {to, point_json(tube.to)}};
}

Json foot_json(const std::optional<FootOnFloor>& foot) {
    if (!foot)
        return {};
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

Json pose_json(const LegPose& pose) {
    return {{"crank_deg", rounded(pose.crank.in_degrees(), 1)},
            {"hip", point_json(pose.hip)},
            {"knee", point_json(pose.knee)},
            {"ankle", point_json(pose.ankle)},
            {"pedal", point_json(pose.pedal)},
            {"knee_flexion_deg", rounded(pose.knee_flexion.in_degrees(), 1)}};
}

/// Null where there is nothing to turn; `obstacle` where the leg cannot follow the pedal.
Json leg_json(const SideView& view, const Rider& rider, Length inseam_in_shoes) {
    const auto drawn = leg_turn(view, rider, inseam_in_shoes);
    if (!drawn)
        return {};
    if (const auto* obstacle = std::get_if<LegObstacle>(&*drawn))
        return {{"obstacle", name_of(*obstacle)}};
    const LegTurn& turn = std::get<LegTurn>(*drawn);
    Json poses = Json::array();
    for (const LegPose& pose : turn.poses)
        poses.push_back(pose_json(pose));
    return {{"poses", std::move(poses)},
            {"least_flexion_deg", rounded(turn.least_flexion.in_degrees(), 1)},
            {"greatest_flexion_deg", rounded(turn.greatest_flexion.in_degrees(), 1)},
            {"stature_assumed", turn.stature_assumed}};
}

} // namespace

Json side_view_answer(const SideView& view, const Rider& rider, Length inseam_in_shoes) {
    const SaddleWindow window = saddle_window(inseam_in_shoes, rider.stage, rider.confidence);
    return {{"rear_wheel", wheel_outline_json(view.rear_wheel)},
            {"front_wheel", wheel_outline_json(view.front_wheel)},
            {"bottom_bracket", point_json(view.bottom_bracket)},
            {"crank_mm", to_json(view.crank)},
            {"seat_tube", tube_json(view.seat_tube, "bottom", "top")},
            {"saddle",
             {{"lowest", point_json(view.saddle_lowest)},
              {"highest", point_json(view.saddle_highest)},
              {"setting", point_json(view.saddle_setting)}}},
            {"head", tube_json(view.head, "bottom", "top")},
            {"grip", point_json(view.grip)},
            {"top_tube", tube_json(view.top_tube, "rear", "front")},
            {"inseam_mm", to_json(inseam_in_shoes)},
            {"window_mm",
             {{"low", to_json(window.range.low())},
              {"target", to_json(window.target)},
              {"high", to_json(window.range.high())}}},
            {"foot", foot_json(view.foot)},
            {"leg", leg_json(view, rider, inseam_in_shoes)},
            {"assumed", view.assumed}};
}

} // namespace saddlerule
