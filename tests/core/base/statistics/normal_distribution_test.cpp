// The normal distribution. Outside check: Boost.Math (Debian libboost-math-dev) over a grid, to 1e-9; the
// figures were computed by it into normal_reference.h, so that the wasm build of the tests needs no Boost.
#include "core/base/statistics/normal_distribution.h"

#include "tests/core/base/statistics/normal_reference.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>

using namespace saddlerule;

TEST_CASE("the normal cdf agrees with Boost.Math from -8 to 8", "[statistics]") {
    for (const auto& [z, probability] : normal_cdf_reference)
        CHECK(normal::cdf(z) == Approx(probability).epsilon(1e-9).margin(1e-15));
}

TEST_CASE("the normal quantile agrees with Boost.Math, tails included", "[statistics]") {
    for (const auto& [probability, z] : normal_quantile_reference)
        CHECK(normal::quantile(probability) == Approx(z).epsilon(1e-9).margin(1e-12));
}

TEST_CASE("quantile and cdf undo each other", "[statistics]") {
    for (double p = 0.001; p < 1.0; p += 0.001)
        CHECK(normal::cdf(normal::quantile(p)) == Approx(p).margin(1e-13));
}

TEST_CASE("the density is the slope of the cdf", "[statistics]") {
    const double h = 1e-5;
    for (double z = -4.0; z <= 4.0; z += 0.25)
        CHECK(normal::density(z) == Approx((normal::cdf(z + h) - normal::cdf(z - h)) / (2 * h)).margin(1e-9));
}

TEST_CASE("impossible probabilities give no figure that looks real", "[statistics]") {
    CHECK(std::isinf(normal::quantile(0.0)));
    CHECK(std::isinf(normal::quantile(1.0)));
    CHECK(std::isnan(normal::quantile(-0.1)));
    CHECK(std::isnan(normal::quantile(1.1)));
    CHECK(std::isnan(normal::quantile(std::numeric_limits<double>::quiet_NaN())));
}
