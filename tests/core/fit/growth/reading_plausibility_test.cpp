// Questions about a rider's figures: raised when they should be, with the likely slip, and not when not.
#include "core/fit/growth/reading_plausibility.h"

#include "core/fit/growth/growth_reference.h"
#include "core/fit/growth/population.h"
#include "tests/core/fit/growth/us_survey.h"
#include "tests/domain_checkers.h"
#include "tests/repeatable_random.h"
#include "tests/support/problem_in_english.h"

#include <cmath>
#include <string>
#include <string_view>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

const CalendarDate today = date("2026-11-25");

Rider rider_with(Length inseam) {
    Rider rider;
    rider.readings.push_back({.on = today, .inseam = inseam, .shoes = true});
    return rider;
}

/// A girl of five: the middle of her age's inseams is 516 mm, in shoes.
Rider girl_of_five(Length inseam) {
    Rider rider = rider_with(inseam);
    rider.born = date("2021-09-15");
    rider.sex = Sex::girl;
    return rider;
}

std::string figure(const Problem& problem, std::string_view name) {
    for (const auto& [figure_name, value] : problem.figures) {
        if (figure_name == name)
            return in_english(value);
    }
    return {};
}

std::vector<ProblemCode> codes(const std::vector<Problem>& notes) {
    std::vector<ProblemCode> found;
    for (const Problem& note : notes)
        found.push_back(note.code);
    return found;
}

/// The code of the slip named for the one reading, empty where it is not questioned.
std::string slip_of(const Rider& rider) {
    const std::vector<Problem> notes = rider_notes(rider, today);
    if (notes.empty())
        return {};
    REQUIRE(notes.size() == 1);
    REQUIRE(notes.front().code == ProblemCode::reading_outside_plausible);
    CHECK(notes.front().where == "readings[0].inseam");
    CHECK_FALSE(figure(notes.front(), "slip").empty());
    for (const auto& [name, slip] : notes.front().figures) {
        if (name == "slip")
            return std::string(word_name(std::get<ProblemWord>(slip.value)));
    }
    return {};
}

} // namespace

TEST_CASE("a usual reading raises no question", "[growth]") {
    CHECK(slip_of(girl_of_five(520_mm)).empty());
    CHECK(slip_of(girl_of_five(536_mm)).empty());
    CHECK(slip_of(girl_of_five(580_mm)).empty());
    CHECK(slip_of(rider_with(495_mm)).empty());
}

TEST_CASE("slips are named where the age is known", "[growth]") {
    CHECK(slip_of(girl_of_five(Length::inches(53.6))) == "cm_as_inches");
    CHECK(slip_of(girl_of_five(Length::centimetres(21.1))) == "inches_as_cm");
    CHECK(slip_of(girl_of_five(Length::centimetres(536))) == "mm_as_cm");
    CHECK(slip_of(girl_of_five(Length::millimetres(53.6))) == "cm_as_mm");
    CHECK(slip_of(girl_of_five(Length::centimetres(94.5))) == "digits_swapped"); // 54.9
    CHECK(slip_of(girl_of_five(400_mm)) == "trouser_seam");
    CHECK(slip_of(girl_of_five(700_mm)) == "misread");
}

TEST_CASE("a reading just below what is usual may have been made without shoes", "[growth]") {
    CHECK(slip_of(girl_of_five(420_mm)) == "shoes_off");
}

TEST_CASE("a barefoot reading just above what is usual may have been made in shoes", "[growth]") {
    Rider rider = girl_of_five(598_mm);
    rider.readings.front().shoes = false;
    CHECK(slip_of(rider) == "shoes_on");
}

TEST_CASE("slips are named where only the inseam is known: outside 320 to 1000 mm", "[growth]") {
    CHECK(slip_of(rider_with(Length::centimetres(19.5))) == "inches_as_cm");
    CHECK(slip_of(rider_with(Length::inches(49.5))) == "cm_as_inches");
    CHECK(slip_of(rider_with(Length::centimetres(495))) == "mm_as_cm");
    CHECK(slip_of(rider_with(Length::millimetres(49.5))) == "cm_as_mm");
    CHECK(slip_of(rider_with(320_mm)).empty());
    CHECK(slip_of(rider_with(1000_mm)).empty());
}

