// What one rider's figures amount to today: readings as they are, estimates with their honest spread.
#include "core/fit/growth/rider_growth.h"

#include "core/fit/growth/growth_reference.h"
#include "core/fit/growth/inseam_forecast.h"
#include "core/fit/growth/population.h"
#include "tests/domain_checkers.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

const CalendarDate today = date("2026-11-25");

Reading reading(std::string_view on, Length inseam, bool shoes = true) {
    return {.on = date(on), .inseam = inseam, .shoes = shoes};
}

Rider five_year_old() {
    Rider rider;
    rider.born = date("2021-09-15");
    rider.sex = Sex::girl;
    return rider;
}

InseamToday today_of(const Rider& rider) {
    return RiderGrowth::of(rider, today).today();
}

} // namespace

TEST_CASE("one reading made today is today's inseam as it is, whatever is known of the child", "[growth]") {
    Rider rider;
    rider.readings.push_back(reading("2026-11-25", 495_mm));
    SECTION("age and sex known") {
        rider.born = date("2021-09-15");
        rider.sex = Sex::girl;
    }
    SECTION("age known") {
        rider.born = date("2021-09-15");
    }
    SECTION("sex known") {
        rider.sex = Sex::boy;
    }
    SECTION("neither known") {}
    SECTION("an age at which such legs are rare") {
        rider.born = date("2019-09-15");
    }
    SECTION("an age at which such legs do not exist") {
        rider.born = date("2011-09-15");
    }
    SECTION("grown up") {
        rider.born = date("1980-01-01");
    }
    SECTION("a stature besides") {
        rider.stature = 1105_mm;
    }
    const InseamToday inseam = today_of(rider);
    check_length(inseam.mean, 495_mm);
    check_length(inseam.sd, 8_mm);
    CHECK(inseam.basis == InseamBasis::measured);
}

TEST_CASE("a reading far outside what children have is today's inseam too", "[growth]") {
    const double inseam_mm = GENERATE(30.0, 69.0, 120.0, 195.0, 1000.0, 1257.0);
    Rider rider;
    rider.readings.push_back(reading("2026-11-25", Length::millimetres(inseam_mm)));
    check_length(today_of(rider).mean, Length::millimetres(inseam_mm));
    check_length(today_of(rider).sd, 8_mm);
}

TEST_CASE("a reading without shoes adds the sole and its doubt", "[growth]") {
    Rider rider = five_year_old();
    rider.readings.push_back(reading("2026-11-25", 475_mm, false));
    check_length(today_of(rider).mean, 495_mm);
    check_length(today_of(rider).sd, Length::millimetres(std::hypot(8.0, 5.0)));
}

TEST_CASE("two readings of today count as their mean, more surely than one", "[growth]") {
    Rider rider = five_year_old();
    rider.readings = {reading("2026-11-25", 490_mm), reading("2026-11-25", 500_mm)};
    check_length(today_of(rider).mean, 495_mm);
    check_length(today_of(rider).sd, Length::millimetres(8.0 / std::sqrt(2.0)));
}

TEST_CASE("readings of one day that contradict each other are as unsure as they show", "[growth]") {
    Rider rider;
    rider.readings = {reading("2026-11-25", 495_mm), reading("2026-11-25", 560_mm)};
    check_length(today_of(rider).mean, 527.5_mm);
    CHECK(today_of(rider).sd.in_millimetres() == Approx(32.5).margin(0.1));
}

// 540 mm a year ago would be 578 mm today.
TEST_CASE("legs that shrank leave in doubt which reading is right", "[growth]") {
    Rider rider;
    rider.born = date("2021-06-01");
    rider.readings = {reading("2025-11-25", 540_mm), reading("2026-11-25", 495_mm)};
    const InseamToday inseam = today_of(rider);
    CHECK(inseam.mean > 510_mm);
    CHECK(inseam.mean < 565_mm);
    CHECK(inseam.sd.in_millimetres() == Approx(40.0).margin(4.0));
}

TEST_CASE("the farther two readings contradict each other, the less sure, without a jump", "[growth]") {
    Rider rider = five_year_old();
    rider.readings = {reading("2026-05-25", 500_mm), reading("2026-11-25", 520_mm)};
    const double consistent = today_of(rider).sd.in_millimetres();
    CHECK(consistent < 8.0);
    double before = consistent;
    for (double newest = 520.0; newest > 400.0; newest -= 1.0) {
        rider.readings.back().inseam = Length::millimetres(newest);
        const double sd = today_of(rider).sd.in_millimetres();
        CAPTURE(newest);
        CHECK(sd >= before - 0.15); // the same doubt of growth is a little less on shorter legs
        CHECK(sd < before + 2.5);
        before = sd;
    }
    CHECK(before > 50.0);
}

TEST_CASE("fast growth that one likely age explains is no contradiction", "[growth]") {
    Rider rider;
    rider.readings = {reading("2025-11-25", 495_mm), reading("2026-11-25", 540_mm)};
    CHECK(today_of(rider).sd.in_millimetres() < 8.5);
}

