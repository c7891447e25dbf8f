// FitForecast: one rider's growth and stages made ready, so that the dates of any number of bikes are cheap.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/fit/growth/inseam_forecast.h"
#include "core/fit/growth/rider_growth.h"
#include "core/fit/rider/rider.h"
#include "core/fit/verdict/saddle_window.h"

#include <cstddef>
#include <vector>

namespace saddlerule {

/// A stage of the rider and the tabulated days on which it holds. The day of a change belongs to both stages.
struct StageOfForecast {
    Stage stage;
    WindowOffsets offsets;
    std::size_t first_day = 0;
    std::size_t last_day = 0;
};

/// No rider has more stages ahead: side wheels, starting, riding.
inline constexpr std::size_t most_stages = 3;
/// Every month of the usual horizon, and each day on which a stage ends and the next begins.
inline constexpr std::size_t most_moments = horizon_months + 1 + 2 * (most_stages - 1);

/// Built once per rider; read by life_of_fit and raise_list.
class FitForecast {
public:
    /// The rider's stages move on as stage_timeline says.
    /// `horizon`: months, longest_horizon_months at most. Dates and raises are for the usual one.
    FitForecast(const RiderGrowth& growth, const Rider& rider, int horizon = horizon_months);

    CalendarDate asked_on() const { return asked_on_; }
    const std::vector<StageOfForecast>& stages() const { return stages_; }
    /// The same stages by name, with the day each begins.
    const std::vector<StageFrom>& timeline() const { return timeline_; }
    /// Months from today of every tabulated day.
    const std::vector<double>& months() const { return inseams_.months(); }
    /// Inseams as a bike's measured height sees them: the bike's own error is in their spread.
    const ScoreTable& inseams() const { return inseams_.table(); }

    Length inseam_today() const { return inseam_today_; }
    /// Of every tabulated day.
    const std::vector<Length>& median_inseams() const { return median_inseams_; }

private:
    CalendarDate asked_on_;
    std::vector<StageFrom> timeline_;
    InseamForecast inseams_;
    std::vector<StageOfForecast> stages_;
    Length inseam_today_;
    std::vector<Length> median_inseams_;
};

} // namespace saddlerule
