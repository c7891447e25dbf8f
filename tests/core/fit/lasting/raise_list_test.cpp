// The raise list: dates and heights for a diary.
#include "core/fit/lasting/raise_list.h"

#include "core/fit/growth/inseam_forecast.h"
#include "core/fit/lasting/life_of_fit.h"
#include "tests/core/fit/lasting/invented_riders.h"
#include "tests/domain_checkers.h"

#include <algorithm>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

const CalendarDate today = date("2026-11-25");

Rider girl_of_five(Stage stage) {
    Rider rider;
    rider.readings.push_back({.on = today, .inseam = 495_mm, .shoes = true});
    rider.born = date("2021-09-15");
    rider.sex = Sex::girl;
    rider.stage = stage;
    return rider;
}

std::vector<SaddleRaise> raises(const Rider& rider, const SaddleSpan& span) {
    return raise_list(FitForecast(RiderGrowth::of(rider, today), rider), span);
}

} // namespace

TEST_CASE("a riding child's saddle goes up 10 mm at a time from today's setting to the top", "[lasting]") {
    const auto list = raises(girl_of_five(Stage::riding), {500_mm, 645_mm});
    REQUIRE(list.size() == 7); // from 571 mm: 581, 591, ... 641
    CalendarDate before = today;
    for (std::size_t i = 0; i < list.size(); ++i) {
        check_length(list[i].saddle, 571_mm + 10_mm * static_cast<double>(i + 1));
        CHECK(list[i].on > before);
        before = list[i].on;
    }
}

TEST_CASE("each raise is due when the median inseam asks for it", "[lasting]") {
    const Rider rider = girl_of_five(Stage::riding);
    const InseamForecast forecast(RiderGrowth::of(rider, today));
    const auto list = raises(rider, {500_mm, 720_mm});
    REQUIRE(list.size() > 10);
    for (const auto& [on, saddle, stage] : list) {
        CHECK(!stage);
        const Length asked = forecast.at(on).quantile(0.5) + 76_mm;
        CHECK(asked.in_millimetres() == Approx(saddle.in_millimetres()).margin(0.3));
    }
}

TEST_CASE("a bike still too tall starts at its lowest, and is raised once the child needs more",
          "[lasting]") {
    const Rider rider = girl_of_five(Stage::riding);
    const auto list = raises(rider, {640_mm, 700_mm});
    REQUIRE(list.size() == 6);
    check_length(list.front().saddle, 650_mm);
    const Length asked =
        InseamForecast(RiderGrowth::of(rider, today)).at(list.front().on).quantile(0.5) + 76_mm;
    CHECK(asked.in_millimetres() == Approx(650.0).margin(0.3));
}

TEST_CASE("a bike at its top, or outgrown, is raised no more", "[lasting]") {
    CHECK(raises(girl_of_five(Stage::riding), {450_mm, 571_mm}).empty());
    CHECK(raises(girl_of_five(Stage::riding), {450_mm, 578_mm}).empty());
    CHECK(raises(girl_of_five(Stage::riding), {380_mm, 480_mm}).empty());
}

TEST_CASE("when riding begins the saddle goes up by the whole difference, in one entry", "[lasting]") {
    Rider rider = girl_of_five(Stage::starting);
    rider.riding_from = date("2027-05-01");
    const auto list = raises(rider, {470_mm, 700_mm});
    const auto change = std::find_if(list.begin(), list.end(),
                                     [](const SaddleRaise& raise) { return raise.on == date("2027-05-01"); });
    REQUIRE(change != list.end());
    REQUIRE(change != list.begin());
    const Length step = change->saddle - (change - 1)->saddle;
    CHECK(step.in_millimetres() >= 70.0);
    CHECK(step.in_millimetres() <= 90.0);
    const auto on_that_day = std::count_if(
        list.begin(), list.end(), [](const SaddleRaise& raise) { return raise.on == date("2027-05-01"); });
    CHECK(on_that_day == 1);
}

TEST_CASE("when side wheels come off the saddle goes down so that both feet are flat", "[lasting]") {
    Rider rider = girl_of_five(Stage::side_wheels);
    rider.confidence = Confidence::bold;
    rider.riding_from = date("2027-01-10");
    const auto list = raises(rider, {470_mm, 700_mm});
    const auto change = std::find_if(list.begin(), list.end(),
                                     [](const SaddleRaise& raise) { return raise.on == date("2027-01-10"); });
    REQUIRE(change != list.end());
    const Length inseam = InseamForecast(RiderGrowth::of(rider, today)).at(change->on).quantile(0.5);
    CHECK(change->saddle <= inseam + 1_mm);
    CHECK(change->saddle >= inseam - 10_mm);
}

