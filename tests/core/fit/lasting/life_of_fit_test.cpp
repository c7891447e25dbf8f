// How long a bike fits, against the model worked out plainly day by day and against simulated children.
#include "core/fit/lasting/life_of_fit.h"

#include "core/base/statistics/normal_distribution.h"
#include "tests/core/fit/growth/plain_mixture.h"
#include "tests/core/fit/growth/simulated_child.h"
#include "tests/domain_checkers.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

const CalendarDate today = date("2026-11-25");

struct Child {
    double inseam;
    std::optional<Sex> sex;
    std::optional<double> age;
    Stage stage = Stage::riding;
};

Rider rider_for(const Child& child) {
    Rider rider;
    rider.readings.push_back({.on = today, .inseam = Length::millimetres(child.inseam), .shoes = true});
    rider.sex = child.sex;
    rider.stage = child.stage;
    if (child.age)
        rider.born = today.plus(Days::years(-*child.age));
    return rider;
}

FitForecast forecast_for(const Rider& rider) {
    return {RiderGrowth::of(rider, today), rider};
}

const Child girl_of_five{.inseam = 495.0, .sex = Sex::girl, .age = 5.0, .stage = Stage::riding};

SaddleSpan span(double lowest, double highest) {
    return {.lowest = Length::millimetres(lowest), .highest = Length::millimetres(highest)};
}

/// Months from today, the horizon where it is beyond.
double months_until(const std::optional<CalendarDate>& day) {
    return day ? (*day - today).in_months() : horizon_months;
}

/// The stage's window on a day some months on.
WindowOffsets offsets_at(const Rider& rider, double months) {
    Stage stage = rider.stage;
    for (const auto& [from, next] : stage_timeline(rider, today)) {
        if ((from - today).in_months() <= months)
            stage = next;
    }
    return window_offsets(stage, rider.confidence);
}

/// The chances of one bike worked out plainly, four times a month.
class PlainLife {
public:
    PlainLife(const Child& child, const SaddleSpan& bike) {
        const Rider rider = rider_for(child);
        std::optional<double> age;
        if (rider.born)
            age = (today - *rider.born).in_years();
        const PlainMixture growth(child.inseam, child.sex, age, 0.5);
        double left_behind = 0.0;
        double reached_once = 0.0;
        for (double month = 0.5 * step; month < horizon_months; month += step) {
            const WindowOffsets offsets = offsets_at(rider, month);
            const double too_short =
                growth.probability_below((*bike.lowest - offsets.range.high()).in_millimetres(), month, 5.0);
            const double not_out =
                growth.probability_below((*bike.highest - offsets.range.low()).in_millimetres(), month, 5.0);
            left_behind = std::max(left_behind, 1.0 - not_out);
            reached_once = std::max(reached_once, 1.0 - too_short);
            mean_ += step * std::max(1.0 - too_short - left_behind, 0.0);
            left_behind_.push_back(left_behind);
            reached_.push_back(reached_once);
        }
    }

    double mean() const { return mean_; }
    double outgrown(double p) const { return first(left_behind_, p); }
    double reached(double p) const { return first(reached_, p); }

private:
    /// When a rising chance comes to p: straight lines between the middles of the steps.
    static double first(const std::vector<double>& chances, double p) {
        const auto found = std::lower_bound(chances.begin(), chances.end(), p);
        if (found == chances.begin())
            return 0.0;
        if (found == chances.end())
            return horizon_months;
        const double part = (p - *(found - 1)) / (*found - *(found - 1));
        return step * (static_cast<double>(found - chances.begin()) - 0.5 + part);
    }

    static constexpr double step = 0.25;
    double mean_ = 0.0;
    std::vector<double> left_behind_;
    std::vector<double> reached_;
};

} // namespace

