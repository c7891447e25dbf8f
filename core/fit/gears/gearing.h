// Gearing: what one chainring and one sprocket make of a wheel.
#pragma once

#include "core/base/quantities/length.h"
#include "core/base/quantities/speed.h"
#include "core/fit/bike/wheel.h"

#include <optional>

namespace saddlerule {

/// One gear.
struct Gearing {
    double ratio;       ///< turns of the wheel to one of the crank
    Length development; ///< how far the bike rolls in one turn of the crank
    double gear_inches; ///< wheel diameter in inches times ratio: the older word for the same thing
};

/// How far a wheel rolls in one turn, from its rolling radius.
Length rollout(const Wheel& wheel);

/// Nothing unless both have at least one tooth.
std::optional<Gearing> gearing(int chainring_teeth, int sprocket_teeth, const Wheel& wheel);

/// On the level, pedalling without a pause.
Speed speed_at(const Gearing& gear, double turns_per_minute);

} // namespace saddlerule
