// Leg extension. Outside check: 25 to 35 degrees of knee flexion with the pedal down, adults, as orientation
// (Holmes, Pruitt and Whalen 1994, from memory).
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::optional<Finding> with_setting(std::optional<Length> setting, const Bike& bike = measured_bike(),
                                    const CheckedRider& rider = measured_rider()) {
    return finding_of("leg_extension", bike, rider, setting);
}

} // namespace

TEST_CASE("a starting child's knee stays well bent, which is no fault", "[checks]") {
    const auto finding = with_setting(500_mm);
    check_finding(finding, CheckState::ok, CheckReason::leg_bent);
    CHECK(finding->figure->unit() == FigureUnit::degrees);
    CHECK(finding->limit.at_least == Figure(Angle::degrees(25.0)));
    CHECK(finding->limit.at_most == Figure(Angle::degrees(35.0)));
    CHECK(finding->basis == FindingBasis::measured);
}

TEST_CASE("higher saddles pass adult figures, a nearly straight leg and the end of reach", "[checks]") {
    // Each state is met once, in this order, on the way up; none of them stops a child.
    std::vector<std::string_view> met;
    Bike bike = measured_bike();
    for (int mm = 500; mm < 800; ++mm) {
        const auto finding = with_setting(Length::millimetres(mm), bike);
        REQUIRE(finding);
        CHECK(finding->state != CheckState::stop);
        const std::string_view code = code_of(finding->reason);
        if (met.empty() || met.back() != code)
            met.push_back(code);
    }
    CHECK(met == std::vector<std::string_view>{"leg_bent", "leg_as_adults", "leg_nearly_straight",
                                               "leg_out_of_reach"});
}

TEST_CASE("a stature made from the inseam is said to be one", "[checks]") {
    CheckedRider rider = measured_rider();
    rider.stature.reset();
    const auto finding = with_setting(500_mm, measured_bike(), rider);
    check_finding(finding, CheckState::ok, CheckReason::leg_bent);
    CHECK(finding->basis == FindingBasis::estimated_stature);
}

TEST_CASE("figures that contradict each other are to be measured again", "[checks]") {
    Bike bike = measured_bike();
    SECTION("a crank longer than the bottom bracket is high") {
        bike.crank = 300_mm;
        const auto finding = with_setting(500_mm, bike);
        check_finding(finding, CheckState::unknown, CheckReason::crank_reaches_floor);
        CHECK(finding->to_measure == MeasureSet{Measure::crank, Measure::bottom_bracket_height});
    }
    SECTION("a saddle below the bottom bracket") {
        bike.bottom_bracket_height = 550_mm;
        check_finding(with_setting(500_mm, bike), CheckState::unknown,
                      CheckReason::saddle_below_bottom_bracket);
    }
    SECTION("a seat tube that lies down") {
        bike.seat_tube_angle_degrees = 12.0;
        const auto finding = with_setting(500_mm, bike);
        check_finding(finding, CheckState::unknown, CheckReason::seat_tube_impossible);
        CHECK(finding->to_measure == MeasureSet{Measure::seat_tube_angle});
    }
}

TEST_CASE("what the leg needs and the list lacks is to be measured, all of it at once", "[checks]") {
    Bike bike = measured_bike();
    bike.crank = 0_mm;
    bike.bottom_bracket_height.reset();
    bike.seat_tube_angle_degrees = 0.0;
    bike.saddle_highest.reset();
    check_missing(with_setting({}, bike), {Measure::saddle_highest, Measure::bottom_bracket_height,
                                           Measure::crank, Measure::seat_tube_angle});
}

TEST_CASE("a bike that is not the rider's size has no leg to judge", "[checks]") {
    CHECK_FALSE(with_setting({}));
}
