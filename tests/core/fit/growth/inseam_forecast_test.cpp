// The forecast of the inseam. Outside check: figures of two independent implementations. Besides, the same
// model written down plainly, and children simulated from it.
#include "core/fit/growth/inseam_forecast.h"

#include "tests/core/fit/growth/forecast_reference.h"
#include "tests/core/fit/growth/plain_mixture.h"
#include "tests/core/fit/growth/simulated_child.h"
#include "tests/domain_checkers.h"
#include "tests/repeatable_random.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

const CalendarDate today = date("2026-06-01");

/// What is known of a rider besides the readings.
struct Known {
    std::optional<Sex> sex;
    std::optional<double> age;
};

Rider rider_with(Length inseam, const Known& known) {
    Rider rider;
    rider.readings.push_back({.on = today, .inseam = inseam, .shoes = true});
    rider.sex = known.sex;
    if (known.age)
        rider.born = today.plus(Days::years(-*known.age));
    return rider;
}

InseamForecast forecast_for(Length inseam, const Known& known) {
    return InseamForecast(RiderGrowth::of(rider_with(inseam, known), today));
}

double width_of_80_percent(const InseamDistribution& inseam) {
    return (inseam.quantile(0.9) - inseam.quantile(0.1)).in_millimetres();
}

} // namespace

// Two independent implementations, noise 6 mm, legs without a sole.
TEST_CASE("forecasts agree within 0.5 mm with the independently computed table", "[growth]") {
    for (const ForecastRow& row : forecast_reference) {
        Rider rider;
        rider.accuracy.sole = 0_mm;
        rider.accuracy.reading_sd = 6_mm;
        rider.population = Population::nl;
        rider.sex = row.sex;
        rider.born = today.plus(Days::years(-row.age));
        rider.readings.push_back({.on = today, .inseam = Length::millimetres(row.leg), .shoes = true});
        if (row.before > 0.0) {
            const CalendarDate year_ago = today.plus(Days::months(-12));
            rider.readings.push_back(
                {.on = year_ago, .inseam = Length::millimetres(row.before), .shoes = true});
        }
        const InseamForecast forecast(RiderGrowth::of(rider, today));
        const InseamDistribution leg = forecast.at(today.plus(Days::months(row.months)));
        CAPTURE(row.age, row.leg, row.months);
        CHECK(leg.quantile(0.1).in_millimetres() == Approx(row.p10).margin(0.5));
        CHECK(leg.quantile(0.5).in_millimetres() == Approx(row.median).margin(0.5));
        CHECK(leg.quantile(0.9).in_millimetres() == Approx(row.p90).margin(0.5));
    }
}

TEST_CASE("the table is as exact as it says, whatever is known of the rider", "[growth]") {
    struct Case {
        double inseam;
        Known known;
        double margin; ///< millimetres
    };
    const auto one = GENERATE(values<Case>({
        {495.0, {Sex::girl, 5.0}, 0.3},
        {640.0, {Sex::boy, 8.5}, 0.3},
        {760.0, {std::nullopt, 12.0}, 0.3},
        {600.0, {Sex::girl, std::nullopt}, 0.3},
        {430.0, {std::nullopt, std::nullopt}, 1.0}, // near the youngest age that is tried
        {880.0, {std::nullopt, std::nullopt}, 1.0}, // and the oldest
    }));
    const Rider rider = rider_with(Length::millimetres(one.inseam), one.known);
    std::optional<double> age;
    if (rider.born)
        age = (today - *rider.born).in_years();
    const PlainMixture plain(one.inseam, one.known.sex, age);
    const InseamForecast forecast(RiderGrowth::of(rider, today));
    for (const int months : {0, 4, 24, 96}) {
        const CalendarDate day = today.plus(Days::months(months));
        const double exactly = (day - today).in_months();
        const InseamDistribution inseam = forecast.at(day);
        CAPTURE(one.inseam, months);
        for (const double p : {0.1, 0.5, 0.9})
            CHECK(inseam.quantile(p).in_millimetres() ==
                  Approx(plain.quantile(p, exactly)).margin(one.margin));
        for (double x = one.inseam - 40.0; x < one.inseam + 200.0; x += 31.0) {
            CHECK(inseam.probability_below(Length::millimetres(x)) ==
                  Approx(plain.probability_below(x, exactly)).margin(0.004));
        }
    }
}

