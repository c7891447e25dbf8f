// A child among others of its age. Outside checks: published medians and spreads of British and US children's legs.
#include "core/fit/growth/inseams_of_age.h"

#include "core/base/statistics/normal_distribution.h"
#include "core/fit/growth/rider_growth.h"
#include "tests/core/fit/growth/british_legs.h"
#include "tests/core/fit/growth/us_survey.h"
#include "tests/domain_checkers.h"

#include <cmath>
#include <optional>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

Rider child(Population population, std::optional<Sex> sex) {
    Rider rider;
    rider.population = population;
    rider.sex = sex;
    return rider;
}

/// The published spread, with what is not known of soles (5 mm) and of the crotch (6 mm).
double in_shoes(double leg_sd) {
    return std::hypot(leg_sd, 5.0, 6.0);
}

} // namespace

// Dangour et al. 2002: the median, and a spread of 5.504 % of it for boys, 5.284 % for girls, normal.
TEST_CASE("centiles of British children are the published medians and spreads, in shoes", "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        const double spread = sex == Sex::boy ? 0.05504 : 0.05284;
        for (const BritishLegs& row : british_legs) {
            const InseamsOfAge children(child(Population::gb, sex), Days::years(row.age));
            CAPTURE(static_cast<int>(sex), row.age);
            for (const double share : {0.1, 0.25, 0.5, 0.75, 0.9}) {
                const double expected =
                    row.of(sex) + 20.0 + normal::quantile(share) * in_shoes(spread * row.of(sex));
                CHECK(children.centile(share).in_millimetres() == Approx(expected).margin(2.0));
            }
        }
    }
}

// Snyder et al. 1977: means have standard errors of 2 to 5 mm.
TEST_CASE("half of US children have shorter legs than the survey's mean, a tenth than its lower tail",
          "[growth]") {
    for (const SurveyedLegs& row : us_survey) {
        const InseamsOfAge children(child(Population::us, row.sex), Days::years(row.age));
        const auto share_below = [&](double leg) {
            return children.share_shorter(Length::millimetres(leg + 20.0));
        };
        CAPTURE(static_cast<int>(row.sex), row.age);
        CHECK(share_below(row.leg) == Approx(0.5).margin(0.13));
        CHECK(share_below(row.leg - 1.2816 * row.leg_sd) == Approx(0.1).margin(0.06));
        CHECK(share_below(row.leg + 1.2816 * row.leg_sd) == Approx(0.9).margin(0.06));
    }
}

TEST_CASE("a centile and the share below it say the same, also where the sex is unknown", "[growth]") {
    for (const std::optional<Sex> sex :
         {std::optional<Sex>(), std::optional(Sex::boy), std::optional(Sex::girl)}) {
        for (const double years : {0.5, 1.0, 2.3, 5.0, 9.75, 13.0, 17.0, 19.0}) {
            const InseamsOfAge children(child(Population::any, sex), Days::years(years));
            CAPTURE(years);
            for (const double share : {0.03, 0.1, 0.5, 0.9, 0.97})
                CHECK(children.share_shorter(children.centile(share)) == Approx(share).margin(0.0005));
        }
    }
}

TEST_CASE("children of unknown sex are as many girls as boys", "[growth]") {
    const Days age = Days::years(13.5);
    const InseamsOfAge girls(child(Population::nl, Sex::girl), age);
    const InseamsOfAge boys(child(Population::nl, Sex::boy), age);
    const InseamsOfAge children(child(Population::nl, std::nullopt), age);
    for (const Length inseam : {700_mm, 780_mm, 810_mm, 850_mm, 900_mm}) {
        const double mean = (girls.share_shorter(inseam) + boys.share_shorter(inseam)) / 2.0;
        CHECK(children.share_shorter(inseam) == Approx(mean).margin(1e-12));
    }
    CHECK(children.centile(0.9) > girls.centile(0.9));
    CHECK(children.centile(0.9) < boys.centile(0.9));
}

TEST_CASE("the middle and the spread of an age are what is estimated from the age alone", "[growth]") {
    const CalendarDate today = date("2026-11-25");
    for (const Population population : {Population::us, Population::gb, Population::nl, Population::any}) {
        Rider rider = child(population, Sex::girl);
        rider.born = date("2020-05-25");
        const InseamToday estimate = RiderGrowth::of(rider, today).today();
        const InseamsOfAge children(rider, today - *rider.born);
        CAPTURE(static_cast<int>(population));
        CHECK(children.centile(0.5).in_millimetres() == Approx(estimate.mean.in_millimetres()).margin(0.1));
        const Length band = children.centile(0.9) - children.centile(0.1);
        CHECK(band.in_millimetres() == Approx(2.0 * 1.2816 * estimate.sd.in_millimetres()).epsilon(0.01));
    }
}

TEST_CASE("an inseam of nothing is shorter than every child's, not an error", "[growth]") {
    const InseamsOfAge children(child(Population::any, std::nullopt), Days::years(6.0));
    CHECK(children.share_shorter(0_mm) < 1e-6);
    CHECK(children.share_shorter(2000_mm) > 1.0 - 1e-6);
}