TEST_CASE("dates and mean months agree with the model worked out plainly", "[lasting]") {
    const auto child = GENERATE(values<Child>({{495.0, Sex::girl, 5.0, Stage::riding},
                                               {495.0, Sex::boy, 5.5, Stage::starting},
                                               {495.0, std::nullopt, 5.0, Stage::side_wheels},
                                               {640.0, std::nullopt, 9.0, Stage::riding},
                                               {600.0, Sex::boy, std::nullopt, Stage::gliding}}));
    const double lower = child.inseam - 495.0;
    for (const auto& bike :
         {span(480.0, 620.0), span(530.0, 680.0), span(600.0, 690.0), span(440.0, 505.0)}) {
        const SaddleSpan shifted =
            span(bike.lowest->in_millimetres() + lower, bike.highest->in_millimetres() + lower);
        const LifeOfFit life = life_of_fit(forecast_for(rider_for(child)), shifted);
        const PlainLife plain(child, shifted);
        CAPTURE(child.inseam, static_cast<int>(child.stage), bike.lowest->in_millimetres());
        CHECK(life.months_of_fit->mean == Approx(plain.mean()).margin(0.2));
        CHECK(months_until(life.outgrown->p10) == Approx(plain.outgrown(0.1)).margin(0.25));
        CHECK(months_until(life.outgrown->p50) == Approx(plain.outgrown(0.5)).margin(0.25));
        CHECK(months_until(life.outgrown->p90) == Approx(plain.outgrown(0.9)).margin(0.6));
        if (life.fits_from) {
            CHECK(months_until(life.fits_from->p10) == Approx(plain.reached(0.1)).margin(0.25));
            CHECK(months_until(life.fits_from->p50) == Approx(plain.reached(0.5)).margin(0.25));
            CHECK(months_until(life.fits_from->p90) == Approx(plain.reached(0.9)).margin(0.6));
        } else {
            CHECK(plain.reached(0.5) == Approx(0.0).margin(0.15));
        }
    }
}

// Children drawn from the model whose reading comes out as the rider's, growing month by month, on bikes
// measured with an error of 5 mm at either end. 2000 of them: the mean's standard error is about 0.2 months,
// a quantile's about 0.4.
TEST_CASE("months of fit are those of simulated children", "[lasting]") {
    const auto child = GENERATE(values<Child>({{495.0, Sex::girl, 5.0, Stage::riding},
                                               {495.0, std::nullopt, std::nullopt, Stage::starting},
                                               {640.0, Sex::boy, 9.0, Stage::riding}}));
    RepeatableRandom random(2005);
    const Rider rider = rider_for(child);
    const std::size_t wanted = 2000;
    std::vector<std::vector<double>> courses;
    while (courses.size() < wanted) {
        const Sex sex = child.sex ? *child.sex : random.even_chance() ? Sex::girl : Sex::boy;
        SimulatedChild one(random, sex, child.age ? *child.age : random.uniform(3.0, 16.0));
        if (std::fabs(one.home_reading().in_millimetres() - child.inseam) > 1.0)
            continue;
        std::vector<double> inseams{one.inseam_mm()};
        for (int month = 1; month <= horizon_months; ++month) {
            one.grow_by_months(1);
            inseams.push_back(std::max(inseams.back(), one.inseam_mm()));
        }
        courses.push_back(std::move(inseams));
    }

    const FitForecast forecast = forecast_for(rider);
    const double taller = child.inseam - 495.0;
    for (const auto& bike :
         {span(480.0, 620.0), span(495.0, 560.0), span(560.0, 640.0), span(585.0, 690.0)}) {
        const double lowest = bike.lowest->in_millimetres() + taller;
        const double highest = bike.highest->in_millimetres() + taller;
        std::vector<double> months;
        double mean = 0.0;
        for (const std::vector<double>& inseams : courses) {
            const double real_lowest = lowest + 5.0 * random.normal();
            const double real_highest = highest + 5.0 * random.normal();
            double fits = 0.0;
            const double step = 0.25;
            for (double month = 0.125; month < horizon_months; month += step) {
                const auto whole = static_cast<std::size_t>(month);
                const double part = month - static_cast<double>(whole);
                const double inseam = inseams[whole] + part * (inseams[whole + 1] - inseams[whole]);
                const WindowOffsets offsets = offsets_at(rider, month);
                if (real_highest < inseam + offsets.range.low().in_millimetres())
                    break;
                if (real_lowest <= inseam + offsets.range.high().in_millimetres())
                    fits += step;
            }
            months.push_back(fits);
            mean += fits / wanted;
        }
        std::sort(months.begin(), months.end());
        const MonthsOfFit ours = *life_of_fit(forecast, span(lowest, highest)).months_of_fit;
        CAPTURE(child.inseam, lowest, highest);
        CHECK(ours.mean == Approx(mean).margin(1.0));
        CHECK(ours.p10 == Approx(months[wanted / 10]).margin(1.2));
        CHECK(ours.p50 == Approx(months[wanted / 2]).margin(1.2));
        CHECK(ours.p90 == Approx(months[wanted * 9 / 10]).margin(2.0));
    }
}

