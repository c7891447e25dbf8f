// The growth references between and beyond the ages they are published for. Outside checks: a second
// published reference for leg length, and two surveys of stature.
#include "core/fit/growth/growth_reference.h"

#include "core/fit/growth/population.h"
#include "tests/core/fit/growth/british_legs.h"
#include "tests/core/fit/growth/survey_figures.h"
#include "tests/core/fit/growth/us_survey.h"
#include "tests/domain_checkers.h"

#include <cmath>

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

Length median_leg(Sex sex, double years) {
    return leg_length_reference(sex, Days::years(years)).median;
}

} // namespace

TEST_CASE("leg length at whole years from 3 on is the published table itself", "[growth]") {
    check_length(median_leg(Sex::boy, 3), Length::millimetres(422.89));
    check_length(median_leg(Sex::boy, 5), Length::millimetres(512.91));
    check_length(median_leg(Sex::boy, 18), Length::millimetres(888.21));
    check_length(median_leg(Sex::girl, 3), Length::millimetres(421.45));
    check_length(median_leg(Sex::girl, 11), Length::millimetres(719.69));
    check_length(median_leg(Sex::girl, 18), Length::millimetres(807.49));
    const LmsShape shape = leg_length_reference(Sex::girl, Days::years(12)).shape;
    CHECK(shape.l == Approx(0.982));
    CHECK(shape.s == Approx(0.056));
}

// The Dutch are taller than the British: a few per cent at every age.
TEST_CASE("leg length is 3 to 7 per cent above the British reference at every whole year", "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        for (const BritishLegs& row : british_legs) {
            const double ratio = median_leg(sex, row.age).in_millimetres() / row.of(sex);
            CAPTURE(row.age, ratio);
            CHECK(ratio > 1.03);
            CHECK(ratio < 1.07);
        }
    }
}

TEST_CASE("legs grow from 4 to 16 as in the British reference, to 3.5 mm a year RMS", "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        double squares = 0.0;
        int years = 0;
        for (std::size_t i = 3; i < 15; ++i) { // from 4 to 5 up to 15 to 16
            const BritishLegs& before = british_legs[i - 1];
            const BritishLegs& after = british_legs[i];
            const double ours = (median_leg(sex, after.age) - median_leg(sex, before.age)).in_millimetres();
            squares += std::pow(ours - (after.of(sex) - before.of(sex)), 2);
            ++years;
        }
        CAPTURE(static_cast<int>(sex), std::sqrt(squares / years));
        CHECK(std::sqrt(squares / years) < 3.5);
    }
}

TEST_CASE("legs grow from 2 to 3 in the British proportion", "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        const double ours = median_leg(sex, 3) / median_leg(sex, 2);
        CHECK(ours == Approx(british_legs[1].of(sex) / british_legs[0].of(sex)).margin(1e-4));
    }
}

// The growth of the US survey's children at the survey's own score: what a forecast from a reading does.
TEST_CASE(
    "legs of 2.5 to 3.5 grow as in the US survey, within 6 mm a year, and from 3 to 8 within 3 mm in five",
    "[growth]") {
    const auto surveyed = [](Sex sex, double age) {
        for (const SurveyedLegs& row : us_survey) {
            if (row.sex == sex && row.age == age)
                return row.leg;
        }
        return 0.0;
    };
    const auto grown = [&](Sex sex, double from, double leg, double to) {
        const double score = leg_length_reference(sex, Days::years(from)).score(Length::millimetres(leg));
        return leg_length_reference(sex, Days::years(to)).value(score).in_millimetres() - leg;
    };
    double over_five = 0.0;
    double at_young = 0.0;
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        over_five += grown(sex, 3, surveyed(sex, 3), 8) / 2.0;
        at_young += grown(sex, 2.5, surveyed(sex, 2.5), 3.5) / 2.0;
    }
    // From 3 to 8: 193.0 (se 3.0), from 2.5 to 3.5: 45.1 (se 2.6), both sexes.
    CHECK(over_five == Approx(193.0).margin(3.0));
    CHECK(at_young == Approx(45.1).margin(6.0));
}

TEST_CASE("a median grows smoothly: no kink at a birthday", "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        for (int birthday = 3; birthday < 18; ++birthday) {
            const double h = 0.001;
            const auto slope = [&](double from) {
                return (median_leg(sex, from + h) - median_leg(sex, from)).in_millimetres() / h;
            };
            CAPTURE(birthday);
            CHECK(slope(birthday - h) == Approx(slope(birthday)).margin(0.1));
        }
    }
}

TEST_CASE("legs get longer from 1 to 18 at every quantile", "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        for (const double z : {-3.0, -1.2816, 0.0, 1.2816, 3.0}) {
            Length before;
            for (double years = 1.0; years <= 18.0; years += 0.05) {
                const Length leg = leg_length_reference(sex, Days::years(years)).value(z);
                CAPTURE(z, years);
                CHECK(leg > before);
                before = leg;
            }
        }
    }
}

