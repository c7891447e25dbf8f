// Pauses: times in which a bike that has fitted does not, checked by hand from the stage rules (common practice).
#include "core/fit/growth/inseam_forecast.h"
#include "core/fit/lasting/life_of_fit.h"
#include "tests/core/fit/lasting/invented_riders.h"
#include "tests/domain_checkers.h"

#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

const CalendarDate today = date("2026-11-25");

Rider bold_on_side_wheels(Length inseam) {
    Rider rider;
    rider.readings.push_back({.on = today, .inseam = inseam, .shoes = true});
    rider.stage = Stage::side_wheels;
    rider.confidence = Confidence::bold;
    return rider;
}

LifeOfFit life(const Rider& rider, const SaddleSpan& span) {
    return life_of_fit(FitForecast(RiderGrowth::of(rider, today), rider), span);
}

Length median_inseam(const Rider& rider, CalendarDate day) {
    return InseamForecast(RiderGrowth::of(rider, today)).at(day).quantile(0.5);
}

} // namespace

TEST_CASE(
    "a bike for bold side wheels is too tall while the child learns to ride alone, and fits again for riding",
    "[lasting]") {
    // Inseam 470. Side wheels: up to 3 in above the inseam, so 530 fits. Starting: up to 10 mm above it, so 530 asks for an
    // inseam of 520. Riding: 51 to 102 mm above it, so 530 asks for 428.
    const Rider rider = bold_on_side_wheels(470_mm);
    const LifeOfFit result = life(rider, {530_mm, 640_mm});
    CHECK(!result.fits_from);
    REQUIRE(result.pauses.size() == 1);
    const PauseInFit& pause = result.pauses.front();
    CHECK(pause.from == today.plus_months(6));
    CHECK(pause.to == today.plus_months(12));
    CHECK(pause.cause == PauseCause::too_tall);
    CHECK(median_inseam(rider, pause.from) + 10_mm < 530_mm);
    CHECK(median_inseam(rider, pause.to) + 102_mm >= 530_mm);
    CHECK(result.outgrown->p50 > pause.to);
}

TEST_CASE("a pause may end before the next stage, on the day the legs have grown enough", "[lasting]") {
    const Rider rider = bold_on_side_wheels(470_mm);
    const Length lowest = median_inseam(rider, today.plus_months(9)) + 10_mm;
    const LifeOfFit result = life(rider, {lowest, 640_mm});
    REQUIRE(result.pauses.size() == 1);
    CHECK(result.pauses.front().from == today.plus_months(6));
    CHECK(std::abs((result.pauses.front().to - today.plus_months(9)).count()) <= 3.0);
}

TEST_CASE("a bike too tall until the day it is outgrown pauses until that day", "[lasting]") {
    // Riding asks for a highest saddle 51 mm above the inseam: at 500 that is 551.
    const LifeOfFit result = life(bold_on_side_wheels(470_mm), {530_mm, 545_mm});
    REQUIRE(result.pauses.size() == 1);
    CHECK(result.pauses.front().from == today.plus_months(6));
    CHECK(result.pauses.front().to == result.outgrown->p50);
    CHECK(result.pauses.front().to == today.plus_months(12));
}

TEST_CASE("the family's own date moves the pause", "[lasting]") {
    Rider rider = bold_on_side_wheels(470_mm);
    rider.riding_from = date("2027-02-10");
    const LifeOfFit result = life(rider, {530_mm, 640_mm});
    REQUIRE(result.pauses.size() == 1);
    CHECK(result.pauses.front().from == date("2027-02-10"));
    CHECK(result.pauses.front().to == date("2027-08-10"));
}

TEST_CASE("months of fit leave the pause out", "[lasting]") {
    const Rider rider = bold_on_side_wheels(470_mm);
    const LifeOfFit paused = life(rider, {530_mm, 640_mm});
    const LifeOfFit not_paused = life(rider, {470_mm, 640_mm});
    REQUIRE(not_paused.pauses.empty());
    CHECK(not_paused.outgrown->p50 == paused.outgrown->p50);
    CHECK(not_paused.months_of_fit->mean - paused.months_of_fit->mean == Approx(6.0).margin(0.5));
}

TEST_CASE("what never fits, no longer fits or is not measured has no pause", "[lasting]") {
    const Rider rider = bold_on_side_wheels(470_mm);
    CHECK(life(rider, {600_mm, 640_mm}).pauses.empty()); // too tall today: a date from which it fits says so
    CHECK(life(rider, {380_mm, 440_mm}).pauses.empty());
    CHECK(life(rider, {530_mm, {}}).pauses.empty());
    CHECK(life(rider, {{}, 640_mm}).pauses.empty());
}

TEST_CASE("pauses are in order, within the time of fit, and the only ones in which the curve is low",
          "[lasting]") {
    int pauses = 0;
    for (const Rider& rider : invented_riders(today)) {
        const FitForecast forecast(RiderGrowth::of(rider, today), rider);
        for (double lowest = 340.0; lowest < 760.0; lowest += 7.0) {
            for (const double length : {15.0, 60.0, 140.0}) {
                const SaddleSpan span{Length::millimetres(lowest), Length::millimetres(lowest + length)};
                const LifeOfFit result = life_of_fit(forecast, span);
                const FitCurve curve = *fit_curve(forecast, span);
                CalendarDate before = today;
                bool in_order = true;
                for (const PauseInFit& pause : result.pauses) {
                    in_order = in_order && before <= pause.from && pause.from < pause.to &&
                               (!result.outgrown->p50 || pause.to <= *result.outgrown->p50);
                    before = pause.to;
                    ++pauses;
                }
                CHECK(in_order);
                bool has_fitted = false;
                bool curve_agrees = true;
                for (int month = 0; month <= horizon_months; ++month) {
                    const CalendarDate day = today.plus(Days::months(month));
                    // Where the curve turns, it may do so a day before or after.
                    const auto near = [&](CalendarDate turn) {
                        return std::abs((turn - day).count()) <= 1.0;
                    };
                    bool pausing = false;
                    bool turning = result.outgrown->p50 && near(*result.outgrown->p50);
                    for (const PauseInFit& pause : result.pauses) {
                        pausing = pausing || (pause.from <= day && day < pause.to);
                        turning = turning || near(pause.from) || near(pause.to);
                    }
                    const double chance = curve[static_cast<std::size_t>(month)];
                    if (pausing && !turning)
                        curve_agrees = curve_agrees && chance < 0.5;
                    // Low without a pause: before it ever fits, or on the way to be outgrown for good.
                    if (!pausing && !turning && chance < 0.5 && has_fitted) {
                        for (int later = month; later <= horizon_months; ++later)
                            curve_agrees = curve_agrees && curve[static_cast<std::size_t>(later)] < 0.5;
                    }
                    has_fitted = has_fitted || chance >= 0.5;
                }
                CHECK(curve_agrees);
            }
        }
    }
    CHECK(pauses > 200);
}
