// Brake lever reach. Outside checks: 75 mm (ISO 8098:2014); 76 mm sidewalk bicycle, 89 mm others (16 CFR
// 1512.5(b)(3)).
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::optional<Finding> with_reach(Length reach) {
    Bike bike = measured_bike();
    bike.lever_reach = reach;
    return finding_of("lever_reach", bike);
}

} // namespace

TEST_CASE("75 mm is near, more is far, over 89 mm is beyond every rule", "[checks]") {
    check_finding(with_reach(55_mm), CheckState::ok, CheckReason::lever_near);
    check_finding(with_reach(75_mm), CheckState::ok, CheckReason::lever_near);
    check_finding(with_reach(76_mm), CheckState::look, CheckReason::lever_far);
    check_finding(with_reach(89_mm), CheckState::look, CheckReason::lever_far);
    check_finding(with_reach(90_mm), CheckState::stop, CheckReason::lever_beyond_every_rule);
}

TEST_CASE("a far lever is held against the figure for young children", "[checks]") {
    const auto finding = with_reach(80_mm);
    CHECK(finding->figure == Figure(80_mm));
    CHECK(finding->limit.at_most == Figure(75_mm));
}

TEST_CASE("a bike without hand brakes has no lever to reach", "[checks]") {
    Bike bike = measured_bike();
    bike.brakes = std::vector{Brake::coaster};
    CHECK_FALSE(finding_of("lever_reach", bike));
}

TEST_CASE("a lever nobody measured is to be measured, and unknown brakes looked up first", "[checks]") {
    Bike bike = measured_bike();
    bike.lever_reach.reset();
    check_missing(finding_of("lever_reach", bike), {Measure::lever_reach});
    bike.brakes.reset();
    check_missing(finding_of("lever_reach", bike), {Measure::lever_reach, Measure::brakes});
    check_missing(with_reach(0_mm), {Measure::lever_reach});
}

TEST_CASE("a balance bike is asked for its lever only where it is known to have one", "[checks]") {
    Bike bike = measured_bike();
    bike.kind = BikeKind::balance;
    bike.brakes.reset();
    bike.lever_reach.reset();
    CHECK_FALSE(finding_of("lever_reach", bike));
    bike.brakes = std::vector{Brake::rear_hand};
    check_missing(finding_of("lever_reach", bike), {Measure::lever_reach});
}
