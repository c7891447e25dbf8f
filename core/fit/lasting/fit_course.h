// The course of one bike through a rider's years: what it takes to reach it and to have left it, day by day.
#pragma once

#include "core/base/statistics/quick_normal.h"
#include "core/fit/lasting/fit_forecast.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace saddlerule {

/// A figure for each moment of the course. Limits are scores: a child is a score here, the share of children like this
/// one whose legs stay shorter.
using Moments = std::array<double, most_moments>;

/// The tabulated days in order, the day of a change of stage once for each of the two stages.
struct Course {
    Moments months{};
    Moments reach{}; ///< children above it get over the lowest saddle
    Moments leave{}; ///< children above it have left the highest saddle behind for good
    std::size_t count = 0;

    /// Moments at which a stage begins; the last entry is `count`.
    std::array<std::size_t, most_stages + 1> stage_starts{};
    std::size_t stage_count = 0;

    Course(const FitForecast& forecast, Length lowest, Length highest) {
        for (const StageOfForecast& stage : forecast.stages()) {
            const ScoreRow to_reach = forecast.inseams().row_of(lowest - stage.offsets.range.high());
            const ScoreRow to_leave = forecast.inseams().row_of(highest - stage.offsets.range.low());
            const std::size_t days = std::min(stage.last_day + 1 - stage.first_day, most_moments - count);
            for (std::size_t i = 0; i < days; ++i) {
                const std::size_t day = stage.first_day + i;
                months[count + i] = forecast.months()[day];
                reach[count + i] = to_reach.on(day);
                leave[count + i] = to_leave.on(day);
            }
            stage_starts[stage_count++] = count;
            count += days;
        }
        stage_starts[stage_count] = count;
        for (std::size_t i = 1; i < count; ++i)
            leave[i] = leave[i] < leave[i - 1] ? leave[i] : leave[i - 1];
    }
};

/// When a child of that score passes limits that are above it at the moment before `i` and no longer at `i`.
inline double passing_time(const Course& course, const Moments& limits, std::size_t i, double score) {
    const double fraction = (limits[i - 1] - score) / (limits[i - 1] - limits[i]);
    return course.months[i - 1] + fraction * (course.months[i] - course.months[i - 1]);
}

/// Beyond this score the normal cdf is 0 or 1 to seven decimals.
inline constexpr double practically_certain = 5.3;

inline double chance_between(double reach, double leave, const QuickNormal& normal) {
    if (reach >= practically_certain || leave <= -practically_certain)
        return 0.0;
    if (reach <= -practically_certain && leave >= practically_certain)
        return 1.0;
    const double chance = normal.cdf(leave) - normal.cdf(reach);
    return chance > 0.0 ? chance : 0.0;
}

inline double chance_of_fitting(const Course& course, std::size_t i, const QuickNormal& normal) {
    return chance_between(course.reach[i], course.leave[i], normal);
}

/// The chance that the bike fits, at each moment.
inline Moments chances_of_fitting(const Course& course) {
    const QuickNormal& normal = QuickNormal::table();
    Moments chances{};
    for (std::size_t i = 0; i < course.count; ++i)
        chances[i] = chance_of_fitting(course, i, normal);
    return chances;
}

} // namespace saddlerule
