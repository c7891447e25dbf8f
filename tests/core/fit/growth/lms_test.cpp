// LMS mathematics. Outside check: the worked example of the CDC growth-chart data documentation.
#include "core/fit/growth/lms.h"

#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace saddlerule;

// CDC growth-chart data documentation: boys, 9.5 months, weight, 9.7 kg.
TEST_CASE("the CDC's worked example comes out: a boy of 9.5 months and 9.7 kg is at z 0.207", "[growth]") {
    const Lms<Mass> weight{.median = Mass::kilograms(9.476500305),
                           .shape = {.l = -0.1600954, .s = 0.11218624}};
    CHECK(weight.score(Mass::kilograms(9.7)) == Approx(0.207).margin(0.0005));
}

TEST_CASE("value and score undo each other, whatever the skewness", "[growth]") {
    const double skewness = GENERATE(-1.8541, -0.5, -1e-9, 0.0, 1e-13, 1e-9, 0.536, 1.0, 2.1955);
    const LmsShape shape{.l = skewness, .s = 0.06};
    for (double z = -4.0; z <= 4.0; z += 0.25)
        CHECK(shape.score(shape.ratio(z)) == Approx(z).margin(1e-9));
}

TEST_CASE("the median scores zero", "[growth]") {
    const Lms<Length> legs{.median = Length::millimetres(512.91), .shape = {.l = 0.558, .s = 0.062}};
    CHECK(legs.score(legs.median) == Approx(0.0).margin(1e-12));
    CHECK(legs.value(0.0).in_millimetres() == Approx(512.91).margin(1e-9));
}

TEST_CASE("as the skewness goes to zero the score goes over into a logarithm without a step", "[growth]") {
    const LmsShape logarithmic{.l = 0.0, .s = 0.05};
    CHECK(logarithmic.score(1.1) == Approx(std::log(1.1) / 0.05).epsilon(1e-12));
    for (const double skewness : {1e-6, 1e-9, 1e-11, 1e-13, -1e-13, -1e-11, -1e-9, -1e-6}) {
        const LmsShape nearly{.l = skewness, .s = 0.05};
        CHECK(nearly.score(1.1) == Approx(logarithmic.score(1.1)).margin(1e-6));
        CHECK(nearly.ratio(1.5) == Approx(logarithmic.ratio(1.5)).margin(1e-6));
    }
}

TEST_CASE("beyond the end of its distribution a reference answers with the end, never with a NaN",
          "[growth]") {
    SECTION("positive skewness ends below") {
        const LmsShape shape{.l = 1.0, .s = 0.05};
        CHECK(shape.ratio(-20.0) == 0.0);
        CHECK(shape.ratio(-25.0) == 0.0);
        CHECK(shape.score(0.0) == Approx(-20.0));
        CHECK(shape.score(-0.3) == Approx(-20.0));
    }
    SECTION("negative skewness ends above") {
        const LmsShape shape{.l = -1.8541, .s = 0.16033};
        CHECK(std::isinf(shape.ratio(3.5)));
        CHECK(shape.ratio(3.5) > 0.0);
        CHECK(shape.score(0.0) < -1e300);
    }
    SECTION("no skewness has no end") {
        const LmsShape shape{.l = 0.0, .s = 0.05};
        CHECK(shape.ratio(-50.0) > 0.0);
        CHECK(shape.score(0.0) < -1e300);
    }
}

TEST_CASE("the slope is that of the score", "[growth]") {
    const double skewness = GENERATE(-1.2, 0.0, 0.536, 1.2);
    const LmsShape shape{.l = skewness, .s = 0.06};
    for (double ratio = 0.7; ratio < 1.4; ratio += 0.1) {
        const double h = 1e-6;
        const double rise = (shape.score(ratio + h) - shape.score(ratio - h)) / (2.0 * h);
        CHECK(shape.slope(ratio) == Approx(rise).epsilon(1e-6));
    }
}
