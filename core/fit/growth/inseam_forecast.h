// InseamForecast: the distribution of one rider's inseam in shoes on any day from today to eight years on, or ten.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/fit/growth/rider_growth.h"
#include "core/fit/growth/score_table.h"

#include <cstddef>
#include <vector>

namespace saddlerule {

/// How far ahead the engine looks. Later days are answered as the last one.
constexpr int horizon_months = 96;
/// How far ahead it can look where a plan asks for it.
constexpr int longest_horizon_months = 120;

/// The distribution of the inseam in shoes on one day.
class InseamDistribution {
public:
    /// `scores`: rising, one for each point of the grid.
    InseamDistribution(const InseamGrid& grid, std::vector<double> scores);

    Length mean() const { return mean_; }
    Length sd() const { return sd_; }
    /// For 0 < p < 1. What is rarer than one in a thousand million counts as that.
    Length quantile(double p) const;
    double probability_below(Length inseam) const;

private:
    InseamGrid grid_;
    std::vector<double> scores_;
    Length mean_;
    Length sd_;
};

/// Tabulated once per rider: every month from today on, and every 2 mm of inseam. Legs never shrink: each
/// quantile, and each chance of having passed a length, is its own maximum since the newest reading.
///
/// The published prior pulls an extreme reading a little towards the average child, so the first day of the
/// forecast may differ from RiderGrowth::today() by a few millimetres.
///
/// Inexactness, measured in the tests from 10 to 90 %: 0.3 mm where the age is known, 1 mm in eight years'
/// time where it is not, 0.004 in any probability.
class InseamForecast {
public:
    explicit InseamForecast(const RiderGrowth& growth);
    /// The same for a length compared with the inseam and measured with an error of its own, and with further
    /// days tabulated. Days that are not within the horizon are left out.
    InseamForecast(const RiderGrowth& growth, Length measuring_sd, const std::vector<CalendarDate>& also_on,
                   int horizon = horizon_months);

    /// The distribution on a day; days before today count as today.
    InseamDistribution at(CalendarDate day) const;

    /// The days that are tabulated, as months from today, rising from 0 to the horizon.
    const std::vector<double>& months() const { return months_; }
    const ScoreTable& table() const { return table_; }

private:
    CalendarDate asked_on_;
    std::vector<double> months_;
    ScoreTable table_;
};

} // namespace saddlerule
