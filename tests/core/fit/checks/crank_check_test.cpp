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

TEST_CASE("on a guessed inseam a crank is usual where it is for shorter and longer legs alike", "[checks]") {
    CheckedRider rider = measured_rider();
    rider.guessed_inseam_sd = 20_mm; // 475 without shoes: 449.4 to 500.6; 0.18 to 0.22: 90.1 to 98.9
    Bike bike = measured_bike();
    const auto at = [&](double crank) {
        bike.crank = Length::millimetres(crank);
        return finding_of("crank", bike, rider);
    };
    CHECK(at(95)->basis == FindingBasis::estimated_inseam);
    check_finding(at(90.2), CheckState::ok, CheckReason::crank_usual);
    check_finding(at(98.8), CheckState::ok, CheckReason::crank_usual);
    check_finding(at(90.0), CheckState::look, CheckReason::crank_unsettled);
    check_finding(at(99.0), CheckState::look, CheckReason::crank_unsettled);
    check_finding(at(106), CheckState::look, CheckReason::crank_long);
}

TEST_CASE("a crank that would strike the floor is to be measured again", "[checks]") {
    check_finding(with_crank(215_mm), CheckState::unknown, CheckReason::crank_reaches_floor);
}

TEST_CASE("a crank typed in centimetres for millimetres never passes", "[checks]") {
    check_finding(with_crank(Length::millimetres(10.2)), CheckState::look, CheckReason::crank_short);
    check_finding(with_crank(1020_mm), CheckState::unknown, CheckReason::crank_reaches_floor);
    check_missing(with_crank(0_mm), {Measure::crank});
}