TEST_CASE("readings of neighbouring days combine nearly as if they were of one", "[growth]") {
    Rider rider = five_year_old();
    rider.readings = {reading("2026-11-23", 490_mm), reading("2026-11-25", 500_mm)};
    CHECK(today_of(rider).mean.in_millimetres() == Approx(495.0).margin(0.5));
    CHECK(today_of(rider).sd.in_millimetres() == Approx(8.0 / std::sqrt(2.0)).margin(0.2));
}

TEST_CASE("an older reading has grown since: by the reference's growth, and with more doubt", "[growth]") {
    Rider rider = five_year_old();
    rider.readings.push_back(reading("2026-05-25", 490_mm));
    const Days age_now = today - *rider.born;
    const Days age_then = date("2026-05-25") - *rider.born;
    const double growth =
        (leg_length_reference(Sex::girl, age_now).median - leg_length_reference(Sex::girl, age_then).median)
            .in_millimetres();
    const InseamToday inseam = today_of(rider);
    CHECK(growth > 15.0);
    CHECK(inseam.mean.in_millimetres() - 490.0 == Approx(growth).margin(1.5));
    CHECK(inseam.sd.in_millimetres() > 8.0);
    CHECK(inseam.sd.in_millimetres() < 12.0);
}

TEST_CASE("an older reading of a child of unknown age has grown by what its inseam lets expect", "[growth]") {
    Rider rider;
    rider.readings.push_back(reading("2026-05-25", 490_mm));
    const InseamToday inseam = today_of(rider);
    CHECK(inseam.mean.in_millimetres() - 490.0 == Approx(19.0).margin(4.0));
}

TEST_CASE("a reading of long ago is carried on sanely, even from where the model is at its end", "[growth]") {
    struct Case {
        std::string_view born;
        std::string_view on;
        double inseam;
    };
    const auto one = GENERATE(values<Case>({{"2008-11-25", "2011-11-25", 420.0}, // 3 then, 18 now
                                            {"2008-11-25", "2011-11-25", 330.0}, // tiny for a 3-year-old
                                            {"2008-11-25", "2011-11-25", 520.0}, // huge for one
                                            {"2005-01-01", "2006-03-01", 300.0},
                                            {"1950-01-01", "1956-01-01", 560.0}}));
    Rider rider;
    rider.sex = Sex::boy;
    rider.born = date(one.born);
    rider.readings.push_back(reading(one.on, Length::millimetres(one.inseam)));
    const InseamToday inseam = today_of(rider);
    CAPTURE(one.born, one.inseam);
    CHECK(inseam.mean.in_millimetres() > 650.0);
    CHECK(inseam.mean.in_millimetres() < 1200.0);
    CHECK(inseam.sd.in_millimetres() < 60.0);
}

TEST_CASE("today's inseam is never below what the newest readings say", "[growth]") {
    // Early-maturing girl: her score for age falls from now on, her legs do not.
    Rider rider;
    rider.sex = Sex::girl;
    rider.born = date("2012-11-25");
    rider.readings = {reading("2023-05-25", 690_mm), reading("2024-05-25", 745_mm),
                      reading("2025-05-25", 790_mm)};
    const InseamToday then = RiderGrowth::of(rider, date("2025-05-25")).today();
    CHECK(today_of(rider).mean >= then.mean);
}

TEST_CASE("without a reading the stature gives the inseam through the leg's share of it", "[growth]") {
    Rider rider = five_year_old();
    rider.population = GENERATE(Population::us, Population::gb, Population::nl, Population::any);
    rider.stature = 1105_mm;
    const LegShare share = leg_share(rider.population, Sex::girl, today - *rider.born);
    const InseamToday inseam = today_of(rider);
    CHECK(inseam.basis == InseamBasis::estimated_from_stature);
    CHECK(inseam.mean.in_millimetres() == Approx(1105.0 * share.mean + 20.0).margin(0.1));
    CHECK(inseam.sd.in_millimetres() ==
          Approx(std::hypot(std::hypot(1105.0 * share.sd, 10.0 * share.mean), 5.0, 6.0)).margin(0.1));
}

TEST_CASE("stature alone gives an inseam too, with more doubt", "[growth]") {
    Rider rider;
    rider.stature = 1105_mm;
    const InseamToday alone = today_of(rider);
    CHECK(alone.basis == InseamBasis::estimated_from_stature);
    CHECK(alone.mean.in_millimetres() == Approx(1105.0 * 0.446 + 20.0).margin(8.0));
    Rider with_age = five_year_old();
    with_age.stature = 1105_mm;
    CHECK(alone.sd > today_of(with_age).sd);
    CHECK(alone.sd.in_millimetres() < 35.0);
}

