// Gears, as they are shown.
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;

TEST_CASE("32 by 16 on a 47-305 wheel goes 2.51 m a turn", "[checks]") {
    const auto finding = finding_of("gears", measured_bike());
    check_finding(finding, CheckState::ok, CheckReason::gears_single);
    CHECK(finding->figure->unit() == FigureUnit::metres);
    CHECK(finding->figure->value() == Approx(2.507).margin(0.001));
    CHECK(further(*finding, "gear_inches") == Approx(31.4).margin(0.05));
    CHECK(further(*finding, "easy_speed") == Approx(9.0).margin(0.05));
    CHECK(further(*finding, "brisk_speed") == Approx(12.0).margin(0.05));
}

TEST_CASE("a bike of several gears says that it shows one of them", "[checks]") {
    Bike bike = measured_bike();
    bike.gears = 7;
    check_finding(finding_of("gears", bike), CheckState::ok, CheckReason::gears_one_of_several);
}

TEST_CASE("teeth and wheel that are not known are to be counted and read", "[checks]") {
    Bike bike = measured_bike();
    bike.wheel.reset();
    bike.chainring = 0;
    bike.sprocket.reset();
    check_missing(finding_of("gears", bike), {Measure::wheel, Measure::chainring, Measure::sprocket});
}
