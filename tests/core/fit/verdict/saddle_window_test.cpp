// Saddle windows. Outside check: the trade's rules in inches above the inseam (common practice).
#include "core/fit/verdict/saddle_window.h"

#include "tests/domain_checkers.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

TEST_CASE("a starting rider's saddle is at the inseam", "[fit]") {
    const SaddleWindow window = saddle_window(495_mm, Stage::starting, Confidence::usual);
    check_length(window.target, 495_mm);
    check_length(window.range.low(), 470_mm);
    check_length(window.range.high(), 505_mm);
}

TEST_CASE("a riding rider's saddle is two to four inches above the inseam, to the millimetre", "[fit]") {
    const SaddleWindow window = saddle_window(Length::inches(20.0), Stage::riding, Confidence::usual);
    CHECK(window.range.low().in_inches() == Approx(22.0).margin(0.5 / 25.4));
    CHECK(window.range.high().in_inches() == Approx(24.0).margin(0.5 / 25.4));
    CHECK(window.target.in_inches() == Approx(23.0).margin(0.5 / 25.4));
}

TEST_CASE("on side wheels the saddle is up to three inches above the inseam, by confidence", "[fit]") {
    const auto target = [](Confidence confidence) {
        return saddle_window(500_mm, Stage::side_wheels, confidence).target;
    };
    check_length(target(Confidence::wary), 500_mm);
    check_length(target(Confidence::usual), 538_mm);
    check_length(target(Confidence::bold), 576_mm);
}

TEST_CASE("a gliding rider sits below the inseam, to push with bent knees", "[fit]") {
    CHECK(saddle_window(380_mm, Stage::gliding, Confidence::usual).range.high() < 380_mm);
}

TEST_CASE("every stage's target is inside its window", "[fit]") {
    for (const Stage stage : {Stage::gliding, Stage::side_wheels, Stage::starting, Stage::riding}) {
        for (const Confidence confidence : {Confidence::wary, Confidence::usual, Confidence::bold}) {
            const WindowOffsets offsets = window_offsets(stage, confidence);
            CHECK(offsets.range.contains(offsets.target));
        }
    }
}

TEST_CASE("the stage moves on at the family's date, and half a year on without one", "[fit]") {
    Rider rider;
    rider.stage = Stage::starting;
    const CalendarDate today = date("2026-11-25");
    SECTION("no date") {
        const auto stages = stage_timeline(rider, today);
        REQUIRE(stages.size() == 2);
        CHECK(stages[0].stage == Stage::starting);
        CHECK(stages[1].stage == Stage::riding);
        CHECK(stages[1].from == date("2027-05-25"));
    }
    SECTION("a date ahead") {
        rider.riding_from = date("2027-03-01");
        CHECK(stage_timeline(rider, today)[1].from == date("2027-03-01"));
    }
    SECTION("a date that has passed counts as none: what the family says of today holds") {
        rider.riding_from = date("2026-03-01");
        const auto stages = stage_timeline(rider, today);
        CHECK(stages[0].stage == Stage::starting);
        CHECK(stages[1].from == date("2027-05-25"));
    }
    SECTION("side wheels lead to starting, and half a year later to riding") {
        rider.stage = Stage::side_wheels;
        rider.riding_from = date("2027-02-01");
        const auto stages = stage_timeline(rider, today);
        REQUIRE(stages.size() == 3);
        CHECK(stages[1].stage == Stage::starting);
        CHECK(stages[1].from == date("2027-02-01"));
        CHECK(stages[2].from == date("2027-08-01"));
    }
    SECTION("gliding and riding stay what they are") {
        rider.stage = GENERATE(Stage::gliding, Stage::riding);
        CHECK(stage_timeline(rider, today).size() == 1);
    }
}
