// Verdicts. Outside check: the trade's check values for an inseam of 19.5 in (common practice).
#include "core/fit/verdict/fit_verdict.h"

#include "core/base/statistics/normal_distribution.h"
#include "tests/domain_checkers.h"

#include <cmath>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

struct TradeCase {
    Stage stage;
    double lowest_inches;
    Verdict verdict;
};

/// A bike with 120 mm of post above its lowest saddle.
SaddleSpan from_lowest(Length lowest) {
    return {lowest, lowest + 120_mm};
}

} // namespace

// Common practice: with an inseam of 19.5 in, lowest saddles of 19.5 in (starting), 22 in (riding) and 21 in
// (training wheels) suit, each for its own stage, and 21 in and 22 in are too tall for the starting one.
TEST_CASE("the trade's check values for an inseam of 19.5 in hold", "[fit]") {
    const auto trade = GENERATE(values<TradeCase>({
        {Stage::starting, 19.5, Verdict::fits_now},
        {Stage::riding, 22.0, Verdict::fits_now},
        {Stage::side_wheels, 21.0, Verdict::fits_now},
        {Stage::starting, 21.0, Verdict::too_tall},
        {Stage::starting, 22.0, Verdict::too_tall},
    }));
    const Length lowest = Length::inches(trade.lowest_inches);
    CAPTURE(trade.lowest_inches, static_cast<int>(trade.stage));
    SECTION("with the whole span measured") {
        CHECK(fit_for(Length::inches(19.5), trade.stage, from_lowest(lowest)).verdict == trade.verdict);
    }
    SECTION("with only the lowest saddle measured") {
        CHECK(fit_for(Length::inches(19.5), trade.stage, {lowest, {}}).verdict == trade.verdict);
    }
}

TEST_CASE("a starting rider at the bike's lowest saddle sits with both feet flat", "[fit]") {
    const Fit fit = fit_for(Length::inches(19.5), Stage::starting, from_lowest(Length::inches(19.5)));
    REQUIRE(fit.setting);
    check_length(fit.setting->above_floor, Length::inches(19.5));
    check_length(*fit.setting->above_lowest, 0_mm);
    check_length(*fit.setting->below_highest, 120_mm);
    check_length(*fit.margin, 10_mm);
}

TEST_CASE("the saddle goes to the target where the span allows, and as near as it can where not", "[fit]") {
    SECTION("target inside the span") {
        const Fit fit = fit_for(500_mm, Stage::riding, {520_mm, 640_mm});
        check_length(fit.setting->above_floor, 576_mm);
        check_length(*fit.setting->above_lowest, 56_mm);
        check_length(*fit.setting->below_highest, 64_mm);
    }
    SECTION("a bike that ends under the target is at its top") {
        check_length(fit_for(500_mm, Stage::riding, {450_mm, 565_mm}).setting->above_floor, 565_mm);
    }
    SECTION("a bike that begins over the target is at its lowest") {
        check_length(fit_for(500_mm, Stage::riding, {585_mm, 700_mm}).setting->above_floor, 585_mm);
    }
    SECTION("nothing is set on a bike that misses the window") {
        CHECK_FALSE(fit_for(500_mm, Stage::riding, {660_mm, 800_mm}).setting);
        CHECK_FALSE(fit_for(500_mm, Stage::riding, {300_mm, 500_mm}).setting);
    }
}

TEST_CASE("on the very edge of the window it is an even chance, and a close call", "[fit]") {
    const Fit too_tall_by_nothing = fit_for(500_mm, Stage::starting, {510_mm, 640_mm});
    CHECK(too_tall_by_nothing.verdict == Verdict::close_call);
    CHECK(*too_tall_by_nothing.probability == Approx(0.5).margin(1e-6));
    check_length(*too_tall_by_nothing.margin, 0_mm);

    const Fit outgrown_by_nothing = fit_for(500_mm, Stage::riding, {400_mm, 551_mm});
    CHECK(outgrown_by_nothing.verdict == Verdict::close_call);
    CHECK(*outgrown_by_nothing.probability == Approx(0.5).margin(1e-6));
}

TEST_CASE("a close call is any chance strictly between one in five and four in five", "[fit]") {
    const double sd = std::hypot(8.0, 5.0);
    const auto lowest_for = [&](double probability) {
        return 510_mm - Length::millimetres(normal::quantile(probability) * sd);
    };
    const auto verdict_at = [&](double probability) {
        return fit_for(500_mm, Stage::starting, from_lowest(lowest_for(probability))).verdict;
    };
    CHECK(verdict_at(0.801) == Verdict::fits_now);
    CHECK(verdict_at(0.799) == Verdict::close_call);
    CHECK(verdict_at(0.201) == Verdict::close_call);
    CHECK(verdict_at(0.199) == Verdict::too_tall);
}

