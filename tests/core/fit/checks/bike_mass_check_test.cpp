// Bike mass by rider mass. Common practice, from memory: look above 0.30, stop and think above 0.40.
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

std::optional<Finding> with_mass(double bike_kg, const CheckedRider& rider) {
    Bike bike = measured_bike();
    bike.mass = Mass::kilograms(bike_kg);
    return finding_of("bike_mass", bike, rider);
}

CheckedRider weighing(double kg) {
    CheckedRider rider = measured_rider();
    rider.mass = Mass::kilograms(kg);
    return rider;
}

} // namespace

TEST_CASE("a bike of 30 % of its rider is easy, above it noticeable, above 40 % heavy", "[checks]") {
    check_finding(with_mass(6.0, weighing(20.0)), CheckState::ok, CheckReason::bike_mass_easy);
    check_finding(with_mass(6.1, weighing(20.0)), CheckState::look, CheckReason::bike_mass_noticeable);
    check_finding(with_mass(8.0, weighing(20.0)), CheckState::look, CheckReason::bike_mass_noticeable);
    check_finding(with_mass(8.1, weighing(20.0)), CheckState::stop, CheckReason::bike_mass_heavy);
}

TEST_CASE("a bike of 40 kg stops every child", "[checks]") {
    for (const double rider_kg : {12.0, 20.0, 40.0, 80.0})
        check_finding(with_mass(40.0, weighing(rider_kg)), CheckState::stop, CheckReason::bike_mass_heavy);
}

TEST_CASE("an estimated rider's weight is used, and said to be one", "[checks]") {
    CheckedRider rider = measured_rider();
    rider.mass.reset();
    // CDC 2000 growth charts: girls' median weight at 5 years, 17.93 kg.
    rider.estimated_mass = EstimatedMass{Mass::kilograms(17.93)};
    const auto finding = with_mass(6.4, rider);
    check_finding(finding, CheckState::look, CheckReason::bike_mass_noticeable);
    CHECK(finding->basis == FindingBasis::estimated_rider_mass);
    CHECK(finding->figure->value() == Approx(0.357).margin(0.001));
}

TEST_CASE("an estimate says stop only where a child a quarter heavier would be stopped too", "[checks]") {
    CheckedRider rider = measured_rider();
    rider.mass.reset();
    rider.estimated_mass = EstimatedMass{Mass::kilograms(16.0)};
    check_finding(with_mass(7.9, rider), CheckState::look, CheckReason::bike_mass_noticeable);
    check_finding(with_mass(8.1, rider), CheckState::stop, CheckReason::bike_mass_heavy);
    check_finding(with_mass(40.0, rider), CheckState::stop, CheckReason::bike_mass_heavy);
}

TEST_CASE("a weighed rider is not estimated", "[checks]") {
    CheckedRider rider = weighing(20.0);
    rider.estimated_mass = EstimatedMass{Mass::kilograms(10.0)};
    const auto finding = with_mass(6.0, rider);
    check_finding(finding, CheckState::ok, CheckReason::bike_mass_easy);
    CHECK(finding->basis == FindingBasis::measured);
}

TEST_CASE("no weight of bike or rider, or one of zero, is to be weighed", "[checks]") {
    check_missing(with_mass(0.0, weighing(20.0)), {Measure::bike_mass});
    check_missing(with_mass(6.0, weighing(0.0)), {Measure::rider_mass});
    CheckedRider nobody = measured_rider();
    nobody.mass.reset();
    Bike bike = measured_bike();
    bike.mass.reset();
    check_missing(finding_of("bike_mass", bike, nobody), {Measure::bike_mass, Measure::rider_mass});
}
