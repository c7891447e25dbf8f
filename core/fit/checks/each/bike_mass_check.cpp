// Bike mass: whether the rider can handle the weight of the bike.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"

namespace saddlerule {

std::optional<Finding> each_check::bike_mass(const CheckCase& checked) {
    const auto bike = taken(checked.bike.mass);
    const auto rider = mass_of(checked.rider);
    MeasureSet missing;
    if (!bike)
        missing.add(Measure::bike_mass);
    if (!rider)
        missing.add(Measure::rider_mass);
    if (!missing.empty())
        return to_be_measured(missing);

    const double share = *bike / rider->mass;
    Finding finding;
    finding.basis = rider->basis;
    finding.figure = Figure::ratio(share);
    finding.limit.at_most = Figure::ratio(limits::bike_mass_look.value);
    finding.further = {{{"bike", *bike}, {"rider", rider->mass}}};
    // An estimate cannot say stop where a child merely heavier than the median could manage the bike.
    const bool weighed = rider->basis == FindingBasis::measured;
    const double least_share = weighed ? share : share / limits::estimated_mass_margin.value;
    if (least_share > limits::bike_mass_stop.value) {
        finding.state = CheckState::stop;
        finding.reason = CheckReason::bike_mass_heavy;
        finding.limit.at_most = Figure::ratio(limits::bike_mass_stop.value);
    } else if (share > limits::bike_mass_look.value) {
        finding.state = CheckState::look;
        finding.reason = CheckReason::bike_mass_noticeable;
    } else {
        finding.state = CheckState::ok;
        finding.reason = CheckReason::bike_mass_easy;
    }
    return finding;
}

} // namespace saddlerule