TEST_CASE(
    "without reading and stature the age gives the inseam, with the spread of children of that age and the "
    "doubt about sole and crotch",
    "[growth]") {
    Rider rider = five_year_old();
    rider.population = GENERATE(Population::us, Population::gb, Population::nl, Population::any);
    const Days age = today - *rider.born;
    const ScoreEstimate legs = legs_of_population(rider.population, Sex::girl, age);
    const Lms<Length> reference = leg_length_reference(Sex::girl, age);
    const double leg = reference.value(legs.mean).in_millimetres();
    const double leg_sd = std::sqrt(legs.variance) * reference.median.in_millimetres() /
                          reference.shape.slope(reference.shape.ratio(legs.mean));
    const InseamToday inseam = today_of(rider);
    CHECK(inseam.basis == InseamBasis::estimated_from_age);
    CHECK(inseam.mean.in_millimetres() == Approx(leg + 20.0).margin(0.1));
    CHECK(inseam.sd.in_millimetres() == Approx(std::hypot(leg_sd, 5.0, 6.0)).margin(0.1));
}

TEST_CASE("the forecast of an estimate starts at the estimate", "[growth]") {
    Rider rider = five_year_old();
    SECTION("from stature") {
        rider.stature = 1105_mm;
    }
    SECTION("from age") {}
    const InseamToday inseam = today_of(rider);
    const InseamDistribution first_day = InseamForecast(RiderGrowth::of(rider, today)).at(today);
    CHECK(first_day.quantile(0.5).in_millimetres() == Approx(inseam.mean.in_millimetres()).margin(0.5));
    CHECK(first_day.sd().in_millimetres() == Approx(inseam.sd.in_millimetres()).epsilon(0.02));
}

TEST_CASE("the forecast is pulled a little towards the average child, today's inseam is not", "[growth]") {
    Rider rider = five_year_old();
    rider.readings.push_back(reading("2026-11-25", 580_mm));
    const RiderGrowth growth = RiderGrowth::of(rider, today);
    const Length first_day = InseamForecast(growth).at(today).quantile(0.5);
    check_length(growth.today().mean, 580_mm);
    CHECK(first_day < 580_mm);
    CHECK(first_day > 571_mm);
}

TEST_CASE("a date of birth that no reading can belong to counts as unknown", "[growth]") {
    Rider rider;
    rider.born = date("2024-11-25"); // two years old, with the legs of a teenager
    rider.readings.push_back(reading("2026-11-25", 880_mm));
    const RiderGrowth growth = RiderGrowth::of(rider, today);
    for (const GrowthHypothesis& one : growth.hypotheses())
        CHECK(one.age_today > Days::years(9));
    CHECK(InseamForecast(growth).at(today.plus_months(96)).quantile(0.9) < 1100_mm);
}

// A median child of 1.9 years on a balance bike, nothing else known. Growth: the Dutch table's 66 mm a year under 2, the British
// 51 from 2 to 3.
TEST_CASE("toddlers without a date of birth grow as toddlers", "[growth]") {
    Rider rider;
    rider.stage = Stage::gliding;
    rider.readings.push_back(reading("2026-11-25", 360_mm));
    const InseamDistribution unknown =
        InseamForecast(RiderGrowth::of(rider, today)).at(today.plus_months(12));
    rider.born = date("2025-01-01");
    const InseamDistribution known = InseamForecast(RiderGrowth::of(rider, today)).at(today.plus_months(12));
    CHECK(unknown.quantile(0.5).in_millimetres() ==
          Approx(known.quantile(0.5).in_millimetres()).margin(10.0));
    CHECK(unknown.quantile(0.9) > known.quantile(0.5));
    CHECK(known.quantile(0.5) - 360_mm > 45_mm);
}

TEST_CASE("an age told from an inseam is that of the population's children", "[growth]") {
    const auto mean_age = [](Population population) {
        Rider rider;
        rider.population = population;
        rider.sex = Sex::boy;
        rider.readings.push_back(reading("2026-11-25", 498_mm)); // US median at 5: 477.7 and the sole
        double age = 0.0;
        const RiderGrowth growth = RiderGrowth::of(rider, today);
        for (const GrowthHypothesis& one : growth.hypotheses())
            age += one.weight * one.age_today.in_years();
        return age;
    };
    CHECK(mean_age(Population::us) == Approx(5.0).margin(0.3));
    CHECK(mean_age(Population::nl) == Approx(4.2).margin(0.3));
    CHECK(mean_age(Population::any) > mean_age(Population::nl));
    CHECK(mean_age(Population::any) < mean_age(Population::us));
}

TEST_CASE("unlikely ages are left out, and the weights of the rest add up to one", "[growth]") {
    Rider rider;
    rider.readings.push_back(reading("2026-11-25", 495_mm));
    const RiderGrowth growth = RiderGrowth::of(rider, today);
    double total = 0.0;
    for (const GrowthHypothesis& one : growth.hypotheses()) {
        CHECK(one.weight > 1e-6);
        CHECK(one.age_today <= Days::years(12));
        total += one.weight;
    }
    CHECK(total == Approx(1.0).margin(1e-12));
}

TEST_CASE("a child under eight is said to be less certain", "[growth]") {
    Rider rider = five_year_old();
    rider.readings.push_back(reading("2026-11-25", 495_mm));
    CHECK(RiderGrowth::of(rider, today).less_certain_for_young_child());
    rider.born = date("2014-01-01");
    rider.readings = {reading("2026-11-25", 760_mm)};
    CHECK_FALSE(RiderGrowth::of(rider, today).less_certain_for_young_child());
}
