#include "core/fit/choice/wants.h"

#include "core/base/text/ascii_case.h"

#include <algorithm>
#include <array>

namespace saddlerule {
namespace {

bool has(const std::vector<Brake>& brakes, Brake brake) {
    return std::find(brakes.begin(), brakes.end(), brake) != brakes.end();
}

} // namespace

std::string_view name_of(Unwanted reason) {
    constexpr std::array<std::string_view, unwanted_count> names{
        "price_over", "price_unknown", "mass_over", "mass_unknown", "brakes", "brakes_unknown",
        "kind",       "not_available", "wheel",     "colour",       "gears",  "gears_unknown"};
    return names[static_cast<std::size_t>(reason)];
}

Filter filter_of(Unwanted reason) {
    constexpr std::array<Filter, unwanted_count> filters{
        Filter::price, Filter::price,     Filter::mass,  Filter::mass,   Filter::brakes, Filter::brakes,
        Filter::kind,  Filter::available, Filter::wheel, Filter::colour, Filter::gears,  Filter::gears};
    return filters[static_cast<std::size_t>(reason)];
}

bool answers(const Bike& bike, BrakeWish wish) {
    if (wish == BrakeWish::any)
        return true;
    if (!bike.brakes)
        return false;
    if (wish == BrakeWish::coaster)
        return has(*bike.brakes, Brake::coaster);
    return has(*bike.brakes, Brake::front_hand) && has(*bike.brakes, Brake::rear_hand);
}

bool answers(const Bike& bike, KindWish wish) {
    return wish == KindWish::any || (bike.kind == BikeKind::balance) == (wish == KindWish::balance);
}

bool answers(const Bike& bike, GearsWish wish) {
    return wish == GearsWish::any || (bike.gears && (*bike.gears > 1) == (wish == GearsWish::several));
}

bool is_available(const Bike& bike) {
    return bike.available.value_or(true);
}

std::vector<Unwanted> reasons_against(const Bike& bike, const Wants& wants) {
    std::vector<Unwanted> reasons;
    if (wants.max_price && !bike.price)
        reasons.push_back(Unwanted::price_unknown);
    else if (wants.max_price && bike.price->without_currency() > *wants.max_price)
        reasons.push_back(Unwanted::price_over);

    if (wants.max_mass && !bike.mass)
        reasons.push_back(Unwanted::mass_unknown);
    else if (wants.max_mass && *bike.mass > *wants.max_mass)
        reasons.push_back(Unwanted::mass_over);

    if (!answers(bike, wants.brakes))
        reasons.push_back(bike.brakes ? Unwanted::brakes : Unwanted::brakes_unknown);

    if (!answers(bike, wants.kind))
        reasons.push_back(Unwanted::kind);

    if (wants.available_only && !is_available(bike))
        reasons.push_back(Unwanted::not_available);

    if (wants.wheel_nominal_inches &&
        (!bike.wheel || bike.wheel->nominal_inches() != wants.wheel_nominal_inches))
        reasons.push_back(Unwanted::wheel);

    const auto wanted_colour = [&](const std::string& colour) { return is_same_word(colour, *wants.colour); };
    if (wants.colour && std::none_of(bike.colours.begin(), bike.colours.end(), wanted_colour))
        reasons.push_back(Unwanted::colour);

    if (!answers(bike, wants.gears))
        reasons.push_back(bike.gears ? Unwanted::gears : Unwanted::gears_unknown);
    return reasons;
}

} // namespace saddlerule
