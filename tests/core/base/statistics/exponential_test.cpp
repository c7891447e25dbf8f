// Exponentials against the C library of whoever runs the tests: glibc's and musl's are within one unit in the last place
// (glibc's manual, "Known Maximum Errors in Math Functions", from memory).
#include "core/base/statistics/exponential.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace saddlerule;

namespace {

/// How many doubles apart two positive ones are.
double places_between(double one, double other) {
    const double larger = std::max(one, other);
    return std::fabs(one - other) / (larger - std::nextafter(larger, 0.0));
}

double worst_within(double low, double high) {
    testing::RepeatableRandom random(20);
    double worst = 0.0;
    for (int i = 0; i < 200000; ++i) {
        const double x = random.uniform(low, high);
        worst = std::max(worst, places_between(exponential(x), std::exp(x)));
    }
    return worst;
}

constexpr double infinite = std::numeric_limits<double>::infinity();

} // namespace

TEST_CASE("exponentials are the C library's, to one unit in the last place", "[statistics]") {
    CHECK(worst_within(-0.4, 0.4) <= 1.0);
    CHECK(worst_within(-20.0, 20.0) <= 1.0);
    CHECK(worst_within(-700.0, 709.7) <= 1.0);
    // Doubles next to zero stand further apart than their own rounding.
    CHECK(worst_within(-745.0, -700.0) <= 1.0);
}

TEST_CASE("exponentials where doubles end", "[statistics]") {
    CHECK(exponential(0.0) == 1.0);
    CHECK(exponential(-0.0) == 1.0);
    CHECK(exponential(709.782712893384) < infinite);
    CHECK(exponential(709.782712893385) == infinite);
    CHECK(exponential(infinite) == infinite);
    CHECK(exponential(-745.1332191) > 0.0);
    CHECK(exponential(-745.2) == 0.0);
    CHECK(exponential(-infinite) == 0.0);
    CHECK(std::isnan(exponential(std::nan(""))));
}
