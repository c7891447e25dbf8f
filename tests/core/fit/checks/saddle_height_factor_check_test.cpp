// Saddle height factor. Outside check: 1.09 times the inseam, adults, as orientation (Hamley and Thomas 1967,
// from memory).
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

/// An adult: inseam 840 mm; crank 170 mm and an upright seat tube, so that lengths add up.
std::optional<Finding> adult_at(Length saddle_height) {
    CheckedRider rider = measured_rider();
    rider.inseam_in_shoes = 860_mm;
    rider.inseam_without_shoes = 840_mm;
    rider.stature = 1750_mm;
    Bike bike = measured_bike();
    bike.saddle_highest = 1200_mm;
    bike.crank = 170_mm;
    bike.bottom_bracket_height = 270_mm;
    bike.seat_tube_angle_degrees = 90.0;
    return finding_of("saddle_height_factor", bike, rider, saddle_height);
}

} // namespace

TEST_CASE("an adult set up by the rule is within it, and above it is looked at", "[checks]") {
    // 1.09 x 840 = 915.6 to the pedal; less 170 of crank, plus 270 of bottom bracket: 1015.6 above the floor.
    const auto within = adult_at(1015.5_mm);
    check_finding(within, CheckState::ok, CheckReason::height_factor_within);
    CHECK(within->figure->value() == Approx(1.09).margin(0.0002));
    check_finding(adult_at(1015.7_mm), CheckState::look, CheckReason::height_factor_over);
}

TEST_CASE("a child with both feet flat is well under the adult figure, which is no fault", "[checks]") {
    const auto finding = finding_of("saddle_height_factor", measured_bike());
    check_finding(finding, CheckState::ok, CheckReason::height_factor_within);
    // (500 - 215) / sin 70 + 102 = 405.3; by 475: 0.853.
    CHECK(finding->figure->value() == Approx(0.853).margin(0.001));
}

TEST_CASE("on a guessed inseam the factor is settled where it is for shorter legs too", "[checks]") {
    CheckedRider rider = measured_rider();
    rider.guessed_inseam_sd = 60_mm; // 475 without shoes, perhaps 398.1: 405.3 to the pedal is 1.02 of it
    check_finding(finding_of("saddle_height_factor", measured_bike(), rider), CheckState::ok,
                  CheckReason::height_factor_within);
    rider.guessed_inseam_sd = 85_mm; // perhaps 366.1: 1.11
    const auto finding = finding_of("saddle_height_factor", measured_bike(), rider);
    check_finding(finding, CheckState::look, CheckReason::height_factor_unsettled);
    CHECK(finding->basis == FindingBasis::estimated_inseam);
}

TEST_CASE("the factor is not made from figures that contradict each other", "[checks]") {
    Bike bike = measured_bike();
    bike.crank = 215_mm;
    check_finding(finding_of("saddle_height_factor", bike), CheckState::unknown,
                  CheckReason::crank_reaches_floor);
    bike = measured_bike();
    bike.crank.reset();
    check_missing(finding_of("saddle_height_factor", bike), {Measure::crank});
}
