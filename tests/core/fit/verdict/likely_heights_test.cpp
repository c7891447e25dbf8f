// Saddle heights of a guessed leg. Outside check: 80 % of a normal distribution are within 1.28155 standard deviations of its
// mean (any table of the normal distribution).
#include "core/fit/verdict/likely_heights.h"

#include "tests/domain_checkers.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {
const InseamEstimate guessed{500_mm, 30_mm};
const Length doubt = Length::millimetres(1.28155 * 30.0);
const WindowOffsets offsets = window_offsets(Stage::starting, Confidence::usual); // -25 to +10, best at 0
} // namespace

TEST_CASE("the likely window goes from a short leg's lowest to a long leg's highest", "[fit]") {
    const auto window = likely_window(guessed, offsets);
    CHECK(window.low().in_millimetres() == Approx((475_mm - doubt).in_millimetres()).margin(0.01));
    CHECK(window.high().in_millimetres() == Approx((510_mm + doubt).in_millimetres()).margin(0.01));
}

TEST_CASE("an inseam without doubt has its window and one setting", "[fit]") {
    const InseamEstimate known{500_mm, 0_mm};
    check_length(likely_window(known, offsets).low(), 475_mm);
    check_length(likely_window(known, offsets).high(), 510_mm);
    const auto setting = likely_setting({400_mm, 600_mm}, known, offsets);
    check_length(setting.low(), 500_mm);
    check_length(setting.high(), 500_mm);
}

TEST_CASE("the likely setting stays within what was measured of the bike", "[fit]") {
    const auto free = likely_setting({400_mm, 600_mm}, guessed, offsets);
    CHECK(free.width().in_millimetres() == Approx(2.0 * doubt.in_millimetres()).margin(0.01));
    check_length(likely_setting({490_mm, 600_mm}, guessed, offsets).low(), 490_mm);
    check_length(likely_setting({400_mm, 510_mm}, guessed, offsets).high(), 510_mm);
    const auto open = likely_setting({490_mm, {}}, guessed, offsets);
    CHECK(open.high().in_millimetres() == Approx((500_mm + doubt).in_millimetres()).margin(0.01));
    // Even the short leg is too long for it, and even the long one too short.
    check_length(likely_setting({300_mm, 400_mm}, guessed, offsets).low(), 400_mm);
    check_length(likely_setting({600_mm, 700_mm}, guessed, offsets).high(), 600_mm);
}
