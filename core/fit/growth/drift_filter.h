// Drift filter: what dated readings say about one child's leg length, as two numbers with their covariance.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/fit/rider/rider.h"

namespace saddlerule {

/// Mean and variance of a normal distribution, in standard deviations of the leg length reference.
struct ScoreEstimate {
    double mean = 0.0;
    double variance = 0.0;
};

/// How early or late maturing bends a child's score at an age.
double maturing_curve(Sex sex, Days age);

/// Variance that the drift of leg length for age adds between two ages.
double drift_variance(Sex sex, Days from, Days to);

/// A child's leg length for age, z(a) = u(a) + tau G(a): u drifts, tau (early or late maturing) is constant.
/// A two-state linear Gaussian filter in closed form.
class LegGrowth {
public:
    LegGrowth() = default;

    /// At an age, before any reading: u is what is known of the population's legs, tau ~ N(0, spread of maturing),
    /// independent.
    static LegGrowth before_readings(Sex sex, Days age, ScoreEstimate legs);
    /// No prior on u at all: the first reading, at this age, says where it is.
    static LegGrowth from_first_reading(Sex sex, Days age, ScoreEstimate score);

    /// Takes in a reading at an age not before the last one.
    void update(Days age, ScoreEstimate score);
    /// The score foreseen at an age not before the last reading.
    ScoreEstimate at(Days age) const;
    /// Log density of a score at an age, before it is taken in.
    double log_likelihood(Days age, ScoreEstimate score) const;

private:
    void drift_to(Days age);

    Sex sex_ = Sex::girl;
    Days age_;
    double u_ = 0.0;
    double tau_ = 0.0;
    double var_u_ = 0.0;
    double var_tau_ = 0.0;
    double cov_ = 0.0;
};

} // namespace saddlerule
