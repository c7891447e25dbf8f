// The table of normal scores: what is between its points keeps the order of what is on them.
#include "core/fit/growth/score_table.h"

#include "tests/domain_checkers.h"
#include "tests/repeatable_random.h"

#include <algorithm>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

constexpr std::size_t points = 40;
constexpr std::size_t days = 12;

/// A random table: scores that rise with the inseam and fall from day to day.
ScoreTable random_table(RepeatableRandom& random) {
    ScoreTable table({.lowest = 400_mm, .step = 8_mm, .count = points}, days);
    std::vector<double> scores(points, farthest_score);
    for (std::size_t day = 0; day < days; ++day) {
        std::vector<double> next(points);
        double score = -farthest_score;
        for (double& one : next) {
            score = std::min(score + random.uniform(0.0, 1.2), farthest_score);
            one = score;
        }
        for (std::size_t i = 0; i < points; ++i)
            scores[i] = std::min(scores[i], next[i]);
        table.set_day(day, scores);
    }
    return table;
}

} // namespace

TEST_CASE("scores rise with the inseam and fall from day to day, between grid points too", "[growth]") {
    RepeatableRandom random(4);
    for (int trial = 0; trial < 20; ++trial) {
        const ScoreTable table = random_table(random);
        std::vector<double> before(days, -1e9);
        for (Length inseam = 395_mm; inseam < 725_mm; inseam += Length::millimetres(0.7)) {
            const ScoreRow row = table.row_of(inseam);
            for (std::size_t day = 0; day < days; ++day) {
                REQUIRE(row.on(day) >= before[day] - 1e-12);
                REQUIRE((day == 0 || row.on(day) <= row.on(day - 1) + 1e-12));
                before[day] = row.on(day);
            }
        }
    }
}

TEST_CASE("straight scores stay straight between the grid points", "[growth]") {
    ScoreTable table({.lowest = 400_mm, .step = 8_mm, .count = points}, 1);
    std::vector<double> scores(points);
    for (std::size_t i = 0; i < points; ++i)
        scores[i] = -3.0 + 0.2 * static_cast<double>(i);
    table.set_day(0, scores);
    for (double x = 400.0; x < 700.0; x += 1.3)
        CHECK(table.row_of(Length::millimetres(x)).on(0) ==
              Approx(-3.0 + 0.2 * (x - 400.0) / 8.0).margin(1e-9));
}

TEST_CASE("inseams off the table take its nearest end", "[growth]") {
    RepeatableRandom random(5);
    const ScoreTable table = random_table(random);
    const InseamGrid& grid = table.grid();
    CHECK(table.row_of(10_mm).on(3) == table.row_of(grid.lowest).on(3));
    CHECK(table.row_of(5000_mm).on(3) == Approx(table.row_of(grid.at(grid.count - 1)).on(3)));
}
