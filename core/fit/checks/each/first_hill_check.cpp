// First hill: how hard the gear of the list pushes back on a gentle climb.
#include "core/fit/checks/each_check.h"
#include "core/fit/checks/fitted_gear.h"
#include "core/fit/checks/pedalling_figures.h"
#include "core/fit/gears/first_hill.h"

namespace saddlerule {
namespace {

CheckReason reason_of(HillFeel feel) {
    switch (feel) {
    case HillFeel::light:
        return CheckReason::hill_light;
    case HillFeel::firm:
        return CheckReason::hill_firm;
    case HillFeel::heavy:
        break;
    }
    return CheckReason::hill_heavy;
}

} // namespace

std::optional<Finding> each_check::first_hill(const CheckCase& checked) {
    if (checked.bike.kind == BikeKind::balance)
        return std::nullopt;
    const Bike& bike = checked.bike;
    const auto crank = taken(bike.crank);
    const auto mass = taken(bike.mass);
    const auto rider = mass_of(checked.rider);
    const auto gear = fitted_gear(bike);
    MeasureSet missing = missing_for_gear(bike);
    if (!crank)
        missing.add(Measure::crank);
    if (!mass)
        missing.add(Measure::bike_mass);
    if (!rider)
        missing.add(Measure::rider_mass);
    if (!missing.empty())
        return to_be_measured(missing);
    const auto bottom_bracket = taken(bike.bottom_bracket_height);
    if (bottom_bracket && *crank >= *bottom_bracket)
        return contradiction_finding(LegObstacle::crank_reaches_floor, bike);

    const auto hill = saddlerule::first_hill(*gear, *crank, rider->mass, *mass);
    Finding finding;
    finding.state = hill->feel == HillFeel::heavy ? CheckState::look : CheckState::ok;
    finding.reason = reason_of(hill->feel);
    finding.basis = rider->basis;
    finding.figure = Figure::ratio(hill->push);
    finding.limit.at_most = Figure::ratio(first_hill_assumptions::firm_up_to);
    finding.further = {{{"slope", Figure::ratio(first_hill_assumptions::slope)}}};
    return finding;
}

} // namespace saddlerule