// A check of the mathematics: children drawn from the stated model are below each quantile as often as it
// says. With 1500 children the standard error is 0.008 at 10 %, 0.013 at 50 %.
TEST_CASE("simulated children are below each quantile as often as it says", "[growth]") {
    struct Case {
        bool sex_known;
        bool age_known;
        int children;
    };
    const auto one = GENERATE(
        values<Case>({{true, true, 1500}, {false, true, 800}, {true, false, 300}, {false, false, 300}}));
    const int months = 24;
    const std::vector<double> levels{0.05, 0.1, 0.5, 0.9, 0.95};
    std::vector<double> below(levels.size());
    RepeatableRandom random(814);
    for (int i = 0; i < one.children; ++i) {
        const Sex sex = random.even_chance() ? Sex::girl : Sex::boy;
        const double age = one.age_known ? random.uniform(2.5, 12.0) : random.uniform(1.25, 16.0);
        SimulatedChild child(random, sex, age);
        Known known;
        if (one.sex_known)
            known.sex = sex;
        if (one.age_known)
            known.age = age;
        const InseamForecast forecast = forecast_for(child.home_reading(), known);
        child.grow_by_months(months);
        const InseamDistribution inseam = forecast.at(today.plus(Days::months(months)));
        for (std::size_t k = 0; k < levels.size(); ++k)
            below[k] += child.inseam_mm() < inseam.quantile(levels[k]).in_millimetres() ? 1.0 : 0.0;
    }
    for (std::size_t k = 0; k < levels.size(); ++k) {
        const double standard_error = std::sqrt(levels[k] * (1.0 - levels[k]) / one.children);
        CAPTURE(one.sex_known, one.age_known, levels[k]);
        CHECK(below[k] / one.children == Approx(levels[k]).margin(3.0 * standard_error));
    }
}

// Published with the model for children of 8 to 14, 24 months on: 45 mm with both known, 54 and 55 with one
// unknown, 62 with neither (noise 6 mm).
TEST_CASE("the 80 % band is as wide as published, wider the less is known", "[growth]") {
    double widths[2][2] = {};
    const int children = 100;
    for (const bool sex_known : {false, true}) {
        for (const bool age_known : {false, true}) {
            RepeatableRandom random(8141);
            double& width = widths[sex_known ? 1 : 0][age_known ? 1 : 0];
            for (int i = 0; i < children; ++i) {
                const Sex sex = random.even_chance() ? Sex::girl : Sex::boy;
                const double age = random.uniform(8.0, 14.0);
                SimulatedChild child(random, sex, age);
                Known known;
                if (sex_known)
                    known.sex = sex;
                if (age_known)
                    known.age = age;
                Rider rider = rider_with(child.home_reading(), known);
                rider.accuracy.reading_sd = 6_mm;
                const InseamForecast forecast(RiderGrowth::of(rider, today));
                width += width_of_80_percent(forecast.at(today.plus(Days::months(24)))) / children;
            }
        }
    }
    CHECK(widths[1][1] == Approx(45.0).margin(3.0));
    CHECK(widths[0][1] == Approx(54.5).margin(3.0));
    CHECK(widths[1][0] == Approx(54.5).margin(3.0));
    CHECK(widths[0][0] == Approx(62.0).margin(3.0));
}

TEST_CASE("legs never shrink: every quantile rises with time, whatever is known", "[growth]") {
    const auto known = GENERATE(values<Known>({{Sex::girl, 5.0},
                                               {Sex::girl, 13.0},
                                               {Sex::boy, 16.5},
                                               {std::nullopt, 11.0},
                                               {Sex::boy, std::nullopt},
                                               {std::nullopt, std::nullopt}}));
    const Length inseam = known.age && *known.age < 10 ? 500_mm : 790_mm;
    const InseamForecast forecast = forecast_for(inseam, known);
    for (const double p : {0.001, 0.1, 0.5, 0.9, 0.999}) {
        Length before;
        for (int day = 0; day < 96 * 30; day += 17) {
            const Length now = forecast.at(today.plus(Days(day))).quantile(p);
            CAPTURE(p, day);
            CHECK(now.in_millimetres() >= before.in_millimetres() - 1e-6);
            before = now;
        }
    }
}

TEST_CASE("quantiles and probabilities undo each other and rise together", "[growth]") {
    const InseamForecast forecast = forecast_for(495_mm, {});
    for (const int months : {0, 7, 50}) {
        const InseamDistribution inseam = forecast.at(today.plus_months(months));
        Length before;
        for (double p = 0.001; p < 1.0; p += 0.013) {
            const Length quantile = inseam.quantile(p);
            CHECK(quantile > before);
            CHECK(inseam.probability_below(quantile) == Approx(p).margin(1e-9));
            before = quantile;
        }
    }
}

TEST_CASE("mean and sd are those of the distribution", "[growth]") {
    const InseamDistribution inseam = forecast_for(640_mm, {}).at(today.plus_months(30));
    double mean = 0.0;
    double square = 0.0;
    const int parts = 20000;
    for (int i = 0; i < parts; ++i) {
        const double x = inseam.quantile((i + 0.5) / parts).in_millimetres();
        mean += x / parts;
        square += x * x / parts;
    }
    CHECK(inseam.mean().in_millimetres() == Approx(mean).margin(0.02));
    CHECK(inseam.sd().in_millimetres() == Approx(std::sqrt(square - mean * mean)).margin(0.1));
}