TEST_CASE("quantiles are in order for every bike and rider", "[lasting]") {
    RepeatableRandom random(31);
    for (int trial = 0; trial < 60; ++trial) {
        Child child{.inseam = random.uniform(380.0, 850.0), .sex = {}, .age = {}, .stage = Stage::starting};
        child.stage = static_cast<Stage>(trial % 4);
        if (trial % 3 == 0)
            child.age = 2.0 + (child.inseam - 380.0) / 40.0;
        if (trial % 5 < 3)
            child.sex = trial % 2 == 0 ? Sex::girl : Sex::boy;
        const FitForecast forecast = forecast_for(rider_for(child));
        for (int i = 0; i < 40; ++i) {
            const double lowest = child.inseam + random.uniform(-250.0, 300.0);
            const LifeOfFit life = life_of_fit(forecast, span(lowest, lowest + random.uniform(0.0, 250.0)));
            const MonthsOfFit months = *life.months_of_fit;
            REQUIRE(months.p10 >= 0.0);
            REQUIRE(months.p10 <= months.p50);
            REQUIRE(months.p50 <= months.p90);
            REQUIRE(months.p90 <= horizon_months);
            REQUIRE(months.mean >= 0.0);
            REQUIRE(months.mean <= horizon_months);
            for (const auto& dates : {life.fits_from, life.outgrown}) {
                if (!dates)
                    continue;
                REQUIRE(months_until(dates->p10) <= months_until(dates->p50));
                REQUIRE(months_until(dates->p50) <= months_until(dates->p90));
                REQUIRE(months_until(dates->p10) >= 0.0);
            }
        }
    }
}

TEST_CASE("a longer seat post never shortens the life of a bike, a higher lowest saddle never lengthens it",
          "[lasting]") {
    const FitForecast forecast = forecast_for(rider_for(girl_of_five));
    double before = 0.0;
    for (double highest = 500.0; highest < 900.0; highest += 3.0) {
        const double mean = life_of_fit(forecast, span(490.0, highest)).months_of_fit->mean;
        CHECK(mean >= before - 1e-9);
        before = mean;
    }
    before = horizon_months;
    for (double lowest = 480.0; lowest < 800.0; lowest += 3.0) {
        const double mean = life_of_fit(forecast, span(lowest, 900.0)).months_of_fit->mean;
        CHECK(mean <= before + 1e-9);
        before = mean;
    }
}

TEST_CASE("while the stage stays, a bike that goes low enough only ever loses chance", "[lasting]") {
    const FitCurve curve = *fit_curve(forecast_for(rider_for(girl_of_five)), span(480.0, 640.0));
    for (std::size_t month = 1; month < curve.size(); ++month)
        CHECK(curve[month] <= curve[month - 1] + 1e-9);
    CHECK(curve.front() > 0.99);
    CHECK(curve.back() < 0.01);
}

TEST_CASE("the curve's area is the mean of the months", "[lasting]") {
    const FitForecast forecast = forecast_for(rider_for(girl_of_five));
    const SaddleSpan bike = span(590.0, 700.0);
    const FitCurve curve = *fit_curve(forecast, bike);
    double area = 0.0;
    for (std::size_t month = 1; month < curve.size(); ++month)
        area += 0.5 * (curve[month - 1] + curve[month]);
    CHECK(life_of_fit(forecast, bike).months_of_fit->mean == Approx(area).margin(1e-6));
}

