#include "core/fit/growth/lms.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace saddlerule {
namespace {

/// Closer to zero than this, L makes no difference that a double can hold.
constexpr double l_of_nothing = 1e-12;

} // namespace

double LmsShape::score(double ratio) const {
    const double logarithm = ratio > 0.0 ? std::log(ratio) : -std::numeric_limits<double>::infinity();
    if (std::fabs(l) < l_of_nothing)
        return logarithm / s;
    return std::expm1(l * logarithm) / (l * s); // expm1 keeps its digits as L goes to 0
}

double LmsShape::ratio(double score) const {
    if (std::fabs(l) < l_of_nothing)
        return std::exp(s * score);
    const double inner = std::max(l * s * score, -1.0);
    return std::exp(std::log1p(inner) / l);
}

double LmsShape::slope(double ratio) const {
    return std::exp((l - 1.0) * std::log(ratio)) /
           s; // exp and log serve elsewhere: pow alone takes 5 kB of wasm
}

} // namespace saddlerule
