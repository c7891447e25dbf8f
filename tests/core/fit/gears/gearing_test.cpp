// Gears. Outside checks: rollout tables as printed in the manuals of cycle computers (from memory); ISO
// 5775-1 bead seat diameters (from memory) behind the nominal sizes.
#include "core/fit/gears/gearing.h"

#include "tests/domain_checkers.h"

using namespace saddlerule;
using namespace saddlerule::literals;

namespace {

Wheel wheel(std::string_view text) {
    const auto read = Wheel::from_text(text);
    REQUIRE(read);
    return *read;
}

struct PrintedRollout {
    const char* marking;
    double mm;
};

} // namespace

TEST_CASE("a wheel rolls as far as printed tables say, within 2 %", "[gears]") {
    const auto printed = GENERATE(values<PrintedRollout>({
        {"47-203", 935.0},
        {"47-507", 1890.0},
        {"47-559", 2023.0},
        {"50-559", 2055.0},
        {"54-584", 2148.0},
        {"23-622", 2096.0},
        {"25-622", 2105.0},
        {"28-622", 2136.0},
        {"32-622", 2155.0},
        {"37-622", 2185.0},
    }));
    CAPTURE(printed.marking);
    CHECK(rollout(wheel(printed.marking)).in_millimetres() == Approx(printed.mm).epsilon(0.02));
}

// Tables differ by up to 6 % among themselves here: some rolled the wheel out under a rider, some did not.
TEST_CASE("a small wheel rolls as far as printed tables say, within 5 %", "[gears]") {
    const auto printed = GENERATE(values<PrintedRollout>({
        {"47-254", 1055.0},
        {"47-305", 1195.0},
        {"47-305", 1272.0},
        {"47-355", 1350.0},
        {"47-406", 1515.0},
        {"47-406", 1590.0},
    }));
    CAPTURE(printed.marking, printed.mm);
    CHECK(rollout(wheel(printed.marking)).in_millimetres() == Approx(printed.mm).epsilon(0.05));
}

TEST_CASE("every usual nominal size rolls on the ISO 5775-1 bead seat of its name", "[gears]") {
    struct Named {
        const char* nominal;
        const char* marking;
    };
    const auto named = GENERATE(values<Named>({
        {"12", "47-203"},
        {"14", "47-254"},
        {"16", "47-305"},
        {"18", "47-355"},
        {"20", "47-406"},
        {"24", "47-507"},
        {"26", "47-559"},
        {"27.5", "47-584"},
        {"700C", "47-622"},
    }));
    CAPTURE(named.nominal);
    CHECK(rollout(wheel(named.nominal)).in_millimetres() ==
          Approx(rollout(wheel(named.marking)).in_millimetres()).margin(1e-9));
}

TEST_CASE("development is rollout times ratio, and gear inches are wheel inches times ratio", "[gears]") {
    const auto gear = gearing(32, 16, wheel("47-305"));
    REQUIRE(gear);
    CHECK(gear->ratio == Approx(2.0).margin(1e-12));
    CHECK(gear->development.in_metres() == Approx(2.507).margin(0.001)); // 2 x pi x 399 mm
    CHECK(gear->gear_inches == Approx(31.42).margin(0.01));              // 2 x 399 / 25.4
}

TEST_CASE("development is pi times the gear inches, whatever the wheel", "[gears]") {
    const auto gear = gearing(42, 15, wheel("32-622"));
    CHECK(gear->development.in_inches() == Approx(3.14159265358979 * gear->gear_inches).epsilon(1e-12));
}

TEST_CASE("speed is development times turns", "[gears]") {
    const auto gear = gearing(32, 16, wheel("47-305"));
    // 2.507 m, 60 times a minute, 60 minutes: 9.03 km/h; at 80 turns 12.03.
    CHECK(speed_at(*gear, 60.0).in_kilometres_per_hour() == Approx(9.03).margin(0.01));
    CHECK(speed_at(*gear, 80.0).in_kilometres_per_hour() == Approx(12.03).margin(0.01));
    CHECK(speed_at(*gear, 0.0).in_kilometres_per_hour() == 0.0);
}

TEST_CASE("a chainring or sprocket without teeth makes no gear", "[gears]") {
    CHECK_FALSE(gearing(0, 16, wheel("16")));
    CHECK_FALSE(gearing(32, 0, wheel("16")));
    CHECK_FALSE(gearing(-32, 16, wheel("16")));
}