TEST_CASE("today's chance in the curve is the verdict's, where the reading is an average one", "[lasting]") {
    Child child = girl_of_five;
    child.inseam = 526.5; // the median of Dutch girls of five
    Rider rider = rider_for(child);
    rider.population = Population::nl;
    const FitForecast forecast = forecast_for(rider);
    const InseamToday inseam = RiderGrowth::of(rider, today).today();
    for (const double lowest : {560.0, 610.0, 625.0, 640.0}) {
        const SaddleSpan bike = span(lowest, lowest + 100.0);
        const Fit fit =
            fit_of(bike, {inseam.mean, inseam.sd}, window_offsets(Stage::riding, Confidence::usual));
        CHECK((*fit_curve(forecast, bike))[0] == Approx(*fit.probability).margin(0.02));
    }
}

TEST_CASE("a bike that fits today has no date from which it fits", "[lasting]") {
    const LifeOfFit life = life_of_fit(forecast_for(rider_for(girl_of_five)), span(500.0, 640.0));
    CHECK_FALSE(life.fits_from);
    REQUIRE(life.outgrown);
    CHECK(life.months_of_fit->p50 == Approx(months_until(life.outgrown->p50)).margin(0.5));
}

TEST_CASE("a bike still too tall has dates from which it fits, before those on which it is outgrown",
          "[lasting]") {
    const LifeOfFit life = life_of_fit(forecast_for(rider_for(girl_of_five)), span(640.0, 760.0));
    REQUIRE(life.fits_from);
    REQUIRE(life.fits_from->p90);
    CHECK(*life.fits_from->p10 > today);
    CHECK(*life.fits_from->p50 < *life.outgrown->p50);
    CHECK(life.months_of_fit->mean > 12.0);
}

TEST_CASE("an outgrown bike was outgrown by today and fits for no time", "[lasting]") {
    const LifeOfFit life = life_of_fit(forecast_for(rider_for(girl_of_five)), span(350.0, 480.0));
    CHECK(life.outgrown->p10 == today);
    CHECK(life.outgrown->p90 == today);
    CHECK(life.months_of_fit->p90 == 0.0);
    CHECK(life.months_of_fit->mean == Approx(0.0).margin(1e-6));
    CHECK_FALSE(life.fits_from);
}

TEST_CASE("what is beyond the horizon has no date", "[lasting]") {
    const FitForecast forecast = forecast_for(rider_for(girl_of_five));
    const LifeOfFit adult_bike = life_of_fit(forecast, span(1150.0, 1300.0));
    REQUIRE(adult_bike.fits_from);
    CHECK_FALSE(adult_bike.fits_from->p10);
    CHECK_FALSE(adult_bike.outgrown->p10);
    CHECK(adult_bike.months_of_fit->p90 == 0.0);

    const LifeOfFit endless = life_of_fit(forecast, span(500.0, 1300.0));
    CHECK_FALSE(endless.outgrown->p10);
    CHECK(endless.months_of_fit->p10 == Approx(horizon_months));
    CHECK(endless.months_of_fit->mean == Approx(horizon_months).margin(0.05));
}

TEST_CASE("an end of the span that was not measured leaves out what hangs on it, and nothing else",
          "[lasting]") {
    const FitForecast forecast = forecast_for(rider_for(girl_of_five));
    const LifeOfFit whole = life_of_fit(forecast, span(640.0, 760.0));
    SECTION("the highest") {
        const LifeOfFit life = life_of_fit(forecast, {.lowest = 640_mm, .highest = {}});
        REQUIRE(life.fits_from);
        CHECK(life.fits_from->p50 == whole.fits_from->p50);
        CHECK_FALSE(life.outgrown);
        CHECK_FALSE(life.months_of_fit);
        CHECK_FALSE(fit_curve(forecast, {.lowest = 640_mm, .highest = {}}));
    }
    SECTION("the lowest") {
        const LifeOfFit life = life_of_fit(forecast, {.lowest = {}, .highest = 760_mm});
        CHECK_FALSE(life.fits_from);
        REQUIRE(life.outgrown);
        CHECK(life.outgrown->p90 == whole.outgrown->p90);
        CHECK_FALSE(life.months_of_fit);
    }
    SECTION("both") {
        const LifeOfFit life = life_of_fit(forecast, {});
        CHECK_FALSE(life.fits_from);
        CHECK_FALSE(life.outgrown);
        CHECK_FALSE(life.months_of_fit);
    }
}

