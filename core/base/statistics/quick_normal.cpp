#include "core/base/statistics/quick_normal.h"

#include "core/base/statistics/normal_distribution.h"

namespace saddlerule {

const QuickNormal& QuickNormal::table() {
    static const QuickNormal filled;
    return filled;
}

QuickNormal::QuickNormal() {
    const double width = 1.0 / pieces_per_unit;
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
        const double from = -reach + static_cast<double>(i) * width;
        const double start = normal::cdf(from);
        const double rise = normal::cdf(from + width) - start;
        const double slope_here = normal::density(from) * width;
        const double slope_there = normal::density(from + width) * width;
        pieces_[i] = {.constant = start,
                      .linear = slope_here,
                      .quadratic = 3.0 * rise - 2.0 * slope_here - slope_there,
                      .cubic = slope_here + slope_there - 2.0 * rise};
    }
}

} // namespace saddlerule
