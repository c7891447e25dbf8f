// The table behind the inner loops, against the exact functions.
#include "core/base/statistics/quick_normal.h"

#include "core/base/statistics/normal_distribution.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace saddlerule;

TEST_CASE("the quick cdf is within 1e-8 of the exact one everywhere", "[statistics]") {
    const QuickNormal& quick = QuickNormal::table();
    double worst = 0.0;
    for (double z = -10.0; z <= 10.0; z += 0.00137)
        worst = std::max(worst, std::fabs(quick.cdf(z) - normal::cdf(z)));
    CHECK(worst < 1e-8);
}

TEST_CASE("the quick cdf is exact at its ends and never leaves 0 to 1 by more than its error",
          "[statistics]") {
    const QuickNormal& quick = QuickNormal::table();
    CHECK(quick.cdf(-1e9) == Approx(0.0).margin(1e-14));
    CHECK(quick.cdf(1e9) == Approx(1.0).margin(1e-14));
}

TEST_CASE("the rough quantile is within two parts in a thousand million of the exact one", "[statistics]") {
    for (double p = 1e-9; p < 0.5; p *= 1.07) {
        CHECK(normal::rough_quantile(p) == Approx(normal::quantile(p)).epsilon(2e-9));
        CHECK(normal::rough_quantile(1.0 - p) == Approx(normal::quantile(1.0 - p)).epsilon(2e-9));
    }
}
