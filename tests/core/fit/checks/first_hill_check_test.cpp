// The first hill, as it is judged. The arithmetic is checked with the gears.
#include "core/fit/gears/first_hill.h"

#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::optional<Finding> with_teeth(int chainring, int sprocket) {
    Bike bike = measured_bike();
    bike.chainring = chainring;
    bike.sprocket = sprocket;
    return finding_of("first_hill", bike);
}

} // namespace

TEST_CASE("the same hill is light, firm or heavy by the gear", "[checks]") {
    check_finding(with_teeth(24, 20), CheckState::ok, CheckReason::hill_light);
    check_finding(with_teeth(32, 16), CheckState::ok, CheckReason::hill_firm);
    check_finding(with_teeth(44, 14), CheckState::look, CheckReason::hill_heavy);
}

TEST_CASE("the figure is the push by the rider's weight, with the slope it holds for", "[checks]") {
    const auto finding = with_teeth(32, 16);
    REQUIRE(finding);
    const auto hill = first_hill(*gearing(32, 16, *measured_bike().wheel), 102_mm, Mass::kilograms(18.5),
                                 Mass::kilograms(5.4));
    CHECK(finding->figure == Figure::ratio(hill->push));
    CHECK(further(*finding, "slope") == Approx(0.05));
}

TEST_CASE("a hill climbed on an estimated weight says so", "[checks]") {
    CheckedRider rider = measured_rider();
    rider.mass.reset();
    rider.estimated_mass = EstimatedMass{Mass::kilograms(18.0)};
    CHECK(finding_of("first_hill", measured_bike(), rider)->basis == FindingBasis::estimated_rider_mass);
}

TEST_CASE("a hill needs crank, weights and gear, and none that contradict each other", "[checks]") {
    Bike bike = measured_bike();
    bike.crank.reset();
    bike.mass = Mass::kilograms(0.0);
    bike.sprocket.reset();
    check_missing(finding_of("first_hill", bike), {Measure::crank, Measure::sprocket, Measure::bike_mass});
    bike = measured_bike();
    bike.crank = 400_mm;
    check_finding(finding_of("first_hill", bike), CheckState::unknown, CheckReason::crank_reaches_floor);
}
