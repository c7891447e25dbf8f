// Top of the post. Outside check: the minimum-insertion mark, 16 CFR 1512.15(b).
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::optional<Finding> with_setting(std::optional<Length> setting, const Bike& bike = measured_bike()) {
    return finding_of("top_of_post", bike, measured_rider(), setting);
}

} // namespace

TEST_CASE("within 10 mm of the highest the mark is to be looked for", "[checks]") {
    check_finding(with_setting(619_mm), CheckState::ok, CheckReason::post_below_top);
    check_finding(with_setting(620_mm), CheckState::look, CheckReason::post_near_top);
    check_finding(with_setting(630_mm), CheckState::look, CheckReason::post_near_top);
    check_finding(with_setting(631_mm), CheckState::stop, CheckReason::post_above_top);
}

TEST_CASE("a highest that nobody measured is to be measured", "[checks]") {
    Bike bike = measured_bike();
    bike.saddle_highest.reset();
    check_missing(with_setting(500_mm, bike), {Measure::saddle_highest});
}

TEST_CASE("a bike that is not the rider's size has no setting to judge", "[checks]") {
    CHECK_FALSE(with_setting({}));
    Bike bike = measured_bike();
    bike.saddle_lowest.reset();
    check_missing(with_setting({}, bike), {Measure::saddle_lowest});
}