TEST_CASE("inches typed as centimetres are found without an age, from 15.5 to 31 inches", "[growth]") {
    for (double inches = 15.5; inches < 31.5; inches += 0.5) {
        CAPTURE(inches);
        CHECK(slip_of(rider_with(Length::centimetres(inches))) == "inches_as_cm");
    }
}

TEST_CASE("a child who glides may have the legs of a one-year-old", "[growth]") {
    Rider rider = rider_with(270_mm);
    CHECK_FALSE(slip_of(rider).empty());
    rider.stage = Stage::gliding;
    CHECK(slip_of(rider).empty());
    rider.readings.front().inseam = 240_mm;
    CHECK_FALSE(slip_of(rider).empty());
}

TEST_CASE("a stature that no child who rides has is questioned without an age too", "[growth]") {
    const Length stature = GENERATE(11_mm, 430_mm, Length::inches(110.0));
    Rider rider;
    rider.stature = stature;
    REQUIRE(codes(rider_notes(rider, today)) == std::vector{ProblemCode::rider_stature_unlikely});
    rider.stature = 1100_mm;
    CHECK(rider_notes(rider, today).empty());
}

TEST_CASE("a stature without an age holds the reading against children of that stature only", "[growth]") {
    Rider rider = rider_with(600_mm);
    rider.stature = 1100_mm;
    CHECK_FALSE(slip_of(rider).empty());
    rider.readings.front().inseam = 510_mm;
    CHECK(slip_of(rider).empty());
    rider.readings.front().inseam = 425_mm;
    CHECK_FALSE(slip_of(rider).empty());
}

// By a normal approximation of the survey's own share of legs in stature, with the error of a home reading.
TEST_CASE("of the US survey's four- and five-year-olds, hardly one in a hundred is asked to measure again",
          "[growth]") {
    const Population population = GENERATE(Population::us, Population::any);
    for (const SurveyedLegs& row : us_survey) {
        if (row.age < 3.0 || row.age > 10.0)
            continue;
        const Length stature = stature_reference(row.sex, Days::years(row.age)).value(row.stature_score);
        const double sd = std::hypot(row.share_sd * stature.in_millimetres(), 8.0);
        double asked = 0.0;
        for (double z = -4.0; z < 4.0; z += 0.05) {
            Rider rider = rider_with(stature * row.share + Length::millimetres(20.0 + z * sd));
            rider.population = population;
            rider.sex = row.sex;
            rider.born = today.plus(Days::years(-row.age));
            rider.stature = stature;
            if (!rider_notes(rider, today).empty())
                asked += 0.05 * std::exp(-0.5 * z * z) / std::sqrt(2.0 * 3.14159265);
        }
        CAPTURE(static_cast<int>(row.sex), row.age);
        CHECK(asked < 0.015);
    }
}

TEST_CASE("the figure without its slip is offered", "[growth]") {
    const std::vector<Problem> notes = rider_notes(rider_with(Length::inches(49.5)), today);
    REQUIRE(notes.size() == 1);
    CHECK(figure(notes.front(), "inseam") == "125.7 cm");
    CHECK(figure(notes.front(), "corrected") == "49.5 cm");
    CHECK(sentence(notes.front()) ==
          "an inside leg of 125.7 cm seems wrong; perhaps centimetres were typed as inches");
    CHECK(expected(notes.front()) == "measuring again");
}

TEST_CASE("with the stature known, legs are held against it: a tall child's long legs are no question",
          "[growth]") {
    Rider rider = girl_of_five(645_mm);
    CHECK_FALSE(slip_of(rider).empty());
    rider.stature = 1270_mm; // tall, and the legs fit
    CHECK(slip_of(rider).empty());
}

TEST_CASE("with the stature known, legs that do not go with it are questioned though the age allows them",
          "[growth]") {
    Rider rider = girl_of_five(470_mm);
    CHECK(slip_of(rider).empty());
    rider.stature = 1180_mm;
    CHECK(slip_of(rider) == "trouser_seam");
}

TEST_CASE("an old reading is held against its own age, not against the stature of today", "[growth]") {
    Rider rider = girl_of_five(400_mm);
    rider.readings.front().on = date("2024-02-01");
    rider.stature = 1130_mm;
    CHECK(codes(rider_notes(rider, today)) == std::vector{ProblemCode::reading_old});
}

