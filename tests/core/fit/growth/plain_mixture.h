// PlainMixture: the growth model written down a second time, without tables, pruning or interpolation, for
// the tests to hold the engine against.
#pragma once

#include "core/base/statistics/normal_distribution.h"
#include "core/fit/growth/drift_filter.h"
#include "core/fit/growth/growth_reference.h"
#include "core/fit/growth/population.h"
#include "core/fit/rider/rider.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace saddlerule::testing {

/// One reading made today; sex, age or both may be unknown. Steps of half a year between the ages that are
/// tried will do for legs well inside the range of 1.25 to 16 years, finer ones near its ends.
class PlainMixture {
public:
    PlainMixture(double inseam_mm, std::optional<Sex> sex, std::optional<double> age, double age_step = 0.1) {
        double total = 0.0;
        for (const Sex possible : {Sex::girl, Sex::boy}) {
            if (sex && *sex != possible)
                continue;
            const double from = age ? *age : 1.25;
            const double to = age ? *age : 16.0;
            const int steps = static_cast<int>(std::lround((to - from) / age_step));
            for (int i = 0; i <= steps; ++i) {
                const double at = steps > 0 ? from + (to - from) * i / steps : from;
                children_.push_back(child(possible, at, inseam_mm - sole_mm));
                if (steps > 0 && (i == 0 || i == steps))
                    children_.back().weight *= 0.5; // the trapezoidal rule
                total += children_.back().weight;
            }
        }
        for (Child& one : children_)
            one.weight /= total;
    }

    /// The chance that the inseam is below a length some months on, legs that do not shrink looked at every
    /// month. `error_mm`: of the length itself.
    double probability_below(double inseam_mm, double months, double error_mm = 0.0) const {
        double lowest = 1.0;
        for (double month = months; month >= 0.0; month -= 1.0)
            lowest = std::min(lowest, without_memory(inseam_mm, month, error_mm));
        return std::min(lowest, without_memory(inseam_mm, 0.0, error_mm));
    }

    double quantile(double p, double months) const {
        double low = 50.0;
        double high = 1600.0;
        while (high - low > 1e-4) {
            const double middle = 0.5 * (low + high);
            (probability_below(middle, months) < p ? low : high) = middle;
        }
        return 0.5 * (low + high);
    }

    static constexpr double sole_mm = 20.0;
    static constexpr double reading_sd_mm = 8.0;

private:
    struct Child {
        Sex sex;
        double age;
        double weight;
        LegGrowth legs;
    };

    static Child child(Sex sex, double age, double leg_mm) {
        const Days years = Days::years(age);
        const Lms<Length> reference = leg_length_reference(sex, years);
        const double score = reference.score(Length::millimetres(leg_mm));
        const double h = 0.01;
        const double slope = (reference.score(Length::millimetres(leg_mm + h)) - score) / h;
        const ScoreEstimate reading{.mean = score, .variance = std::pow(reading_sd_mm * slope, 2)};
        LegGrowth legs =
            LegGrowth::before_readings(sex, years, legs_before_reading(Population::any, sex, years));
        const double weight = std::exp(legs.log_likelihood(years, reading)) * slope;
        legs.update(years, reading);
        return {sex, age, weight, legs};
    }

    double without_memory(double inseam_mm, double months, double error_mm) const {
        double sum = 0.0;
        for (const Child& one : children_) {
            if (one.weight < 1e-9)
                continue;
            const Days age = Days::years(one.age) + Days::months(months);
            const ScoreEstimate legs = one.legs.at(age);
            const Lms<Length> reference = leg_length_reference(one.sex, age);
            const double score = reference.score(Length::millimetres(inseam_mm - sole_mm));
            const double median = reference.value(legs.mean).in_millimetres();
            const double slope = (reference.score(Length::millimetres(median + 0.01)) - legs.mean) / 0.01;
            const double sd = std::sqrt(legs.variance + std::pow(error_mm * slope, 2));
            sum += one.weight * normal::cdf((score - legs.mean) / sd);
        }
        return sum;
    }

    std::vector<Child> children_;
};

} // namespace saddlerule::testing
