// What to get: as few saddle ranges as can be, each of which fits everybody it is said to fit.
#include "core/planning/club/bikes_to_get.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::literals;
using saddlerule::testing::RepeatableRandom;

namespace {

Unseated child(std::size_t rider, Length inseam, Stage stage, Length sd = 8_mm) {
    return {.rider = rider,
            .inseam = {inseam, sd},
            .offsets = window_offsets(stage, Confidence::usual),
            .kind = stage == Stage::gliding ? BikeKind::balance : BikeKind::pedal};
}

double chance(const Unseated& one, Length lowest, Length highest) {
    return fit_of({lowest, highest}, one.inseam, one.offsets).probability.value_or(0.0);
}

/// How far inside the window an end has to be, that it alone suits with a chance of three quarters: 0.6745 standard deviations
/// (tables of the normal distribution).
Length one_end_margin(const Unseated& one) {
    return Length::millimetres(
        0.67449 * std::hypot(one.inseam.sd.in_millimetres(), bike_measurement_sd.in_millimetres()));
}

/// Whether one bike of a usual range does for all of them: its lowest saddle is as high as the first of them lets it be.
bool one_bike_does(const std::vector<Unseated>& group) {
    Length lowest = 10000_mm;
    Length highest;
    for (const Unseated& one : group) {
        const BikeToGet alone = bikes_to_get({&one, 1}, 1).front();
        lowest = std::min(lowest, alone.lowest_at_most);
        const Length needed = one.inseam.mean + one.offsets.range.low() + one_end_margin(one);
        // Answers are in tenths, rounded to the safe side.
        highest = std::max(highest, Length::millimetres(std::ceil(needed.in_millimetres() * 10.0) / 10.0));
    }
    return highest <= lowest + usual_range(group.front().kind, lowest) + 0.01_mm;
}

/// The fewest groups, by trying every way to split.
std::size_t fewest(const std::vector<Unseated>& riders) {
    std::size_t least = riders.size();
    std::vector<std::size_t> group(riders.size());
    const auto split = [&](auto&& self, std::size_t at, std::size_t groups) -> void {
        if (groups >= least)
            return;
        if (at == riders.size()) {
            for (std::size_t g = 0; g < groups; ++g) {
                std::vector<Unseated> members;
                for (std::size_t i = 0; i < riders.size(); ++i) {
                    if (group[i] == g)
                        members.push_back(riders[i]);
                }
                if (!one_bike_does(members))
                    return;
            }
            least = groups;
            return;
        }
        for (std::size_t g = 0; g <= groups; ++g) {
            group[at] = g;
            self(self, at + 1, std::max(groups, g + 1));
        }
    };
    split(split, 0, 0);
    return least;
}

} // namespace

TEST_CASE("children of one size need one range, and as many bikes as they are", "[club]") {
    const std::vector<Unseated> riders{child(4, 480_mm, Stage::starting), child(7, 500_mm, Stage::starting),
                                       child(9, 520_mm, Stage::riding)};
    const auto ranges = bikes_to_get(riders, 1);
    REQUIRE(ranges.size() == 1);
    CHECK(ranges[0].seats == std::vector<std::size_t>{4, 7, 9});
    CHECK(ranges[0].bikes == 3);
    CHECK(bikes_to_get(riders, 2)[0].bikes == 2);
    // The shortest child's window ends 10 mm above the inside leg; the bike's own error and the reading's keep 6.4 mm off that.
    CHECK(ranges[0].lowest_at_most.in_millimetres() == Approx(480 + 10 - 6.4).margin(0.1));
    CHECK(ranges[0].highest_at_least.in_millimetres() == Approx(520 + 51 + 6.4).margin(0.1));
}

TEST_CASE("who glides gets a balance bike", "[club]") {
    const std::vector<Unseated> riders{child(0, 400_mm, Stage::gliding), child(1, 400_mm, Stage::starting)};
    const auto ranges = bikes_to_get(riders, 1);
    REQUIRE(ranges.size() == 2);
    CHECK(ranges[0].kind != ranges[1].kind);
}

TEST_CASE("ranges that seat more come first", "[club]") {
    const std::vector<Unseated> riders{child(0, 700_mm, Stage::riding), child(1, 430_mm, Stage::starting),
                                       child(2, 440_mm, Stage::starting)};
    const auto ranges = bikes_to_get(riders, 1);
    REQUIRE(ranges.size() == 2);
    CHECK(ranges[0].seats == std::vector<std::size_t>{1, 2});
    CHECK(ranges[1].seats == std::vector<std::size_t>{0});
}

TEST_CASE("any bike within what is asked for fits all whom it is said to seat; no fewer ranges would do",
          "[club]") {
    RepeatableRandom random(7);
    constexpr Stage stages[] = {Stage::side_wheels, Stage::starting, Stage::riding};
    for (int round = 0; round < 300; ++round) {
        std::vector<Unseated> riders;
        const auto count = 1 + static_cast<std::size_t>(random.uniform() * 6.0);
        for (std::size_t i = 0; i < count; ++i) {
            // One after the other: compilers differ in the order of arguments.
            const Length inseam = Length::millimetres(random.uniform(400.0, 760.0));
            const Stage stage = stages[static_cast<std::size_t>(random.uniform() * 3.0)];
            riders.push_back(child(i, inseam, stage));
        }
        const auto ranges = bikes_to_get(riders, 1);
        std::size_t seated = 0;
        for (const BikeToGet& range : ranges) {
            seated += range.seats.size();
            CHECK(range.highest_at_least - range.lowest_at_most <=
                  usual_range(range.kind, range.lowest_at_most) + 0.01_mm);
            for (const std::size_t rider : range.seats) {
                CHECK(chance(riders[rider], range.lowest_at_most, range.highest_at_least) >= 0.5);
                CHECK(chance(riders[rider], range.lowest_at_most - 40_mm, range.highest_at_least + 30_mm) >=
                      0.5);
            }
        }
        CHECK(seated == riders.size());
        CHECK(ranges.size() == fewest(riders));
    }
}
