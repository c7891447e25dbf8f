#include "core/fit/choice/rider_today.h"

#include "core/fit/growth/growth_reference.h"

#include <algorithm>

namespace saddlerule {
namespace {

/// The reference median for everything the rider may be, by how likely it is.
Mass median_mass(const RiderGrowth& growth) {
    double kilograms = 0.0;
    for (const GrowthHypothesis& child : growth.hypotheses())
        kilograms += child.weight * weight_reference(child.sex, child.age_today).median.in_kilograms();
    return Mass::kilograms(kilograms);
}

/// A reading that says less than this of today, because it is old, counts as a guess: twice the error of a home reading
/// (design choice).
constexpr Length least_measured = 2.0 * ReadingAccuracy().reading_sd;

} // namespace

RiderToday::RiderToday(const Rider& rider, CalendarDate today, bool off_road)
    : stage_(rider.stage), offsets_(window_offsets(rider.stage, rider.confidence)),
      growth_(RiderGrowth::of(rider, today)), inseam_(growth_.today()) {
    if (!rider.mass)
        assumed_mass_ = median_mass(growth_);
    const auto estimated = assumed_mass_ ? std::optional(EstimatedMass{*assumed_mass_}) : std::nullopt;
    checked_ = CheckedRider::of(rider, inseam_.mean, estimated);
    if (inseam_.basis != InseamBasis::measured || inseam_.sd > least_measured)
        checked_.guessed_inseam_sd = inseam_.sd;
    checked_.off_road = off_road;
}

void RiderToday::check(const Bike& bike, const Fit& fit, std::vector<CheckResult>& results) const {
    const auto setting = fit.setting ? std::optional(fit.setting->above_floor) : std::nullopt;
    check_bike({.rider = checked_, .bike = bike, .saddle_setting = setting}, results);
}

CheckCounts counts_of(const std::vector<CheckResult>& checks) {
    const auto in_state = [&](CheckState state) {
        return static_cast<int>(std::count_if(checks.begin(), checks.end(), [&](const CheckResult& result) {
            return result.finding.state == state;
        }));
    };
    return {.stops = in_state(CheckState::stop), .looks = in_state(CheckState::look)};
}

} // namespace saddlerule
