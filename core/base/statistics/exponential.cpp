#include "core/base/statistics/exponential.h"

#include <cmath>
#include <limits>
#include <numbers>

namespace saddlerule {

namespace {

// ln 2 in two parts: the first has so few bits that any number of halvings times it is exact.
constexpr double ln2_high = 0x1.62e42feep-1;
constexpr double ln2_low = 0x1.a39ef35793c76p-33;

constexpr double largest = 709.782712893384;
constexpr double smallest = -745.1332191019412;

/// (e^r - 1 - r) / r^2 by its series, which 12 terms of are enough for where r is at most half of ln 2.
double tail_of_series(double r) {
    constexpr double terms[] = {1 / 6227020800.0, 1 / 479001600.0, 1 / 39916800.0, 1 / 3628800.0,
                                1 / 362880.0,     1 / 40320.0,     1 / 5040.0,     1 / 720.0,
                                1 / 120.0,        1 / 24.0,        1 / 6.0,        1 / 2.0};
    double sum = 0.0;
    for (const double term : terms)
        sum = sum * r + term;
    return sum;
}

} // namespace

double exponential(double x) {
    if (std::isnan(x))
        return x;
    if (x > largest)
        return std::numeric_limits<double>::infinity();
    if (x < smallest)
        return 0.0;
    const double doublings = std::nearbyint(x * std::numbers::log2e);
    const double high = x - doublings * ln2_high;
    const double low = doublings * ln2_low;
    const double r = high - low;
    return std::ldexp(1.0 + (high - (low - r * r * tail_of_series(r))), static_cast<int>(doublings));
}

} // namespace saddlerule
