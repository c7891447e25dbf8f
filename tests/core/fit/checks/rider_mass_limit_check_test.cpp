// The maker's limit on the rider's mass.
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

std::optional<Finding> with_limit(double limit_kg, const CheckedRider& rider) {
    Bike bike = measured_bike();
    bike.rider_mass_limit = Mass::kilograms(limit_kg);
    return finding_of("rider_mass_limit", bike, rider);
}

CheckedRider estimated(double kg) {
    CheckedRider rider = measured_rider();
    rider.mass.reset();
    rider.estimated_mass = EstimatedMass{Mass::kilograms(kg)};
    return rider;
}

} // namespace

TEST_CASE("a rider at the limit is within it, and above it a stop", "[checks]") {
    check_finding(with_limit(18.5, measured_rider()), CheckState::ok, CheckReason::rider_within_limit);
    check_finding(with_limit(18.4, measured_rider()), CheckState::stop, CheckReason::rider_over_limit);
}

TEST_CASE("an estimate clears a rider only with a quarter to spare, and never convicts one", "[checks]") {
    check_finding(with_limit(25.1, estimated(20.0)), CheckState::ok, CheckReason::rider_within_limit);
    check_finding(with_limit(24.9, estimated(20.0)), CheckState::look, CheckReason::rider_may_exceed_limit);
    check_finding(with_limit(15.0, estimated(20.0)), CheckState::look, CheckReason::rider_may_exceed_limit);
}

TEST_CASE("a limit that the list does not state is to be looked up", "[checks]") {
    Bike bike = measured_bike();
    bike.rider_mass_limit.reset();
    check_missing(finding_of("rider_mass_limit", bike), {Measure::rider_mass_limit});
    check_missing(with_limit(0.0, measured_rider()), {Measure::rider_mass_limit});
}
