// The list turned round: at either end of a range the verdict says that the bike fits, and a tenth of a millimetre beyond it does not.
#include "core/planning/suits/inseams_that_fit.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace saddlerule;
using saddlerule::testing::RepeatableRandom;

namespace {

constexpr Stage stages[] = {Stage::gliding, Stage::side_wheels, Stage::starting, Stage::riding};

bool fits(const SaddleSpan& span, Length inseam, Stage stage, Length sd) {
    return fit_of(span, {inseam, sd}, window_offsets(stage, Confidence::usual)).verdict == Verdict::fits_now;
}

Length tenth(Length length, int steps) {
    return Length::millimetres((std::round(length.in_millimetres() * 10.0) + steps) / 10.0);
}

void check_edges(const SaddleSpan& span, Stage stage, Length sd) {
    CAPTURE(static_cast<int>(stage), sd.in_millimetres());
    const auto range = InseamFinder(stage, sd).of(span);
    if (!range) {
        // Then no inseam fits, whatever it is.
        for (int tenths = 2000; tenths < 12000; ++tenths)
            REQUIRE_FALSE(fits(span, Length::millimetres(tenths / 10.0), stage, sd));
        return;
    }
    const Length from = range->from ? *range->from : *range->surely_from;
    const Length to = range->to ? *range->to : *range->surely_to;
    REQUIRE(from <= to);
    CHECK(fits(span, from, stage, sd));
    CHECK_FALSE(fits(span, tenth(from, -1), stage, sd));
    CHECK(fits(span, to, stage, sd));
    CHECK_FALSE(fits(span, tenth(to, 1), stage, sd));
    CHECK(range->from.has_value() == span.lowest.has_value());
    CHECK(range->to.has_value() == span.highest.has_value());
}

} // namespace

TEST_CASE("the edges are the verdict's own", "[suits]") {
    RepeatableRandom random(20261129);
    for (int round = 0; round < 4000; ++round) {
        const bool whole = round % 2 == 0;
        const auto figure = [&](double low, double high) {
            const double drawn = random.uniform(low, high);
            return Length::millimetres(whole ? std::round(drawn) : std::round(drawn * 10.0) / 10.0);
        };
        const Length lowest = figure(300.0, 800.0);
        // Ranges from none at all: there both edges pull at each other.
        SaddleSpan span{lowest, lowest + figure(0.0, round % 5 == 0 ? 20.0 : 200.0)};
        if (round % 11 == 0)
            span.highest.reset();
        else if (round % 13 == 0)
            span.lowest.reset();
        const Length sd = round % 7 == 0 ? figure(0.1, 40.0) : Length::millimetres(8.0);
        check_edges(span, stages[round % 4], sd);
    }
}

TEST_CASE("a bike of whom nothing was measured suits nobody that we know of", "[suits]") {
    CHECK_FALSE(InseamFinder(Stage::starting, usual_reading_sd()).of({}).has_value());
}
