// Readings of one day taken together.
#include "core/fit/rider/rider.h"

#include "tests/domain_checkers.h"

#include <cmath>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

TEST_CASE("one reading in shoes is taken as it is, eight millimetres unsure", "[rider]") {
    Rider rider;
    rider.readings = {{date("2026-11-20"), 495_mm, true}};
    const auto days = pooled_by_day(rider);
    REQUIRE(days.size() == 1);
    check_length(days[0].inseam, 495_mm);
    check_length(days[0].sd, 8_mm);
}

TEST_CASE("a reading without shoes gains a sole, and the sole's doubt", "[rider]") {
    Rider rider;
    rider.readings = {{date("2026-11-20"), 475_mm, false}};
    const auto days = pooled_by_day(rider);
    check_length(days[0].inseam, 495_mm);
    check_length(days[0].sd, Length::millimetres(std::sqrt(8.0 * 8.0 + 5.0 * 5.0)));
}

TEST_CASE("measuring four times halves the tape's error, but not the sole's", "[rider]") {
    Rider rider;
    for (const Length inseam : {470_mm, 474_mm, 476_mm, 480_mm})
        rider.readings.push_back({date("2026-11-20"), inseam, false});
    const auto days = pooled_by_day(rider);
    REQUIRE(days.size() == 1);
    CHECK(days[0].count == 4);
    check_length(days[0].inseam, 495_mm);
    check_length(days[0].spread, 10_mm);
    check_length(days[0].sd, Length::millimetres(std::sqrt(4.0 * 4.0 + 5.0 * 5.0)));
}

TEST_CASE("however often a child is measured in a day, half of one reading's error remains", "[rider]") {
    Rider rider;
    for (int i = 0; i < 50; ++i)
        rider.readings.push_back({date("2026-11-20"), 495_mm, true});
    check_length(pooled_by_day(rider).front().sd, 4_mm);
    rider.accuracy.reading_sd = 3_mm;
    check_length(pooled_by_day(rider).front().sd, Length::millimetres(1.5));
}

TEST_CASE("readings of a day that differ by more than their error are as unsure as they show", "[rider]") {
    Rider rider;
    rider.readings = {{date("2026-11-20"), 495_mm, true}, {date("2026-11-20"), 560_mm, true}};
    check_length(pooled_by_day(rider).front().sd, Length::millimetres(32.5));
    rider.readings.back().inseam = 505_mm;
    check_length(pooled_by_day(rider).front().sd, Length::millimetres(8.0 / std::sqrt(2.0)));
}

TEST_CASE("readings come back by day, oldest first, whatever order they were typed in", "[rider]") {
    Rider rider;
    rider.readings = {{date("2026-11-20"), 495_mm, true},
                      {date("2025-05-02"), 450_mm, true},
                      {date("2026-11-20"), 499_mm, true}};
    const auto days = pooled_by_day(rider);
    REQUIRE(days.size() == 2);
    CHECK(days[0].on == date("2025-05-02"));
    check_length(days[1].inseam, 497_mm);
}

TEST_CASE("no readings make no days", "[rider]") {
    CHECK(pooled_by_day(Rider{}).empty());
}
