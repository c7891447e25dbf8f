// LegFigures: what bike and rider bring to the leg linkage, and whether the figures can be true together.
#pragma once

#include "core/base/quantities/angle.h"
#include "core/base/quantities/length.h"

#include <optional>
#include <string_view>

namespace saddlerule {

struct LegFigures {
    Length saddle_height; ///< floor to the top of the saddle, at its setting
    Length bottom_bracket_height;
    Length crank;
    Angle seat_tube; ///< from the horizontal, open to the front: 70 to 75 degrees on most bikes
    Length stature;
    Length inseam; ///< without shoes
    Length sole;   ///< thickness under the foot; zero for bare feet
};

/// Why there is no linkage. The first three are contradictions: one of the figures was taken wrongly.
enum class LegObstacle {
    figure_impossible,           ///< zero, negative, not a number, or a seat tube outside 30 to 100 degrees
    crank_reaches_floor,         ///< the crank is at least as long as the bottom bracket is high
    saddle_below_bottom_bracket, ///< there is no seat tube to sit on
    pedal_out_of_reach,          ///< a straight leg is too short for part of the turn
    leg_cannot_fold,             ///< the pedal comes closer to the hip than a folded leg is long
};

/// Its stable name: `pedal_out_of_reach`.
std::string_view name_of(LegObstacle obstacle);

/// One of the first three, if any holds.
std::optional<LegObstacle> contradiction_in(const LegFigures& figures);

/// Top of the saddle to the pedal axle along the seat tube, with the pedal down: what Hamley and Thomas 1967
/// set at 1.09 times the inseam of adults. Only where nothing contradicts.
Length saddle_to_pedal(const LegFigures& figures);

} // namespace saddlerule