TEST_CASE("a low bike for a starting rider is done the day riding begins, which the family sets",
          "[lasting]") {
    Child child = girl_of_five;
    child.stage = Stage::starting;
    Rider rider = rider_for(child);
    const SaddleSpan low = span(420.0, 520.0); // good for flat feet, too low for tiptoes
    SECTION("usually six months on") {
        const LifeOfFit life = life_of_fit(forecast_for(rider), low);
        CHECK(life.outgrown->p50 == today.plus_months(6));
        CHECK(life.months_of_fit->p50 == Approx(6.0).margin(0.1));
    }
    SECTION("on the family's date") {
        rider.riding_from = date("2027-09-03");
        const LifeOfFit life = life_of_fit(forecast_for(rider), span(420.0, 560.0));
        CHECK(life.outgrown->p50 == date("2027-09-03"));
    }
}

TEST_CASE("a bike too tall for a starting rider may fit the day riding begins", "[lasting]") {
    Child child = girl_of_five;
    child.stage = Stage::starting;
    Rider rider = rider_for(child);
    rider.riding_from = date("2027-03-01");
    const LifeOfFit life = life_of_fit(forecast_for(rider), span(545.0, 660.0));
    REQUIRE(life.fits_from);
    CHECK(life.fits_from->p50 == date("2027-03-01"));
}

TEST_CASE("a bike once outgrown stays outgrown, though the next stage sits lower", "[lasting]") {
    // On side wheels the saddle has to reach the inseam, for starting it may be 25 mm below.
    Child child = girl_of_five;
    child.stage = Stage::side_wheels;
    const LifeOfFit life = life_of_fit(forecast_for(rider_for(child)), span(400.0, 480.0));
    CHECK(life.outgrown->p50 == today);
    CHECK(life.months_of_fit->p50 == 0.0);
}

TEST_CASE("a stage that begins beyond the horizon changes nothing", "[lasting]") {
    Child child = girl_of_five;
    child.stage = Stage::starting;
    Rider rider = rider_for(child);
    rider.riding_from = date("2050-01-01");
    const FitForecast forecast = forecast_for(rider);
    CHECK(forecast.stages().size() == 1);
    CHECK(life_of_fit(forecast, span(400.0, 1300.0)).months_of_fit->p50 == Approx(horizon_months));
}

TEST_CASE("a stage that begins tomorrow is the one that counts", "[lasting]") {
    Child child = girl_of_five;
    child.stage = Stage::starting;
    Rider rider = rider_for(child);
    rider.riding_from = today.plus(Days(1.0));
    const LifeOfFit life = life_of_fit(forecast_for(rider), span(420.0, 520.0));
    CHECK(life.outgrown->p50 == today.plus(Days(1.0)));
}

TEST_CASE("less known of the rider means a wider range of months", "[lasting]") {
    Child child{.inseam = 700.0, .sex = Sex::boy, .age = 10.0, .stage = Stage::riding};
    const SaddleSpan bike = span(700.0, 850.0);
    const MonthsOfFit known = *life_of_fit(forecast_for(rider_for(child)), bike).months_of_fit;
    child.age.reset();
    child.sex.reset();
    const MonthsOfFit unknown = *life_of_fit(forecast_for(rider_for(child)), bike).months_of_fit;
    CHECK(unknown.p90 - unknown.p10 > 1.1 * (known.p90 - known.p10));
}
