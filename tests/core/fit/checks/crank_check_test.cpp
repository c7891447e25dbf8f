// Crank by inseam. Common practice, from memory: 0.18 to 0.22, as orientation.
#include "tests/core/fit/checks/checked_bike.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::optional<Finding> with_crank(Length crank) {
    Bike bike = measured_bike();
    bike.crank = crank;
    return finding_of("crank", bike);
}

} // namespace

TEST_CASE("0.18 to 0.22 of an inseam of 475 mm is 85.5 to 104.5 mm of crank", "[checks]") {
    check_finding(with_crank(85_mm), CheckState::look, CheckReason::crank_short);
    check_finding(with_crank(86_mm), CheckState::ok, CheckReason::crank_usual);
    check_finding(with_crank(104_mm), CheckState::ok, CheckReason::crank_usual);
    check_finding(with_crank(105_mm), CheckState::look, CheckReason::crank_long);
}

TEST_CASE("a crank that would strike the floor is to be measured again", "[checks]") {
    check_finding(with_crank(215_mm), CheckState::unknown, CheckReason::crank_reaches_floor);
}

TEST_CASE("a crank typed in centimetres for millimetres never passes", "[checks]") {
    check_finding(with_crank(Length::millimetres(10.2)), CheckState::look, CheckReason::crank_short);
    check_finding(with_crank(1020_mm), CheckState::unknown, CheckReason::crank_reaches_floor);
    check_missing(with_crank(0_mm), {Measure::crank});
}
