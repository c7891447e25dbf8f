// The leg over a full turn of the crank, ready to draw beside the side view.
#pragma once

#include "core/base/quantities/length.h"
#include "core/fit/drawing/side_view.h"
#include "core/fit/leg/leg_linkage.h"
#include "core/fit/rider/rider.h"

#include <optional>
#include <variant>
#include <vector>

namespace saddlerule {

struct LegTurn {
    std::vector<LegPose>
        poses; ///< even steps through one turn, the first with the pedal on top; `x` from the rear axle
    Angle least_flexion;
    Angle greatest_flexion;
    bool stature_assumed = false; ///< taken from the inseam, since nobody gave it
};

/// How many poses a turn is drawn with: one every five degrees.
constexpr int poses_in_a_turn = 72;

/// Nothing for a bike without cranks or without a setting; the obstacle where the leg cannot follow the
/// pedal. Uses what the side view uses, assumed figures included, so that leg and bike meet in the picture.
std::optional<std::variant<LegTurn, LegObstacle>> leg_turn(const SideView& view, const Rider& rider,
                                                           Length inseam_in_shoes);

} // namespace saddlerule