TEST_CASE("a child of unknown sex is forecast between a girl and a boy", "[growth]") {
    const auto median_in = [](const Known& known, int months) {
        return forecast_for(700_mm, known).at(today.plus_months(months)).quantile(0.5);
    };
    for (const int months : {6, 24, 60}) {
        const Length girl = median_in({Sex::girl, 10.5}, months);
        const Length boy = median_in({Sex::boy, 10.5}, months);
        const Length either = median_in({std::nullopt, 10.5}, months);
        CHECK(either > std::min(girl, boy));
        CHECK(either < std::max(girl, boy));
    }
}

TEST_CASE("an unknown sex is told from the reading where the reading tells it", "[growth]") {
    // At 15, legs of 930 mm are common among boys and very rare among girls.
    const RiderGrowth growth = RiderGrowth::of(rider_with(930_mm, {std::nullopt, 15.0}), today);
    double boys = 0.0;
    for (const GrowthHypothesis& one : growth.hypotheses())
        boys += one.sex == Sex::boy ? one.weight : 0.0;
    CHECK(boys > 0.85);
}

TEST_CASE("an unknown age is told from the inseam: the ages of children with such legs weigh most",
          "[growth]") {
    Rider rider = rider_with(533_mm, {Sex::boy, std::nullopt});
    rider.population = Population::nl;
    const RiderGrowth growth = RiderGrowth::of(rider, today);
    double age = 0.0;
    double total = 0.0;
    for (const GrowthHypothesis& one : growth.hypotheses()) {
        age += one.weight * one.age_today.in_years();
        total += one.weight;
    }
    CHECK(total == Approx(1.0).margin(1e-12));
    CHECK(age == Approx(5.0).margin(0.4)); // 512.91 mm of leg is the median of boys of 5
}

TEST_CASE("beyond the horizon the forecast stands still, and before today it is today's", "[growth]") {
    const InseamForecast forecast = forecast_for(495_mm, {Sex::girl, 5.0});
    check_length(forecast.at(today.plus_months(97)).quantile(0.5),
                 forecast.at(today.plus_months(140)).quantile(0.5));
    check_length(forecast.at(today.plus_months(-5)).quantile(0.5), forecast.at(today).quantile(0.5));
}

TEST_CASE("a reading made half a year ago forecasts the same day as it did then", "[growth]") {
    Rider rider = rider_with(500_mm, {Sex::boy, 5.0});
    const CalendarDate later = today.plus_months(6);
    const CalendarDate wanted = today.plus_months(20);
    const InseamDistribution then = InseamForecast(RiderGrowth::of(rider, today)).at(wanted);
    const InseamDistribution now = InseamForecast(RiderGrowth::of(rider, later)).at(wanted);
    for (const double p : {0.1, 0.5, 0.9})
        CHECK(now.quantile(p).in_millimetres() == Approx(then.quantile(p).in_millimetres()).margin(0.05));
}

TEST_CASE("no rider, however odd, gets a forecast that is not a number", "[growth]") {
    const std::vector<std::optional<double>> ages{std::nullopt, -2.0, 0.1,  0.9,  1.5, 4.0,
                                                  12.0,         17.9, 18.1, 45.0, 99.0};
    const std::vector<std::optional<Length>> statures{std::nullopt, 40_mm, 1100_mm, 2400_mm};
    for (const auto& age : ages) {
        for (const auto& stature : statures) {
            for (const double inseam : {0.0, 1.0, 25.0, 49.5, 195.0, 495.0, 1000.0, 1257.0, 4950.0}) {
                Rider rider = rider_with(Length::millimetres(inseam), {std::nullopt, age});
                rider.stature = stature;
                if (inseam == 0.0)
                    rider.readings.clear();
                if (inseam == 25.0)
                    rider.accuracy.reading_sd = 0_mm;
                const RiderGrowth growth = RiderGrowth::of(rider, today);
                const InseamForecast forecast(growth);
                CAPTURE(inseam, age ? *age : -99.0, stature ? stature->in_millimetres() : 0.0);
                CHECK(std::isfinite(growth.today().mean.in_millimetres()));
                CHECK(growth.today().sd.in_millimetres() > 0.0);
                CHECK(growth.today().sd.in_millimetres() < 500.0);
                for (const int months : {0, 12, 96}) {
                    const InseamDistribution distribution = forecast.at(today.plus_months(months));
                    CHECK(std::isfinite(distribution.mean().in_millimetres()));
                    CHECK(std::isfinite(distribution.sd().in_millimetres()));
                    CHECK(distribution.quantile(0.1) <= distribution.quantile(0.9));
                    CHECK(std::isfinite(distribution.quantile(0.9).in_millimetres()));
                }
            }
        }
    }
}
