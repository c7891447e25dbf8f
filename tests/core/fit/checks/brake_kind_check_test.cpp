// Brake kinds. Outside checks: ISO 8098 (at least two independent systems, one front, one rear; the rear one
// by hand or foot); 16 CFR 1512.5(e), from memory (a sidewalk bicycle not with hand brakes only).
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::optional<Finding> with_brakes(std::vector<Brake> brakes, Length highest = 630_mm) {
    Bike bike = measured_bike();
    bike.brakes = std::move(brakes);
    bike.saddle_highest = highest;
    return finding_of("brake_kind", bike);
}

} // namespace

TEST_CASE("a front brake and a rear one, by hand or foot, are two systems", "[checks]") {
    check_finding(with_brakes({Brake::front_hand, Brake::coaster}), CheckState::ok,
                  CheckReason::brakes_two_systems);
    check_finding(with_brakes({Brake::front_hand, Brake::rear_hand, Brake::coaster}), CheckState::ok,
                  CheckReason::brakes_two_systems);
    check_finding(with_brakes({Brake::front_hand, Brake::rear_hand}, 700_mm), CheckState::ok,
                  CheckReason::brakes_two_systems);
}

TEST_CASE("two hand brakes pass, with the US foot brake named up to 635 mm", "[checks]") {
    const auto finding = with_brakes({Brake::front_hand, Brake::rear_hand}, 635_mm);
    check_finding(finding, CheckState::ok, CheckReason::brakes_two_hands_only);
}

TEST_CASE("one system alone is looked at, or stopped where no rule is content with it", "[checks]") {
    check_finding(with_brakes({Brake::coaster}), CheckState::look, CheckReason::brakes_coaster_only);
    check_finding(with_brakes({Brake::rear_hand}), CheckState::stop, CheckReason::brakes_rear_hand_only);
    check_finding(with_brakes({Brake::rear_hand}, 635_mm), CheckState::stop,
                  CheckReason::brakes_rear_hand_only);
    check_finding(with_brakes({Brake::rear_hand}, 636_mm), CheckState::look, CheckReason::brakes_no_front);
    check_finding(with_brakes({Brake::rear_hand}, 430_mm), CheckState::look, CheckReason::brakes_no_front);
    check_finding(with_brakes({Brake::rear_hand, Brake::coaster}), CheckState::look,
                  CheckReason::brakes_no_front);
    check_finding(with_brakes({Brake::front_hand}), CheckState::stop, CheckReason::brakes_front_only);
    check_finding(with_brakes({}), CheckState::stop, CheckReason::brakes_none);
}

TEST_CASE("a ride-on toy without a brake is looked at, whether its class is known decides", "[checks]") {
    check_finding(with_brakes({}, 435_mm), CheckState::look, CheckReason::brakes_none_on_toy);
    check_finding(with_brakes({}, 436_mm), CheckState::stop, CheckReason::brakes_none);
    Bike bike = measured_bike();
    bike.saddle_highest.reset();
    bike.brakes = std::vector<Brake>{};
    check_finding(finding_of("brake_kind", bike), CheckState::stop, CheckReason::brakes_none);
}

TEST_CASE("unknown brakes are to be looked up", "[checks]") {
    Bike bike = measured_bike();
    bike.brakes.reset();
    check_missing(finding_of("brake_kind", bike), {Measure::brakes});
}
