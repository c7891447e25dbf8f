// Saddle-height classes. Outside checks: ISO 8098:2023 (> 435 mm and < 635 mm), ISO 4210-1:2023 (>= 635 mm),
// ISO 4210-2:2023 (young adult, < 750 mm), 16 CFR 1512.2(b) (sidewalk bicycle, up to 635 mm, 25.0 in).
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::optional<Finding> with_highest(Length highest) {
    Bike bike = measured_bike();
    bike.saddle_highest = highest;
    return finding_of("saddle_class", bike);
}

} // namespace

TEST_CASE("the classes meet exactly at 435, 635 and 750 mm", "[checks]") {
    check_finding(with_highest(435_mm), CheckState::look, CheckReason::class_toy);
    check_finding(with_highest(435.1_mm), CheckState::ok, CheckReason::class_young_children);
    check_finding(with_highest(634.9_mm), CheckState::ok, CheckReason::class_young_children);
    check_finding(with_highest(635_mm), CheckState::ok, CheckReason::class_at_both);
    check_finding(with_highest(635.1_mm), CheckState::ok, CheckReason::class_young_adult);
    check_finding(with_highest(749.9_mm), CheckState::ok, CheckReason::class_young_adult);
    check_finding(with_highest(750_mm), CheckState::ok, CheckReason::class_full_size);
}

TEST_CASE("an edge is an edge in whatever unit it was typed", "[checks]") {
    check_finding(with_highest(Length::inches(25.0)), CheckState::ok, CheckReason::class_at_both);
    check_finding(with_highest(Length::centimetres(63.5)), CheckState::ok, CheckReason::class_at_both);
    check_finding(with_highest(Length::centimetres(43.5)), CheckState::look, CheckReason::class_toy);
    check_finding(with_highest(Length::metres(0.435)), CheckState::look, CheckReason::class_toy);
}

TEST_CASE("the class needs the highest saddle", "[checks]") {
    Bike bike = measured_bike();
    bike.saddle_highest.reset();
    check_missing(finding_of("saddle_class", bike), {Measure::saddle_highest});
}
