// Dates that cannot be: each has a question and a sensible answer.
#include "core/fit/growth/rider_history.h"

#include "core/fit/growth/rider_growth.h"
#include "tests/domain_checkers.h"
#include "tests/support/problem_in_english.h"

#include <algorithm>
#include <cstddef>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

const CalendarDate today = date("2026-11-25");

Rider rider_born(std::string_view born) {
    Rider rider;
    rider.born = date(born);
    return rider;
}

void check_only_note(const RiderHistory& history, ProblemCode code, std::string_view where) {
    REQUIRE(history.notes.size() == 1);
    CHECK(history.notes.front().code == code);
    CHECK(history.notes.front().where == where);
    CHECK_FALSE(sentence(history.notes.front()).empty());
}

} // namespace

TEST_CASE("dates in order raise no question", "[growth]") {
    Rider rider = rider_born("2021-09-15");
    rider.readings = {{date("2026-11-25"), 495_mm, true}, {date("2026-02-01"), 470_mm, true}};
    const RiderHistory history = rider_history(rider, today);
    CHECK(history.notes.empty());
    CHECK(history.born == rider.born);
    REQUIRE(history.days.size() == 2);
    CHECK(history.days[0].on == date("2026-02-01"));
}

TEST_CASE("a reading dated in the future counts as made today", "[growth]") {
    Rider rider = rider_born("2021-09-15");
    rider.readings = {{date("2026-02-01"), 470_mm, true}, {date("2027-11-20"), 495_mm, true}};
    const RiderHistory history = rider_history(rider, today);
    check_only_note(history, ProblemCode::reading_in_future, "readings[1].on");
    REQUIRE(history.days.size() == 2);
    CHECK(history.days[1].on == today);
    check_length(RiderGrowth::of(rider, today).today().mean, RiderGrowth::of(
                                                                 [&] {
                                                                     Rider corrected = rider;
                                                                     corrected.readings[1].on = today;
                                                                     return corrected;
                                                                 }(),
                                                                 today)
                                                                 .today()
                                                                 .mean);
}

TEST_CASE("a reading dated before the birth is left out", "[growth]") {
    Rider rider = rider_born("2021-09-15");
    rider.readings = {{date("2020-11-20"), 495_mm, true}, {date("2026-11-20"), 500_mm, true}};
    const RiderHistory history = rider_history(rider, today);
    check_only_note(history, ProblemCode::reading_before_birth, "readings[0].on");
    REQUIRE(history.days.size() == 1);
    check_length(history.days[0].inseam, 500_mm);
}

TEST_CASE("when every reading is dated before the birth, the estimate falls back to the age", "[growth]") {
    Rider rider = rider_born("2021-06-01");
    rider.readings = {{date("2016-11-25"), 495_mm, true}}; // a slip for 2026
    const RiderHistory history = rider_history(rider, today);
    check_only_note(history, ProblemCode::reading_before_birth, "readings[0].on");
    CHECK(history.days.empty());
    CHECK(history.born == rider.born);
    const InseamToday inseam = RiderGrowth::of(rider, today).today();
    CHECK(inseam.basis == InseamBasis::estimated_from_age);
    CHECK(inseam.mean > 490_mm);
    CHECK(inseam.mean < 560_mm);
}

TEST_CASE("a newest reading of more than half a year ago says so", "[growth]") {
    Rider rider = rider_born("2021-06-01");
    rider.readings = {{date("2026-05-20"), 495_mm, true}, {date("2025-05-20"), 455_mm, true}};
    CHECK(rider_history(rider, today).notes.empty());
    const RiderHistory history = rider_history(rider, date("2027-02-25"));
    check_only_note(history, ProblemCode::reading_old, "readings[0].on");
    CHECK(sentence(history.notes.front()) ==
          "the newest measurement is from 2026-05-20, 9 months ago; what has grown since is an estimate");
}

TEST_CASE("a birth in the future alone says nothing of a size", "[growth]") {
    Rider rider = rider_born("2027-01-15");
    CHECK(says_nothing_of_size(rider, today));
    CHECK_FALSE(says_nothing_of_size(rider, date("2027-02-01")));
    rider.stature = 1100_mm;
    CHECK_FALSE(says_nothing_of_size(rider, today));
}

TEST_CASE("a birth after today counts as unknown", "[growth]") {
    Rider rider = rider_born("2031-09-15");
    rider.readings = {{date("2026-11-20"), 495_mm, true}};
    const RiderHistory history = rider_history(rider, today);
    check_only_note(history, ProblemCode::rider_born_in_future, "born");
    CHECK_FALSE(history.born);
    CHECK(history.days.size() == 1);
}

TEST_CASE("ages under 1 and over 18 are noted and answered", "[growth]") {
    SECTION("a baby") {
        check_only_note(rider_history(rider_born("2026-03-01"), today), ProblemCode::rider_under_one, "born");
        const InseamToday inseam = RiderGrowth::of(rider_born("2026-03-01"), today).today();
        CHECK(inseam.mean.in_millimetres() == Approx(310.0).margin(20.0));
    }
    SECTION("an adult") {
        check_only_note(rider_history(rider_born("1984-03-01"), today), ProblemCode::rider_over_eighteen,
                        "born");
        const InseamToday inseam = RiderGrowth::of(rider_born("1984-03-01"), today).today();
        // Halfway between women and men, of the three populations.
        CHECK(inseam.mean.in_millimetres() == Approx(842.0).margin(4.0));
    }
    SECTION("the day of the eighteenth birthday is not over it") {
        CHECK(rider_history(rider_born("2008-11-25"), today).notes.empty());
    }
}
