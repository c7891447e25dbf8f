// The raise list: dates and heights for a diary.
#include "core/fit/lasting/raise_list.h"

#include "core/fit/growth/inseam_forecast.h"
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
    for (const auto& [on, saddle] : list) {
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

TEST_CASE("heights never leave the bike's span and dates are in order", "[lasting]") {
    for (const Stage stage : {Stage::gliding, Stage::side_wheels, Stage::starting, Stage::riding}) {
        for (double lowest = 400.0; lowest < 700.0; lowest += 17.0) {
            const SaddleSpan span{Length::millimetres(lowest), Length::millimetres(lowest + 93.0)};
            CalendarDate before = today;
            for (const auto& [on, saddle] : raises(girl_of_five(stage), span)) {
                CHECK(on > before);
                CHECK(saddle >= *span.lowest);
                CHECK(saddle <= *span.highest);
                before = on;
            }
        }
    }
}

TEST_CASE("a bike without both ends measured has no raise list", "[lasting]") {
    CHECK(raises(girl_of_five(Stage::riding), {500_mm, {}}).empty());
    CHECK(raises(girl_of_five(Stage::riding), {{}, 700_mm}).empty());
    CHECK(raises(girl_of_five(Stage::riding), {}).empty());
}