TEST_CASE("under two years the median goes on as a straight line, and under one it stands still",
          "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        const Length second_half = median_leg(sex, 2.0) - median_leg(sex, 1.5);
        const Length first_half = median_leg(sex, 1.5) - median_leg(sex, 1.0);
        check_length(first_half, second_half);
        check_length(median_leg(sex, 0.2), median_leg(sex, 1.0));
        check_length(median_leg(sex, -5.0), median_leg(sex, 1.0));
    }
    // Legs of a one-year-old: about 280 mm of 750 mm body length (from memory).
    const ScoreEstimate us = legs_of_population(Population::us, Sex::boy, Days::years(1.0));
    CHECK(leg_length_reference(Sex::boy, Days::years(1.0)).value(us.mean).in_millimetres() ==
          Approx(280.0).margin(15.0));
}

TEST_CASE("above eighteen legs are grown", "[growth]") {
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        check_length(median_leg(sex, 18.5), median_leg(sex, 18.0));
        check_length(median_leg(sex, 80.0), median_leg(sex, 18.0));
    }
}

// Dutch 2009 survey (mice::fdgs, van Buuren). The Dutch are the tallest people there are: 27 to 65 mm above
// the CDC's.
TEST_CASE("Dutch children of 2009 are 27 to 65 mm taller than the CDC reference, at every age and sex",
          "[growth]") {
    for (const SurveyedHeight& row : dutch_heights) {
        if (row.mean_age < 24.5 / 12.0)
            continue; // lying down: the table of standing height starts later
        const Lms<Length> reference = stature_reference(row.sex, Days::years(row.mean_age));
        CAPTURE(static_cast<int>(row.sex), row.mean_age, reference.median.in_millimetres());
        CHECK(row.mean - reference.median.in_millimetres() > 27.0);
        CHECK(row.mean - reference.median.in_millimetres() < 65.0);
        // The spread within a year of age holds up to a year's growth besides.
        CHECK(row.sd / row.mean == Approx(reference.shape.s).margin(0.01));
    }
}

// Oxford boys (nlme::Oxboys), 26 of them, who mature a little later than the reference: they are 6 to 10 mm a
// year behind it, while a single boy's year varies by 14, then 22 mm.
TEST_CASE("boys of the CDC reference outgrow the Oxford boys by 5 to 11 mm a year from 12 to 14",
          "[growth]") {
    for (const SurveyedGrowth& row : oxford_growth) {
        const auto median = [](double age) { return stature_reference(Sex::boy, Days::years(age)).median; };
        const double years = row.to_age - row.from_age;
        const double growth = (median(row.to_age) - median(row.from_age)).in_millimetres() / years;
        CAPTURE(row.from_age, growth);
        CHECK(growth - row.mean > 5.0);
        CHECK(growth - row.mean < 11.0);
        CHECK(growth - row.mean < row.sd);
    }
}

TEST_CASE("stature at whole years is the published table itself, from the age it starts at", "[growth]") {
    check_length(stature_reference(Sex::girl, Days::years(5)).median, Length::millimetres(1076.6));
    check_length(stature_reference(Sex::boy, Days::years(13)).median, Length::millimetres(1560.9));
    check_length(stature_reference(Sex::boy, Days::years(24.5 / 12.0)).median, Length::millimetres(868.6));
}

TEST_CASE("weight at whole years is the published table itself", "[growth]") {
    CHECK(weight_reference(Sex::boy, Days::years(5)).median.in_kilograms() == Approx(18.393));
    CHECK(weight_reference(Sex::girl, Days::years(10)).median.in_kilograms() == Approx(32.891));
    CHECK(weight_reference(Sex::girl, Days::years(30)).median.in_kilograms() == Approx(56.185));
}

// Two tables of one study, read together: legs are their share of the stature of the same children
// (mice::fdgs is a later survey of the same population, so 2 % is close).
TEST_CASE("leg length is the leg's share of the Dutch children's stature", "[growth]") {
    for (const SurveyedHeight& row : dutch_heights) {
        const Days age = Days::years(row.mean_age);
        const double from_share = leg_share(Population::nl, row.sex, age).mean * row.mean;
        CAPTURE(static_cast<int>(row.sex), row.mean_age);
        const ScoreEstimate dutch = legs_of_population(Population::nl, row.sex, age);
        CHECK(leg_length_reference(row.sex, age).value(dutch.mean).in_millimetres() ==
              Approx(from_share).epsilon(0.025));
    }
}

TEST_CASE("the leg's share of stature has its percentiles in order at every age", "[growth]") {
    const Population population = GENERATE(Population::us, Population::gb, Population::nl, Population::any);
    for (const Sex sex : {Sex::boy, Sex::girl}) {
        for (double years = 0.5; years < 25.0; years += 0.1) {
            const LegShare share = leg_share(population, sex, Days::years(years));
            CHECK(share.first_percentile < share.mean - share.sd);
            CHECK(share.mean + share.sd < share.last_percentile);
        }
    }
}
