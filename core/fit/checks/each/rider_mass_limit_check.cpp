// Rider mass limit: the rider's weight against what the maker allows.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"

namespace saddlerule {

std::optional<Finding> each_check::rider_mass_limit(const CheckCase& checked) {
    const auto allowed = taken(checked.bike.rider_mass_limit);
    const auto rider = mass_of(checked.rider);
    MeasureSet missing;
    if (!allowed)
        missing.add(Measure::rider_mass_limit);
    if (!rider)
        missing.add(Measure::rider_mass);
    if (!missing.empty())
        return to_be_measured(missing);

    Finding finding;
    finding.basis = rider->basis;
    finding.figure = rider->mass;
    finding.limit.at_most = *allowed;
    if (rider->basis == FindingBasis::measured) {
        const bool over = rider->mass > *allowed;
        finding.state = over ? CheckState::stop : CheckState::ok;
        finding.reason = over ? CheckReason::rider_over_limit : CheckReason::rider_within_limit;
    } else {
        // A reference median can neither clear a child that may be far heavier nor convict one that may not
        // be.
        const bool may_be_over = rider->mass / *allowed > 1.0 / limits::estimated_mass_margin.value;
        finding.state = may_be_over ? CheckState::look : CheckState::ok;
        finding.reason = may_be_over ? CheckReason::rider_may_exceed_limit : CheckReason::rider_within_limit;
    }
    return finding;
}

} // namespace saddlerule
