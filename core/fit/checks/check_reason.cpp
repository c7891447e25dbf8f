#include "core/fit/checks/check_reason.h"

#include <array>

namespace saddlerule {
namespace {

using enum CheckReason;

struct ReasonCode {
    CheckReason reason;
    std::string_view code;
};

constexpr auto codes = std::to_array<ReasonCode>({
    {figure_missing, "figure_missing"},
    {seat_tube_impossible, "seat_tube_impossible"},
    {crank_reaches_floor, "crank_reaches_floor"},
    {saddle_below_bottom_bracket, "saddle_below_bottom_bracket"},
    {standover_clear, "standover_clear"},
    {standover_tight, "standover_tight"},
    {standover_unsettled, "standover_unsettled"},
    {standover_too_high, "standover_too_high"},
    {bike_mass_easy, "bike_mass_easy"},
    {bike_mass_noticeable, "bike_mass_noticeable"},
    {bike_mass_heavy, "bike_mass_heavy"},
    {rider_within_limit, "rider_within_limit"},
    {rider_may_exceed_limit, "rider_may_exceed_limit"},
    {rider_over_limit, "rider_over_limit"},
    {leg_as_adults, "leg_as_adults"},
    {leg_bent, "leg_bent"},
    {leg_nearly_straight, "leg_nearly_straight"},
    {leg_out_of_reach, "leg_out_of_reach"},
    {leg_cannot_fold, "leg_cannot_fold"},
    {height_factor_within, "height_factor_within"},
    {height_factor_over, "height_factor_over"},
    {height_factor_unsettled, "height_factor_unsettled"},
    {crank_usual, "crank_usual"},
    {crank_short, "crank_short"},
    {crank_long, "crank_long"},
    {crank_unsettled, "crank_unsettled"},
    {lever_near, "lever_near"},
    {lever_far, "lever_far"},
    {lever_beyond_every_rule, "lever_beyond_every_rule"},
    {brakes_two_systems, "brakes_two_systems"},
    {brakes_two_hands_only, "brakes_two_hands_only"},
    {brakes_no_front, "brakes_no_front"},
    {brakes_coaster_only, "brakes_coaster_only"},
    {brakes_front_only, "brakes_front_only"},
    {brakes_rear_hand_only, "brakes_rear_hand_only"},
    {brakes_none, "brakes_none"},
    {brakes_none_on_toy, "brakes_none_on_toy"},
    {class_toy, "class_toy"},
    {class_young_children, "class_young_children"},
    {class_at_both, "class_at_both"},
    {class_young_adult, "class_young_adult"},
    {class_full_size, "class_full_size"},
    {post_below_top, "post_below_top"},
    {post_near_top, "post_near_top"},
    {post_above_top, "post_above_top"},
    {gears_single, "gears_single"},
    {gears_one_of_several, "gears_one_of_several"},
    {hill_light, "hill_light"},
    {hill_firm, "hill_firm"},
    {hill_heavy, "hill_heavy"},
});

/// The table is indexed by reason, so its rows must stand in the order of the enumeration.
constexpr bool rows_in_order() {
    for (std::size_t i = 0; i < codes.size(); ++i) {
        if (static_cast<std::size_t>(codes[i].reason) != i)
            return false;
    }
    return true;
}
static_assert(rows_in_order());

} // namespace

std::string_view code_of(CheckReason reason) {
    return codes[static_cast<std::size_t>(reason)].code;
}

std::size_t check_reason_count() {
    return codes.size();
}

} // namespace saddlerule