TEST_CASE("a span that touches the window in one point has a setting there", "[fit]") {
    for (double inseam = 400.0; inseam < 700.0; inseam += 0.1) {
        const Length edge = Length::millimetres(inseam) + 102_mm;
        const Fit fit = fit_for(Length::millimetres(inseam), Stage::riding, {edge, edge + 80_mm});
        CHECK(fit.setting);
        CHECK(fit.verdict == Verdict::close_call);
    }
}

TEST_CASE("one chance in five or less is no close call, however wide the doubt and short the span", "[fit]") {
    const InseamEstimate guessed{500_mm, 60_mm};
    const WindowOffsets offsets = window_offsets(Stage::starting, Confidence::usual);
    const Fit fit = fit_of({480_mm, 485_mm}, guessed, offsets);
    CHECK(*fit.margin > 0_mm);
    REQUIRE(*fit.probability > 0.2);
    CHECK(fit.verdict == Verdict::close_call);
    const InseamEstimate hardly_known{500_mm, 120_mm};
    const Fit hardly = fit_of({480_mm, 485_mm}, hardly_known, offsets);
    CHECK(*hardly.margin > 0_mm);
    REQUIRE(*hardly.probability <= 0.2);
    CHECK(hardly.verdict == Verdict::outgrown); // 10 mm to spare above, 25 mm below
    CHECK_FALSE(hardly.setting);
}

TEST_CASE("an outgrown bike is named so and says by how much it misses", "[fit]") {
    const Fit fit = fit_for(600_mm, Stage::riding, {400_mm, 600_mm});
    CHECK(fit.verdict == Verdict::outgrown);
    check_length(*fit.margin, -51_mm);
}

TEST_CASE("a bike without one end measured gets a verdict only where that end cannot change it", "[fit]") {
    SECTION("too tall whatever its highest is") {
        CHECK(fit_for(500_mm, Stage::starting, {560_mm, {}}).verdict == Verdict::too_tall);
    }
    SECTION("outgrown whatever its lowest is") {
        CHECK(fit_for(600_mm, Stage::riding, {{}, 600_mm}).verdict == Verdict::outgrown);
    }
    SECTION("its lowest is already inside the window") {
        const Fit fit = fit_for(500_mm, Stage::starting, {495_mm, {}});
        CHECK(fit.verdict == Verdict::fits_now);
        CHECK(fit.setting->above_lowest);
        CHECK_FALSE(fit.setting->below_highest);
    }
    SECTION("it goes low enough, and how high it goes decides") {
        const Fit fit = fit_for(500_mm, Stage::riding, {420_mm, {}});
        CHECK(fit.verdict == Verdict::not_measured);
        CHECK_FALSE(fit.probability);
        CHECK_FALSE(fit.margin);
        CHECK_FALSE(fit.setting);
    }
    SECTION("it goes high enough, and how low it goes decides") {
        CHECK(fit_for(500_mm, Stage::starting, {{}, 620_mm}).verdict == Verdict::not_measured);
    }
    SECTION("neither end") {
        CHECK(fit_for(500_mm, Stage::starting, {}).verdict == Verdict::not_measured);
    }
}

TEST_CASE("an estimate instead of a reading widens the close calls", "[fit]") {
    const WindowOffsets offsets = window_offsets(Stage::starting, Confidence::usual);
    const SaddleSpan span{490_mm, 600_mm};
    CHECK(fit_of(span, {500_mm, 8_mm}, offsets).verdict == Verdict::fits_now);
    CHECK(fit_of(span, {500_mm, 30_mm}, offsets).verdict == Verdict::close_call);
}

// The sum of the two one-sided chances leaves out that a bike may be too tall and outgrown at once.
// Integrating over the inseam gives the exact value; the difference must stay as small as fit_verdict.h says.
TEST_CASE("the chance of fitting agrees with an integral over the inseam", "[fit]") {
    const WindowOffsets offsets = window_offsets(Stage::starting, Confidence::usual);
    for (const double lowest : {470.0, 490.0, 500.0, 510.0, 530.0}) {
        for (const double length : {10.0, 40.0, 120.0}) {
            const double step = 0.05;
            double exact = 0.0;
            for (double z = -8.0; z < 8.0; z += step) {
                const double inseam = 500.0 + 8.0 * z;
                const double low_enough =
                    normal::cdf((inseam + offsets.range.high().in_millimetres() - lowest) / 5.0);
                const double high_enough =
                    normal::cdf((lowest + length - inseam - offsets.range.low().in_millimetres()) / 5.0);
                exact += normal::density(z) * step * low_enough * high_enough;
            }
            const Length low = Length::millimetres(lowest);
            const Fit fit = fit_of({low, low + Length::millimetres(length)}, {500_mm, 8_mm}, offsets);
            CAPTURE(lowest, length);
            CHECK(*fit.probability == Approx(exact).margin(0.001));
        }
    }
}