TEST_CASE("a step of growth just before a change of stage is left to the change", "[lasting]") {
    Rider rider = girl_of_five(Stage::starting);
    const SaddleSpan span{470_mm, 700_mm};
    rider.riding_from = date("2028-11-25");
    const CalendarDate growth_step = raises(rider, span)[1].on;
    rider.riding_from = growth_step.plus(Days(20.0));
    const auto list = raises(rider, span);
    REQUIRE(list.size() > 1);
    CHECK(list[1].on == *rider.riding_from);
    CHECK(list[1].stage == Stage::riding);
    CHECK(list[1].saddle - list[0].saddle > 76_mm);
}

TEST_CASE("nothing is set in a pause; what comes after it goes down or up to the new target", "[lasting]") {
    // Inseam 470, bold: 546 today; 530 is too tall for starting, six to twelve months from now.
    Rider rider;
    rider.readings.push_back({.on = today, .inseam = 470_mm, .shoes = true});
    rider.stage = Stage::side_wheels;
    rider.confidence = Confidence::bold;
    const auto list = raises(rider, {530_mm, 640_mm});
    REQUIRE(!list.empty());
    for (const SaddleRaise& raise : list)
        CHECK((raise.on < today.plus_months(6) || raise.on >= today.plus_months(12)));
    const auto riding = std::find_if(list.begin(), list.end(),
                                     [](const SaddleRaise& raise) { return raise.stage.has_value(); });
    REQUIRE(riding != list.end());
    CHECK(riding->on == today.plus_months(12));
    CHECK(riding->stage == Stage::riding);

    const Length at_nine_months =
        InseamForecast(RiderGrowth::of(rider, today)).at(today.plus_months(9)).quantile(0.5);
    const SaddleSpan sooner{at_nine_months + 10_mm, 640_mm};
    const auto with_starting = raises(rider, sooner);
    const auto down = std::find_if(with_starting.begin(), with_starting.end(),
                                   [](const SaddleRaise& raise) { return raise.stage == Stage::starting; });
    REQUIRE(down != with_starting.end());
    CHECK(std::abs((down->on - today.plus_months(9)).count()) <= 4.0);
    check_length(down->saddle, *sooner.lowest);
}

TEST_CASE("steps are usable for every rider and bike", "[lasting]") {
    int steps = 0;
    int with_stage = 0;
    int downwards = 0;
    for (const Rider& rider : invented_riders(today)) {
        const RiderGrowth growth = RiderGrowth::of(rider, today);
        const FitForecast forecast(growth, rider);
        const InseamForecast inseams(growth);
        const auto timeline = stage_timeline(rider, today);
        for (double lowest = 340.0; lowest < 760.0; lowest += 26.0) {
            for (const double length : {40.0, 130.0, 250.0}) {
                const SaddleSpan span{Length::millimetres(lowest), Length::millimetres(lowest + length)};
                const LifeOfFit life = life_of_fit(forecast, span);
                CalendarDate before = today;
                std::optional<Length> height;
                for (const SaddleRaise& raise : raise_list(forecast, span)) {
                    INFO("stage " << static_cast<int>(rider.stage) << " lowest " << lowest << " length "
                                  << length << " on " << raise.on.to_iso() << " at "
                                  << raise.saddle.in_millimetres());
                    ++steps;
                    with_stage += raise.stage ? 1 : 0;
                    const StageFrom* stage = &timeline.front();
                    for (const StageFrom& next : timeline) {
                        if (next.from <= raise.on)
                            stage = &next;
                    }
                    const WindowOffsets offsets = window_offsets(stage->stage, rider.confidence);
                    const Length median = inseams.at(raise.on).quantile(0.5);
                    // The day is whole, the forecast exact to 0.3 mm.
                    CHECK(raise.saddle >= median + offsets.range.low() - 0.5_mm);
                    CHECK(raise.saddle <= median + offsets.range.high() + 0.5_mm);
                    CHECK(raise.saddle >= *span.lowest);
                    CHECK(raise.saddle <= *span.highest);
                    CHECK(
                        (raise.on - before >= least_time_between_raises || (raise.stage && before == today)));
                    CHECK(!(life.outgrown->p50 && raise.on >= *life.outgrown->p50));
                    for (const PauseInFit& pause : life.pauses)
                        CHECK(!(pause.from <= raise.on && raise.on < pause.to));
                    if (raise.stage)
                        CHECK(*raise.stage == stage->stage);
                    if (height && raise.saddle < *height) {
                        ++downwards;
                        const bool after_pause =
                            std::any_of(life.pauses.begin(), life.pauses.end(), [&](const PauseInFit& pause) {
                                return before < pause.to && pause.to <= raise.on;
                            });
                        CHECK((raise.stage || after_pause));
                    }
                    height = raise.saddle;
                    before = raise.on;
                }
            }
        }
    }
    CHECK(steps > 5000);
    CHECK(with_stage > 400);
    CHECK(downwards > 20);
}

TEST_CASE("a bike without both ends measured has no raise list", "[lasting]") {
    CHECK(raises(girl_of_five(Stage::riding), {500_mm, {}}).empty());
    CHECK(raises(girl_of_five(Stage::riding), {{}, 700_mm}).empty());
    CHECK(raises(girl_of_five(Stage::riding), {}).empty());
}
