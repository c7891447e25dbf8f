// Wheel sizes. Outside check: where a reading suits two wheel sizes, the larger one, for room to grow (common
// practice).
#include "core/fit/choice/wheel_sizes.h"

#include "tests/domain_checkers.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::vector<SuitableWheelSize> by_practice(Length inseam, Stage stage) {
    const BikeKind kind = stage == Stage::gliding ? BikeKind::balance : BikeKind::pedal;
    return suitable_wheel_sizes({}, kind, one_reading(inseam), window_offsets(stage, Confidence::usual));
}

std::vector<SuitableWheelSize> of_list(const std::vector<JudgedWheel>& list) {
    return suitable_wheel_sizes(list, BikeKind::pedal, one_reading(495_mm),
                                window_offsets(Stage::starting, Confidence::usual));
}

} // namespace

TEST_CASE("without a list, common practice names the sizes, the larger first with its reason", "[wheels]") {
    const auto sizes = by_practice(Length::inches(19.5), Stage::starting);
    REQUIRE(sizes.size() == 2);
    CHECK(sizes[0].nominal_inches == 16.0);
    CHECK(sizes[0].reason == WheelSizeReason::largest_that_suits);
    CHECK(sizes[0].basis == WheelSizeBasis::common_practice);
    CHECK(sizes[1].nominal_inches == 14.0);
    CHECK(sizes[1].reason == WheelSizeReason::also);
}

TEST_CASE("a taller child needs larger wheels, and a riding one larger ones than a starting one",
          "[wheels]") {
    double before = 0.0;
    for (const double inseam : {400.0, 450.0, 500.0, 550.0, 600.0, 680.0, 760.0}) {
        const auto starting = by_practice(Length::millimetres(inseam), Stage::starting);
        const auto riding = by_practice(Length::millimetres(inseam), Stage::riding);
        CAPTURE(inseam);
        REQUIRE_FALSE(starting.empty());
        REQUIRE_FALSE(riding.empty());
        CHECK(starting[0].nominal_inches >= before);
        CHECK(riding[0].nominal_inches >= starting[0].nominal_inches);
        before = starting[0].nominal_inches;
    }
}

TEST_CASE("a list speaks for itself: sizes of which a bike fits, larger first, with their numbers",
          "[wheels]") {
    const auto sizes = of_list({{14.0, Verdict::fits_now},
                                {16.0, Verdict::fits_now},
                                {16.0, Verdict::close_call},
                                {16.0, Verdict::too_tall},
                                {20.0, Verdict::too_tall},
                                {std::nullopt, Verdict::fits_now}});
    REQUIRE(sizes.size() == 2);
    CHECK(sizes[0].nominal_inches == 16.0);
    CHECK(sizes[0].basis == WheelSizeBasis::list);
    CHECK(sizes[0].bikes == 3);
    CHECK(sizes[0].fit_now == 1);
    CHECK(sizes[0].close_calls == 1);
    CHECK(sizes[0].reason == WheelSizeReason::most_fit);
    CHECK(sizes[1].nominal_inches == 14.0);
}

TEST_CASE("the size of which most bikes fit comes first, not the largest of which one does", "[wheels]") {
    std::vector<JudgedWheel> list(3, {16.0, Verdict::fits_now});
    list.push_back({20.0, Verdict::fits_now});
    const auto sizes = of_list(list);
    REQUIRE(sizes.size() == 2);
    CHECK(sizes[0].nominal_inches == 16.0);
    CHECK(sizes[1].reason == WheelSizeReason::also);
}

TEST_CASE("without a list, a size that suits at the edge of its span only does not come first", "[wheels]") {
    // 440 mm and riding: 516 mm is the target, and the usual 18 in bike begins at 530.
    const auto sizes = by_practice(440_mm, Stage::riding);
    REQUIRE_FALSE(sizes.empty());
    CHECK(sizes[0].nominal_inches == 16.0);
}

// Balance bikes of 10 and 12 in are what children of 1 1/2 to 3 glide on (common practice).
TEST_CASE("the youngest get the wheels of balance bikes", "[wheels]") {
    for (const double inseam : {300.0, 330.0, 360.0}) {
        const auto sizes = by_practice(Length::millimetres(inseam), Stage::gliding);
        CAPTURE(inseam);
        REQUIRE_FALSE(sizes.empty());
        CHECK(sizes[0].nominal_inches >= 10.0);
        CHECK(sizes[0].nominal_inches <= 12.0);
    }
}

TEST_CASE("a size with close calls only is named where nothing fits outright", "[wheels]") {
    CHECK(of_list({{14.0, Verdict::close_call}, {16.0, Verdict::fits_now}}).size() == 1);
    const auto sizes = of_list({{14.0, Verdict::close_call}, {16.0, Verdict::too_tall}});
    REQUIRE(sizes.size() == 1);
    CHECK(sizes[0].nominal_inches == 14.0);
    CHECK(sizes[0].reason == WheelSizeReason::only_one);
}

TEST_CASE("a list that suits in no size names none; one without wheel sizes falls back on common practice",
          "[wheels]") {
    CHECK(of_list({{24.0, Verdict::too_tall}}).empty());
    const auto sizes = of_list({{std::nullopt, Verdict::fits_now}});
    REQUIRE_FALSE(sizes.empty());
    CHECK(sizes[0].basis == WheelSizeBasis::common_practice);
}
