#include "core/fit/growth/drift_filter.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace saddlerule {
namespace {

constexpr double prior_sd_of_u = 1.1;

/// How fast a child's leg length for age drifts: sigma, in standard deviations per square root of a year.
struct DriftBand {
    double from_year;
    double boys;
    double girls;
};

/// Fitted on the odd-numbered children of the Berkeley growth study from 8 on; below, stature stands in for
/// the legs, which nobody has validated. From 18 to 21 it is an assumption, and later nothing grows. Under 2
/// years the first band goes on.
constexpr std::array<DriftBand, 11> drift_bands{{
    {2.0, 0.42, 0.42},
    {3.0, 0.35, 0.35},
    {4.0, 0.20, 0.20},
    {6.0, 0.15, 0.15},
    {8.0, 0.16, 0.19},
    {10.0, 0.13, 0.19},
    {12.0, 0.19, 0.15},
    {14.0, 0.16, 0.08},
    {16.0, 0.27, 0.08},
    {18.0, 0.05, 0.05},
    {21.0, 0.00, 0.00},
}};

/// The rate of the maturing curve of boys at 8, 9, ... 18 years; straight lines between them, zero outside.
/// Girls run through the same curve earlier.
constexpr std::array<double, 11> maturing_rate{0.0,   0.03,  0.11,  0.19,  0.15, -0.03,
                                               -0.25, -0.28, -0.16, -0.05, 0.0};
constexpr double maturing_starts = 8.0;
constexpr double girls_ahead_years = 1.7;

/// The drift's variance from the first band's start to an age; negative before it.
double drift_since_start(Sex sex, double years) {
    double variance = 0.0;
    for (std::size_t i = 0; i < drift_bands.size(); ++i) {
        const bool first = i == 0;
        const bool last = i + 1 == drift_bands.size();
        const double from = drift_bands[i].from_year;
        if (!first && years <= from)
            break;
        const double to = last ? years : std::min(years, drift_bands[i + 1].from_year);
        const double sigma = sex == Sex::boy ? drift_bands[i].boys : drift_bands[i].girls;
        variance += sigma * sigma * (to - from);
    }
    return variance;
}

} // namespace

double maturing_curve(Sex sex, Days age) {
    const double boys_years = age.in_years() + (sex == Sex::girl ? girls_ahead_years : 0.0);
    double area = 0.0;
    for (std::size_t i = 0; i + 1 < maturing_rate.size(); ++i) {
        const double from = maturing_starts + static_cast<double>(i);
        const double part = std::clamp(boys_years - from, 0.0, 1.0);
        area += part * (maturing_rate[i] + 0.5 * part * (maturing_rate[i + 1] - maturing_rate[i]));
    }
    return area;
}

double drift_variance(Sex sex, Days from, Days to) {
    return drift_since_start(sex, to.in_years()) - drift_since_start(sex, from.in_years());
}

LegGrowth LegGrowth::before_readings(Sex sex, Days age) {
    LegGrowth growth;
    growth.sex_ = sex;
    growth.age_ = age;
    growth.var_u_ = prior_sd_of_u * prior_sd_of_u;
    growth.var_tau_ = 1.0;
    return growth;
}

LegGrowth LegGrowth::from_first_reading(Sex sex, Days age, ScoreEstimate score) {
    // u = z - tau G + error, with tau as before: the limit of a prior on u that gets ever wider.
    const double bend = maturing_curve(sex, age);
    LegGrowth growth;
    growth.sex_ = sex;
    growth.age_ = age;
    growth.u_ = score.mean;
    growth.var_u_ = score.variance + bend * bend;
    growth.var_tau_ = 1.0;
    growth.cov_ = -bend;
    return growth;
}

void LegGrowth::drift_to(Days age) {
    var_u_ += drift_variance(sex_, age_, age);
    age_ = age;
}

void LegGrowth::update(Days age, ScoreEstimate score) {
    drift_to(age);
    const double bend = maturing_curve(sex_, age);
    const double with_u = var_u_ + bend * cov_; // covariances of the states with the score
    const double with_tau = cov_ + bend * var_tau_;
    const double innovation_variance = with_u + bend * with_tau + score.variance;
    const double gain_u = with_u / innovation_variance;
    const double gain_tau = with_tau / innovation_variance;
    const double innovation = score.mean - (u_ + bend * tau_);
    u_ += gain_u * innovation;
    tau_ += gain_tau * innovation;
    var_u_ -= gain_u * with_u;
    var_tau_ -= gain_tau * with_tau;
    cov_ -= gain_u * with_tau;
}

ScoreEstimate LegGrowth::at(Days age) const {
    const double bend = maturing_curve(sex_, age);
    const double var_u = var_u_ + drift_variance(sex_, age_, age);
    return {.mean = u_ + bend * tau_, .variance = var_u + bend * (2.0 * cov_ + bend * var_tau_)};
}

double LegGrowth::log_likelihood(Days age, ScoreEstimate score) const {
    const ScoreEstimate foreseen = at(age);
    const double variance = foreseen.variance + score.variance;
    const double off = score.mean - foreseen.mean;
    return -0.5 * (std::log(2.0 * std::numbers::pi * variance) + off * off / variance);
}

} // namespace saddlerule