TEST_CASE("stature without age is enough to question a reading", "[growth]") {
    Rider rider = rider_with(420_mm);
    CHECK(slip_of(rider).empty());
    rider.stature = 1400_mm;
    CHECK_FALSE(slip_of(rider).empty());
}

// The band holds the central 99 % of home readings of children that spread like the growth model's.
TEST_CASE("of healthy children's home readings, one in a hundred is questioned", "[growth]") {
    const Population population = GENERATE(Population::us, Population::nl, Population::any);
    RepeatableRandom random(99);
    const int children = 20000;
    int questioned = 0;
    for (int i = 0; i < children; ++i) {
        Rider rider;
        rider.sex = random.even_chance() ? Sex::girl : Sex::boy;
        const Days age = Days::years(random.uniform(2.0, 16.0));
        rider.born = today.plus(Days(0.0) - age);
        rider.population = population;
        const ScoreEstimate usual = legs_before_reading(population, *rider.sex, age);
        const Length leg = leg_length_reference(*rider.sex, age)
                               .value(usual.mean + std::sqrt(usual.variance) * random.normal());
        const Length error = Length::millimetres(8.0 * random.normal());
        rider.readings.push_back({.on = today, .inseam = leg + rider.accuracy.sole + error, .shoes = true});
        questioned += rider_notes(rider, today).empty() ? 0 : 1;
    }
    CHECK(questioned > 0.007 * children);
    CHECK(questioned < 0.013 * children);
}

TEST_CASE("a stature that no child of the age has is questioned, and does not judge the reading",
          "[growth]") {
    Rider rider = girl_of_five(530_mm);
    rider.stature = 500_mm;
    const std::vector<Problem> notes = rider_notes(rider, today);
    REQUIRE(notes.size() == 1);
    CHECK(notes.front().code == ProblemCode::rider_stature_doubtful);
    CHECK(notes.front().where == "stature");
}

TEST_CASE("two readings of a day that are 5 cm apart ask for another one", "[growth]") {
    Rider rider = girl_of_five(500_mm);
    rider.readings.push_back({.on = today, .inseam = 550_mm, .shoes = true});
    const std::vector<Problem> notes = rider_notes(rider, today);
    REQUIRE(codes(notes) == std::vector{ProblemCode::readings_spread});
    CHECK(figure(notes.front(), "spread") == "5 cm");
}

TEST_CASE("two readings of a day that are 15 mm apart ask for nothing", "[growth]") {
    Rider rider = girl_of_five(500_mm);
    rider.readings.push_back({.on = today, .inseam = 515_mm, .shoes = true});
    CHECK(rider_notes(rider, today).empty());
}

TEST_CASE("legs that shrink beyond error are questioned", "[growth]") {
    Rider rider = girl_of_five(495_mm);
    rider.readings.push_back({.on = date("2026-06-01"), .inseam = 530_mm, .shoes = true});
    const std::vector<Problem> notes = rider_notes(rider, today);
    REQUIRE(codes(notes) == std::vector{ProblemCode::reading_below_earlier});
    CHECK(notes.front().where == "readings[0].inseam");
    CHECK(figure(notes.front(), "difference") == "3.5 cm");
    CHECK(figure(notes.front(), "before_on") == "2026-06-01");
}

TEST_CASE("a reading a little below an earlier one is within error", "[growth]") {
    Rider rider = girl_of_five(510_mm);
    rider.readings.push_back({.on = date("2026-10-01"), .inseam = 520_mm, .shoes = true});
    CHECK(rider_notes(rider, today).empty());
}

TEST_CASE("6 cm in a month are questioned, 6 cm in a year are not", "[growth]") {
    Rider rider = girl_of_five(560_mm);
    rider.readings.push_back({.on = date("2026-10-25"), .inseam = 500_mm, .shoes = true});
    CHECK(codes(rider_notes(rider, today)) == std::vector{ProblemCode::reading_grown_too_fast});
    rider.readings.back().on = date("2025-11-25");
    CHECK(rider_notes(rider, today).empty());
}

TEST_CASE("dates that cannot be are among the questions", "[growth]") {
    Rider rider = girl_of_five(530_mm);
    rider.readings.front().on = date("2027-01-01");
    CHECK(codes(rider_notes(rider, today)) == std::vector{ProblemCode::reading_in_future});
}

TEST_CASE("a rider about whom nothing is known raises no question here", "[growth]") {
    CHECK(rider_notes(Rider{}, today).empty());
}
