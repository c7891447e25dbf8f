// Shared by the tests of the checks: one bike of a loan shed with every figure taken, one rider, and a look
// at what a named check finds.
#pragma once

#include "core/fit/checks/check.h"
#include "tests/domain_checkers.h"

#include <cmath>

namespace saddlerule::testing {

/// A 16 in bike with two hand brakes, everything measured.
inline Bike measured_bike() {
    using namespace literals;
    Bike bike;
    bike.id = "L07";
    bike.wheel = Wheel::from_text("47-305");
    bike.saddle_lowest = 495_mm;
    bike.saddle_highest = 630_mm;
    bike.standover = 410_mm;
    bike.lever_reach = 55_mm;
    bike.crank = 102_mm;
    bike.bottom_bracket_height = 215_mm;
    bike.seat_tube_angle_degrees = 70.0;
    bike.mass = Mass::kilograms(5.4);
    bike.rider_mass_limit = Mass::kilograms(50.0);
    bike.brakes = std::vector{Brake::front_hand, Brake::rear_hand};
    bike.gears = 1;
    bike.chainring = 32;
    bike.sprocket = 16;
    return bike;
}

/// A child of five with every figure taken: inseam 495 mm in shoes, 475 mm without.
inline CheckedRider measured_rider() {
    using namespace literals;
    CheckedRider rider;
    rider.inseam_in_shoes = 495_mm;
    rider.inseam_without_shoes = 475_mm;
    rider.sole = 20_mm;
    rider.stature = 1105_mm;
    rider.mass = Mass::kilograms(18.5);
    return rider;
}

/// What the named check finds, with the saddle at 500 mm unless another setting is given; nothing where it
/// does not apply.
inline std::optional<Finding> finding_of(std::string_view what, const Bike& bike,
                                         const CheckedRider& rider = measured_rider(),
                                         std::optional<Length> setting = Length::millimetres(500.0)) {
    for (const CheckResult& result : check_bike({.rider = rider, .bike = bike, .saddle_setting = setting})) {
        if (result.check->what == what)
            return result.finding;
    }
    return std::nullopt;
}

/// State and reason of a finding that must be there.
inline void check_finding(const std::optional<Finding>& finding, CheckState state, CheckReason reason) {
    REQUIRE(finding);
    CHECK(name_of(finding->state) == name_of(state));
    CHECK(code_of(finding->reason) == code_of(reason));
}

/// An unknown that asks for exactly these figures.
inline void check_missing(const std::optional<Finding>& finding, MeasureSet missing) {
    check_finding(finding, CheckState::unknown, CheckReason::figure_missing);
    CHECK(finding->to_measure == missing);
}

/// A further figure of a finding, in its unit.
inline double further(const Finding& finding, std::string_view name) {
    for (const NamedFigure& figure : finding.further) {
        if (figure.name == name)
            return figure.figure.value();
    }
    FAIL("no figure of that name");
    return 0.0;
}

} // namespace saddlerule::testing
