// InseamForecast: the distribution of one rider's inseam in shoes on any day from today to eight years on.
#pragma once

#include "core/growth/rider_growth.h"
#include "core/quantities/calendar_date.h"
#include "core/quantities/length.h"

#include <vector>

namespace saddlerule {

/// How far ahead the engine looks. Beyond it every answer is that of the last day.
constexpr int horizon_months = 96;

/// The distribution of the inseam in shoes on one day, as normal scores on an even grid of inseams.
class InseamDistribution {
public:
    Length mean() const { return mean_; }
    Length sd() const { return sd_; }
    /// For 0 < p < 1.
    Length quantile(double p) const;
    double probability_below(Length inseam) const;

private:
    friend class InseamForecast;
    InseamDistribution(Length lowest, Length step, std::vector<double> scores);

    Length lowest_;
    Length step_;
    std::vector<double> scores_;
    Length mean_;
    Length sd_;
};

/// Tabulated once per rider. Legs never shrink: every quantile and every probability of having passed a
/// length is its own maximum since the newest reading.
class InseamForecast {
public:
    explicit InseamForecast(const RiderGrowth& growth);

    /// The distribution on a day; days before today count as today.
    InseamDistribution at(CalendarDate day) const;

private:
    friend class FitForecast;
};

} // namespace saddlerule
