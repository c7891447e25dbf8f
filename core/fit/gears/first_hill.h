// The first hill: how hard a gear pushes back on a gentle climb, against the rider's own weight.
#pragma once

#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/fit/gears/gearing.h"

#include <numbers>
#include <optional>

namespace saddlerule {

/// Assumptions, shown beside every figure made from them.
namespace first_hill_assumptions {
constexpr double slope = 0.05; ///< rise over run: a ramp that a family calls a hill
constexpr double rolling_resistance =
    0.010; ///< of the weight; child's tyres at child's pressure, from memory
/// One leg pushes at a time and its push rises and falls like a half wave, so that the most it gives is pi/2
/// of the mean.
constexpr double peak_over_mean = std::numbers::pi / 2.0;
constexpr double light_up_to = 0.35; ///< pushes seated without thinking about it
constexpr double firm_up_to = 0.60;  ///< above: stands up, or gets off
} // namespace first_hill_assumptions

enum class HillFeel { light, firm, heavy };

struct FirstHill {
    double push; ///< most force at the pedal / rider's weight; 1 is standing on it with everything
    HillFeel feel;
};

/// At a steady crawl: no wind, no acceleration. Nothing unless crank and masses are above zero.
std::optional<FirstHill> first_hill(const Gearing& gear, Length crank, Mass rider, Mass bike);

} // namespace saddlerule
