#include "core/fit/growth/drift_filter.h"

#include "core/fit/growth/drift_constants.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace saddlerule {
namespace {

double spread_factor(Sex sex) {
    return sex == Sex::boy ? drift::boys_spread : drift::girls_spread;
}

/// The drift's variance from the first band's start to an age; negative before it.
double drift_since_start(Sex sex, double years) {
    double variance = 0.0;
    for (std::size_t i = 0; i < drift::bands.size(); ++i) {
        const bool first = i == 0;
        const bool last = i + 1 == drift::bands.size();
        const double from = drift::bands[i].from_year;
        if (!first && years <= from)
            break;
        const double to = last ? years : std::min(years, drift::bands[i + 1].from_year);
        const double fitted = sex == Sex::boy ? drift::bands[i].boys : drift::bands[i].girls;
        const double sigma = fitted * (from < drift::fitted_from ? 1.0 : spread_factor(sex));
        variance += sigma * sigma * (to - from);
    }
    return variance;
}

double maturing_variance(Sex sex) {
    return spread_factor(sex) * spread_factor(sex);
}

} // namespace

double maturing_curve(Sex sex, Days age) {
    const double boys_years = age.in_years() + (sex == Sex::girl ? drift::girls_ahead_years : 0.0);
    double area = 0.0;
    for (std::size_t i = 0; i + 1 < drift::maturing_rate.size(); ++i) {
        const double from = drift::maturing_starts + static_cast<double>(i);
        const double part = std::clamp(boys_years - from, 0.0, 1.0);
        area += part * (drift::maturing_rate[i] +
                        0.5 * part * (drift::maturing_rate[i + 1] - drift::maturing_rate[i]));
    }
    return area;
}

double drift_variance(Sex sex, Days from, Days to) {
    return drift_since_start(sex, to.in_years()) - drift_since_start(sex, from.in_years());
}

LegGrowth LegGrowth::before_readings(Sex sex, Days age, ScoreEstimate legs) {
    LegGrowth growth;
    growth.sex_ = sex;
    growth.age_ = age;
    growth.u_ = legs.mean;
    growth.var_u_ = legs.variance;
    growth.var_tau_ = maturing_variance(sex);
    return growth;
}

LegGrowth LegGrowth::from_first_reading(Sex sex, Days age, ScoreEstimate score) {
    // u = z - tau G + error, with tau as before: the limit of a prior on u that gets ever wider.
    const double bend = maturing_curve(sex, age);
    LegGrowth growth;
    growth.sex_ = sex;
    growth.age_ = age;
    growth.var_tau_ = maturing_variance(sex);
    growth.u_ = score.mean;
    growth.var_u_ = score.variance + bend * bend * growth.var_tau_;
    growth.cov_ = -bend * growth.var_tau_;
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
