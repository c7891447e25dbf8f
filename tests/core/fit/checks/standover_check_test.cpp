// Standover. Common practice: 25 mm below the inseam, 50 mm off road.
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::optional<Finding> with_top_tube(Length height, bool off_road = false) {
    Bike bike = measured_bike();
    bike.standover = height;
    CheckedRider rider = measured_rider();
    rider.off_road = off_road;
    return finding_of("standover", bike, rider);
}

} // namespace

TEST_CASE("a top tube 85 mm below the inseam is clear", "[checks]") {
    const auto finding = with_top_tube(410_mm);
    check_finding(finding, CheckState::ok, CheckReason::standover_clear);
    CHECK(finding->figure == Figure(85_mm));
    CHECK(finding->limit.at_least == Figure(25_mm));
}

TEST_CASE("the limit itself is enough, and a millimetre less is not", "[checks]") {
    check_finding(with_top_tube(470_mm), CheckState::ok, CheckReason::standover_clear);
    check_finding(with_top_tube(471_mm), CheckState::look, CheckReason::standover_tight);
    check_finding(with_top_tube(495_mm), CheckState::look, CheckReason::standover_tight);
    check_finding(with_top_tube(496_mm), CheckState::stop, CheckReason::standover_too_high);
}

TEST_CASE("on a guessed inseam only what holds for shorter and longer legs alike is settled", "[checks]") {
    // 495 mm with an sd of 30: nine in ten have more than 456.6, nine in ten less than 533.4.
    CheckedRider rider = measured_rider();
    rider.guessed_inseam_sd = 30_mm;
    Bike bike = measured_bike();
    const auto at = [&](double top_tube) {
        bike.standover = Length::millimetres(top_tube);
        const auto finding = finding_of("standover", bike, rider);
        CHECK(finding->basis == FindingBasis::estimated_inseam);
        return finding;
    };
    check_finding(at(431.5), CheckState::ok, CheckReason::standover_clear);
    check_finding(at(431.7), CheckState::look, CheckReason::standover_unsettled);
    check_finding(at(480), CheckState::look, CheckReason::standover_tight);
    check_finding(at(500), CheckState::look, CheckReason::standover_unsettled);
    check_finding(at(533.4), CheckState::look, CheckReason::standover_unsettled);
    check_finding(at(533.5), CheckState::stop, CheckReason::standover_too_high);
}

TEST_CASE("off road wants twice the room", "[checks]") {
    check_finding(with_top_tube(445_mm, true), CheckState::ok, CheckReason::standover_clear);
    check_finding(with_top_tube(446_mm, true), CheckState::look, CheckReason::standover_tight);
}

TEST_CASE("a top tube nobody measured, or at zero, is to be measured", "[checks]") {
    check_missing(with_top_tube(0_mm), {Measure::standover});
    check_missing(with_top_tube(-10_mm), {Measure::standover});
    check_missing(with_top_tube(Length::millimetres(std::nan(""))), {Measure::standover});
    Bike bike = measured_bike();
    bike.standover.reset();
    check_missing(finding_of("standover", bike), {Measure::standover});
}
