#include "core/exchange/side_view_answer.h"

namespace saddlerule {
namespace {

Json point_json(const Point& point) {
    return {{"x", to_json(point.x)}, {"y", to_json(point.y)}};
}

Json point_json(const std::optional<Point>& point) {
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

} // namespace

Json side_view_answer(const SideView& view, Length inseam_in_shoes, const SaddleWindow& window) {
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
            {"assumed", view.assumed}};
}

} // namespace saddlerule
