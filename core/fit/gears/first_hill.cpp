#include "core/fit/gears/first_hill.h"

#include <cmath>
#include <numbers>

namespace saddlerule {
namespace {

using namespace first_hill_assumptions;

HillFeel feel_of(double push) {
    if (push <= light_up_to)
        return HillFeel::light;
    return push <= firm_up_to ? HillFeel::firm : HillFeel::heavy;
}

} // namespace

std::optional<FirstHill> first_hill(const Gearing& gear, Length crank, Mass rider, Mass bike) {
    if (!(crank > Length{}) || !(rider > Mass{}) || !(bike > Mass{}))
        return std::nullopt;
    // Work of one turn of the crank: the pedal's way times its mean push is the bike's way times what holds
    // it back. All forces are in units of the rider's weight, so that gravity cancels out.
    const double angle = std::atan(slope);
    const double holds_back =
        (std::sin(angle) + rolling_resistance * std::cos(angle)) * ((rider + bike) / rider);
    const double mean_push = holds_back * (gear.development / (2.0 * std::numbers::pi * crank));
    const double push = peak_over_mean * mean_push;
    return FirstHill{.push = push, .feel = feel_of(push)};
}

} // namespace saddlerule
