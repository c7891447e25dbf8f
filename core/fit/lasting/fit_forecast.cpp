#include "core/fit/lasting/fit_forecast.h"

#include "core/fit/verdict/fit_verdict.h"

#include <algorithm>

namespace saddlerule {
namespace {

std::vector<CalendarDate> days_of_change(const std::vector<StageFrom>& timeline) {
    std::vector<CalendarDate> days;
    for (std::size_t i = 1; i < timeline.size(); ++i)
        days.push_back(timeline[i].from);
    return days;
}

/// The inseam whose score is zero on a tabulated day.
Length median_on(const ScoreTable& table, std::size_t day) {
    const InseamGrid& grid = table.grid();
    std::size_t low = 0;
    std::size_t high = grid.count - 1;
    while (high - low > 1) {
        const std::size_t middle = (low + high) / 2;
        (table.row_of(grid.at(middle)).on(day) <= 0.0 ? low : high) = middle;
    }
    const double below = table.row_of(grid.at(low)).on(day);
    const double rise = table.row_of(grid.at(high)).on(day) - below;
    const double fraction = rise > 0.0 ? std::clamp(-below / rise, 0.0, 1.0) : 0.0;
    return grid.at(low) + grid.step * fraction;
}

} // namespace

FitForecast::FitForecast(const RiderGrowth& growth, const Rider& rider, int horizon)
    : asked_on_(growth.asked_on()), timeline_(stage_timeline(rider, asked_on_)),
      inseams_(growth, bike_measurement_sd, days_of_change(timeline_), horizon),
      inseam_today_(growth.today().mean) {
    const std::size_t last_day = months().size() - 1;
    for (const auto& [from, stage] : timeline_) {
        const double month = (from - asked_on_).in_months();
        if (month >= months().back() && !stages_.empty())
            break;
        const auto first = std::lower_bound(months().begin(), months().end(), month);
        const auto first_day = static_cast<std::size_t>(first - months().begin());
        if (!stages_.empty())
            stages_.back().last_day = first_day;
        stages_.push_back({.stage = stage,
                           .offsets = window_offsets(stage, rider.confidence),
                           .first_day = first_day,
                           .last_day = last_day});
    }
    for (std::size_t day = 0; day <= last_day; ++day)
        median_inseams_.push_back(median_on(inseams(), day));
}

} // namespace saddlerule
