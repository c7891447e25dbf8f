// Legs of three countries' children, held against the figures they were published with, and the estimates that rest on
// them against the children of the US survey.
#include "core/fit/growth/population.h"

#include "core/base/statistics/normal_distribution.h"
#include "core/fit/growth/growth_reference.h"
#include "core/fit/growth/leg_length_table.h"
#include "core/fit/growth/population_table.h"
#include "core/fit/growth/rider_growth.h"
#include "tests/core/fit/growth/british_legs.h"
#include "tests/core/fit/growth/us_survey.h"
#include "tests/domain_checkers.h"

#include <cmath>
#include <optional>
#include <string_view>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

const CalendarDate today = date("2026-11-25");

struct LegsInMm {
    double median;
    double sd;
};

LegsInMm legs_in_mm(Population population, Sex sex, double years) {
    const Days age = Days::years(years);
    const ScoreEstimate legs = legs_of_population(population, sex, age);
    const Lms<Length> reference = leg_length_reference(sex, age);
    const double sd = std::sqrt(legs.variance);
    return {.median = reference.value(legs.mean).in_millimetres(),
            .sd = (reference.value(legs.mean + sd) - reference.value(legs.mean - sd)).in_millimetres() / 2.0};
}

Rider rider_of(Population population, const SurveyedLegs& row, bool with_stature) {
    Rider rider;
    rider.population = population;
    rider.sex = row.sex;
    rider.born = today.plus(Days::years(-row.age));
    if (with_stature)
        rider.stature = stature_reference(row.sex, Days::years(row.age)).value(row.stature_score);
    return rider;
}

/// The share of the survey's children, normal around their mean, inside the estimate's 80 % band. Their legs in shoes.
double held_by_band(const InseamToday& estimate, double mean, double sd) {
    const double reach = normal::quantile(0.9) * estimate.sd.in_millimetres();
    const double off = estimate.mean.in_millimetres() - 20.0 - mean;
    return normal::cdf((off + reach) / sd) - normal::cdf((off - reach) / sd);
}

} // namespace

// Snyder et al. 1977: survey means, with their standard errors of 2 to 5 mm.
TEST_CASE("legs of US children are the survey's, to 8 mm and a tenth of the spread", "[growth]") {
    for (const SurveyedLegs& row : us_survey) {
        const LegsInMm legs = legs_in_mm(Population::us, row.sex, row.age);
        CAPTURE(static_cast<int>(row.sex), row.age);
        CHECK(legs.median == Approx(row.leg).margin(std::fmin(8.0, 2.0 * row.leg_error())));
        CHECK(legs.sd == Approx(row.leg_sd).epsilon(0.1));
    }
}

TEST_CASE("legs of British children are the reference's, to 8 mm and a tenth of the spread", "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        const double spread = sex == Sex::boy ? 0.05504 : 0.05284;
        for (const BritishLegs& row : british_legs) {
            const LegsInMm legs = legs_in_mm(Population::gb, sex, row.age);
            CAPTURE(static_cast<int>(sex), row.age);
            CHECK(legs.median == Approx(row.of(sex)).margin(8.0));
            CHECK(legs.sd == Approx(spread * row.of(sex)).epsilon(0.1));
        }
    }
}

TEST_CASE("legs of Dutch children are the reference's, to 8 mm and a tenth of the spread", "[growth]") {
    for (std::size_t i = 0; i < boys_leg_length.size(); ++i) {
        for (const Sex sex : {Sex::boy, Sex::girl}) {
            const LmsTableRow& row = (sex == Sex::boy ? boys_leg_length : girls_leg_length)[i];
            const LegsInMm legs = legs_in_mm(Population::nl, sex, 2.0 + static_cast<double>(i));
            CAPTURE(static_cast<int>(sex), i);
            CHECK(legs.median == Approx(double(row.m)).margin(8.0));
            CHECK(legs.sd == Approx(row.m * row.s).epsilon(0.1));
        }
    }
}

TEST_CASE("children of an unknown country are between the three, and spread as their mixture", "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        for (double years = 1.0; years <= 19.0; years += 0.5) {
            const Days age = Days::years(years);
            const ScoreEstimate any = legs_of_population(Population::any, sex, age);
            double mean = 0.0;
            double square = 0.0;
            for (const Population country : {Population::us, Population::gb, Population::nl}) {
                const ScoreEstimate legs = legs_of_population(country, sex, age);
                mean += legs.mean / 3.0;
                square += (legs.variance + legs.mean * legs.mean) / 3.0;
            }
            CHECK(any.mean == Approx(mean).margin(1e-9));
            CHECK(any.variance == Approx(square - mean * mean).margin(1e-9));
        }
    }
}

// The rows that the survey does not have are made from it by rule.
TEST_CASE("the US survey's rows at 2, 17 and 18 follow from its own by the British and the Dutch growth",
          "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        const auto& table = sex == Sex::boy ? boys_us_legs : girls_us_legs;
        const auto& dutch = sex == Sex::boy ? boys_leg_length : girls_leg_length;
        const double first = sex == Sex::boy ? 358.9 : 359.8;                  // the survey at 2.25
        const double growth = sex == Sex::boy ? 348.4 / 361.5 : 348.2 / 362.0; // British, 2 by 2.25
        CHECK(table[0].leg == Approx(first * growth).margin(0.06));
        CHECK(table[15].leg == Approx(table[14].leg * dutch[15].m / dutch[14].m).margin(0.06));
        CHECK(table[16].leg == Approx(table[14].leg * dutch[16].m / dutch[14].m).margin(0.06));
        CHECK(double(table[16].share) == double(table[14].share));
    }
}

TEST_CASE("an estimate from the age alone is right for US children, and its band holds 74 to 88 % of them",
          "[growth]") {
    for (const SurveyedLegs& row : us_survey) {
        const InseamToday estimate = RiderGrowth::of(rider_of(Population::us, row, false), today).today();
        CAPTURE(static_cast<int>(row.sex), row.age);
        CHECK(estimate.mean.in_millimetres() - 20.0 == Approx(row.leg).margin(8.0));
        const double held = held_by_band(estimate, row.leg, row.leg_sd);
        CHECK(held > 0.74);
        CHECK(held < 0.88);
    }
}

TEST_CASE("an estimate from age and height is right for US children, and its band holds 74 to 88 % of them",
          "[growth]") {
    for (const SurveyedLegs& row : us_survey) {
        const Rider rider = rider_of(Population::us, row, true);
        const InseamToday estimate = RiderGrowth::of(rider, today).today();
        const double stature = rider.stature->in_millimetres();
        CAPTURE(static_cast<int>(row.sex), row.age);
        CHECK(estimate.mean.in_millimetres() - 20.0 == Approx(row.share * stature).margin(8.0));
        const double held = held_by_band(estimate, row.share * stature, row.share_sd * stature);
        CHECK(held > 0.74);
        CHECK(held < 0.88);
    }
}

TEST_CASE("an estimate for any country is wider than for a known one", "[growth]") {
    for (const SurveyedLegs& row : us_survey) {
        for (const bool with_stature : {false, true}) {
            const auto sd = [&](Population population) {
                return RiderGrowth::of(rider_of(population, row, with_stature), today).today().sd;
            };
            CAPTURE(row.age, with_stature);
            CHECK(sd(Population::any) > sd(Population::gb));
        }
    }
}
