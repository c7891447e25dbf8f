#include "core/fit/choice/wants.h"

#include <algorithm>
#include <array>

namespace saddlerule {
namespace {

bool has(const std::vector<Brake>& brakes, Brake brake) {
    return std::find(brakes.begin(), brakes.end(), brake) != brakes.end();
}

bool same_word(std::string_view a, std::string_view b) {
    const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [&](char x, char y) { return lower(x) == lower(y); });
}

bool brakes_suit(const std::vector<Brake>& brakes, BrakeWish wish) {
    if (wish == BrakeWish::coaster)
        return has(brakes, Brake::coaster);
    return has(brakes, Brake::front_hand) && has(brakes, Brake::rear_hand);
}

} // namespace

std::string_view name_of(Unwanted reason) {
    constexpr std::array<std::string_view, unwanted_count> names{
        "price_over", "price_unknown", "mass_over", "mass_unknown", "brakes", "brakes_unknown",
        "kind",       "not_available", "wheel",     "colour",       "gears",  "gears_unknown"};
    return names[static_cast<std::size_t>(reason)];
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

    if (wants.brakes != BrakeWish::any && !bike.brakes)
        reasons.push_back(Unwanted::brakes_unknown);
    else if (wants.brakes != BrakeWish::any && !brakes_suit(*bike.brakes, wants.brakes))
        reasons.push_back(Unwanted::brakes);

    const BikeKind wanted_kind = wants.kind == KindWish::balance ? BikeKind::balance : BikeKind::pedal;
    if (wants.kind != KindWish::any && bike.kind != wanted_kind)
        reasons.push_back(Unwanted::kind);

    // A list that does not say whether a bike is there is a list of bikes that are there.
    if (wants.available_only && !bike.available.value_or(true))
        reasons.push_back(Unwanted::not_available);

    if (wants.wheel_nominal_inches &&
        (!bike.wheel || bike.wheel->nominal_inches() != wants.wheel_nominal_inches))
        reasons.push_back(Unwanted::wheel);

    const auto wanted_colour = [&](const std::string& colour) { return same_word(colour, *wants.colour); };
    if (wants.colour && std::none_of(bike.colours.begin(), bike.colours.end(), wanted_colour))
        reasons.push_back(Unwanted::colour);

    if (wants.gears != GearsWish::any && !bike.gears)
        reasons.push_back(Unwanted::gears_unknown);
    else if (wants.gears != GearsWish::any && (*bike.gears > 1) != (wants.gears == GearsWish::several))
        reasons.push_back(Unwanted::gears);
    return reasons;
}

} // namespace saddlerule
