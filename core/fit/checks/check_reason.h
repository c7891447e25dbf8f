// CheckReason: why a check came out as it did, as a stable code. Whoever shows it words it with the finding's figures; the
// English sentences are in wasm-bindings/english.json.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace saddlerule {

/// In the order of the table in check_reason.cpp.
enum class CheckReason : std::uint8_t {
    figure_missing, ///< of every unknown but the next three
    seat_tube_impossible,
    crank_reaches_floor,
    saddle_below_bottom_bracket,

    standover_clear,
    standover_tight,
    standover_unsettled, ///< the inseam is a guess
    standover_too_high,

    bike_mass_easy,
    bike_mass_noticeable,
    bike_mass_heavy,

    rider_within_limit,
    rider_may_exceed_limit,
    rider_over_limit,

    leg_as_adults,
    leg_bent,
    leg_nearly_straight,
    leg_out_of_reach,
    leg_cannot_fold,

    height_factor_within,
    height_factor_over,
    height_factor_unsettled, ///< the inseam is a guess

    crank_usual,
    crank_short,
    crank_long,
    crank_unsettled, ///< the inseam is a guess

    lever_near,
    lever_far,
    lever_beyond_every_rule,

    brakes_two_systems,
    brakes_two_hands_only,
    brakes_no_front,
    brakes_coaster_only,
    brakes_front_only,
    brakes_rear_hand_only,
    brakes_none,
    brakes_none_on_toy,

    class_toy,
    class_young_children,
    class_at_both,
    class_young_adult,
    class_full_size,

    post_below_top,
    post_near_top,
    post_above_top,

    gears_single,
    gears_one_of_several,

    hill_light,
    hill_firm,
    hill_heavy,
};

/// Its name on the wire.
std::string_view code_of(CheckReason reason);

/// How many there are; the tests walk them all.
std::size_t check_reason_count();

} // namespace saddlerule
