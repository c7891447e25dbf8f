#include "core/exchange/bike_json.h"

namespace saddlerule {
namespace {

template <typename Value>
Json plain_or_null(const std::optional<Value>& value) {
    return value ? Json(*value) : Json();
}

std::string_view brake_name(Brake brake) {
    switch (brake) {
    case Brake::front_hand:
        return "front hand";
    case Brake::rear_hand:
        return "rear hand";
    case Brake::coaster:
        break;
    }
    return "coaster";
}

Json brakes_json(const std::optional<std::vector<Brake>>& brakes) {
    if (!brakes)
        return {};
    Json list = Json::array();
    for (const Brake brake : *brakes)
        list.push_back(brake_name(brake));
    return list;
}

Json wheel_json(const std::optional<Wheel>& wheel) {
    if (!wheel)
        return {};
    return {{"text", wheel->text()},
            {"nominal_in", nominal_json(wheel)},
            {"bead_seat_mm", to_json(wheel->bead_seat())},
            {"tyre_mm", to_json(wheel->tyre_width())}};
}

} // namespace

std::string_view kind_name(BikeKind kind) {
    return kind == BikeKind::balance ? "balance" : "pedal";
}

Json price_json(const std::optional<Money>& price) {
    return price ? rounded(price->in_main_units(), 3) : Json();
}

Json currency_json(const std::optional<Money>& price) {
    return price ? Json(price->currency().code()) : Json();
}

Json nominal_json(const std::optional<Wheel>& wheel) {
    if (!wheel || !wheel->nominal_inches())
        return {};
    return rounded(*wheel->nominal_inches(), 1);
}

Json bike_facts(const Bike& bike) {
    return {{"id", bike.id},
            {"name", bike.name},
            {"kind", kind_name(bike.kind)},
            {"wheel", wheel_json(bike.wheel)},
            {"saddle_lowest_mm", to_json(bike.saddle_lowest)},
            {"saddle_highest_mm", to_json(bike.saddle_highest)},
            {"standover_mm", to_json(bike.standover)},
            {"lever_reach_mm", to_json(bike.lever_reach)},
            {"crank_mm", to_json(bike.crank)},
            {"bottom_bracket_height_mm", to_json(bike.bottom_bracket_height)},
            {"seat_tube_angle_deg",
             bike.seat_tube_angle_degrees ? rounded(*bike.seat_tube_angle_degrees, 2) : Json()},
            {"mass_kg", to_json(bike.mass)},
            {"rider_mass_limit_kg", to_json(bike.rider_mass_limit)},
            {"brakes", brakes_json(bike.brakes)},
            {"gears", plain_or_null(bike.gears)},
            {"chainring", plain_or_null(bike.chainring)},
            {"sprocket", plain_or_null(bike.sprocket)},
            {"price", price_json(bike.price)},
            {"currency", currency_json(bike.price)},
            {"colours", bike.colours},
            {"condition", text_or_null(bike.condition)},
            {"available", plain_or_null(bike.available)},
            {"notes", text_or_null(bike.notes)}};
}

} // namespace saddlerule
