// LMS: the way growth references are published, a skewed normal distribution for each age. Cole and Green:
// Smoothing reference centile curves: the LMS method and penalized likelihood. Stat Med 1992;11:1305-1319.
#pragma once

namespace saddlerule {

/// The shape around a median: skewness L and spread S. Values enter as their ratio to the median.
struct LmsShape {
    double l = 1.0;
    double s = 1.0;

    /// Standard deviations from the median: (ratio^L - 1) / (L S), or ln(ratio) / S as L goes to 0. A ratio
    /// of zero or below gives the score of zero, which is minus infinity where L <= 0.
    double score(double ratio) const;

    /// The ratio with that score. Beyond the end of the distribution, which is at score -1 / (L S), it is
    /// zero for L > 0 and infinity for L < 0.
    double ratio(double score) const;

    /// By how much the score rises per unit of the ratio, for ratios above zero.
    double slope(double ratio) const;
};

/// One reference at one age.
template <typename Quantity>
struct Lms {
    Quantity median;
    LmsShape shape;

    double score(Quantity value) const { return shape.score(value / median); }
    Quantity value(double score) const { return median * shape.ratio(score); }
};

} // namespace saddlerule
