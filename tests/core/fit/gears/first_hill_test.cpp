// The first hill. Outside check: energy. What the pedals put in over a turn of the crank is what the climb
// and the tyres take out over the development.
#include "core/fit/gears/first_hill.h"

#include "tests/domain_checkers.h"

#include <cmath>
#include <numbers>

using namespace saddlerule;
using namespace saddlerule::literals;

namespace {

Gearing gear(int chainring, int sprocket, std::string_view wheel) {
    return *gearing(chainring, sprocket, *Wheel::from_text(wheel));
}

} // namespace

TEST_CASE("the push over one turn pays for the climb and the tyres", "[gears]") {
    const Gearing single = gear(32, 16, "47-305");
    const auto hill = first_hill(single, 102_mm, Mass::kilograms(18.5), Mass::kilograms(6.4));
    REQUIRE(hill);
    constexpr double gravity = 9.81;
    constexpr double total_kg = 18.5 + 6.4;
    // One turn of the crank: 2.507 m along a 5 % slope. A push that goes as a half wave, twice a turn, works
    // 4 r F.
    const double along = single.development.in_metres();
    const double climb = along * 0.05 / std::sqrt(1.0 + 0.05 * 0.05);
    const double level = along / std::sqrt(1.0 + 0.05 * 0.05);
    const double joules = total_kg * gravity * (climb + 0.010 * level);
    const double peak_newtons = joules / (4.0 * 0.102);
    CHECK(hill->push == Approx(peak_newtons / (18.5 * gravity)).epsilon(1e-9));
    CHECK(hill->feel == HillFeel::firm);
}

TEST_CASE("an adult's lowest touring gear is light and a racing gear heavy on the same hill", "[gears]") {
    const Mass adult = Mass::kilograms(75.0);
    const Mass bike = Mass::kilograms(12.0);
    CHECK(first_hill(gear(28, 32, "32-622"), 170_mm, adult, bike)->feel == HillFeel::light);
    CHECK(first_hill(gear(50, 14, "25-622"), 170_mm, adult, bike)->feel == HillFeel::heavy);
}

TEST_CASE("a heavier bike and a shorter crank make the same hill harder", "[gears]") {
    const Gearing single = gear(32, 16, "47-305");
    const Mass rider = Mass::kilograms(18.5);
    const double push = first_hill(single, 102_mm, rider, Mass::kilograms(6.4))->push;
    CHECK(first_hill(single, 102_mm, rider, Mass::kilograms(9.0))->push > push);
    CHECK(first_hill(single, 90_mm, rider, Mass::kilograms(6.4))->push > push);
}

TEST_CASE("no crank, no rider or no bike is no hill", "[gears]") {
    const Gearing single = gear(32, 16, "47-305");
    const Mass some = Mass::kilograms(20.0);
    CHECK_FALSE(first_hill(single, 0_mm, some, some));
    CHECK_FALSE(first_hill(single, 102_mm, Mass{}, some));
    CHECK_FALSE(first_hill(single, 102_mm, some, Mass{}));
    CHECK_FALSE(first_hill(single, Length::millimetres(std::nan("")), some, some));
}
