// Life of fit: from when and until when one bike fits one rider, with its doubt, over the next eight years.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/fit/lasting/fit_forecast.h"
#include "core/fit/verdict/fit_verdict.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace saddlerule {

/// The days by which something has happened with a chance of 10, 50 and 90 %; today where it may have
/// happened already. Absent: beyond the horizon. p10 <= p50 <= p90, and an absent one is later than any day.
struct DateQuantiles {
    std::optional<CalendarDate> p10;
    std::optional<CalendarDate> p50;
    std::optional<CalendarDate> p90;
};

/// Months during which the bike fits, out of the next 96. The quantiles take a child to keep its place among children like
/// it. Simulated children, who change places, differ by about a month; where growth is coming to its end and a millimetre
/// takes months, by up to 1.6 months in the mean and by a year in p90.
struct MonthsOfFit {
    double mean = 0.0; ///< the integral over time of the chance that it fits
    double p10 = 0.0;
    double p50 = 0.0;
    double p90 = 0.0;
};

/// What takes the bike away from the rider for a while.
enum class PauseCause {
    too_tall,
    outgrown, ///< only of a short span under a wide doubt: what is outgrown for good is no pause
};

/// The bike fits on the day before `from` and not on `from`; on `to` it fits again or is outgrown for good.
struct PauseInFit {
    CalendarDate from;
    CalendarDate to;
    PauseCause cause;
};

struct LifeOfFit {
    /// When the lowest saddle comes within reach. Absent: it already is, more likely than not, or the lowest
    /// is unknown.
    std::optional<DateQuantiles> fits_from;
    /// When the highest saddle is left behind for good. Absent: the highest is unknown.
    std::optional<DateQuantiles> outgrown;
    /// Absent: one end of the span is unknown. Months in a pause do not count.
    std::optional<MonthsOfFit> months_of_fit;
    /// In order. Empty: none, or one end of the span is unknown.
    std::vector<PauseInFit> pauses;
};

/// Both ends of the span carry the error of a bike's measurement. A bike is outgrown the first time the
/// window's low edge has passed its highest saddle, growth and a change of stage alike, and stays so.
/// No allocation but for pauses; the cost is about the same for every bike.
LifeOfFit life_of_fit(const FitForecast& forecast, const SaddleSpan& span);

/// The chance that the bike fits, today and after 1 to 96 months. Nothing where an end of the span is
/// unknown.
using FitCurve = std::array<double, horizon_months + 1>;
std::optional<FitCurve> fit_curve(const FitForecast& forecast, const SaddleSpan& span);

/// Months from today, the last one excluded.
struct MonthStretch {
    int from = 0;
    int to = 0;
};

/// When it fits, more likely than not; as often as that begins anew.
std::vector<MonthStretch> likely_months(const FitCurve& curve);

/// What one month asks of a child, as normal scores: children between `reach` and `leave` fit.
struct FitLimits {
    double reach = 0.0; ///< children above it get over the lowest saddle
    double leave = 0.0; ///< children above it have left the highest saddle behind for good

    double chance() const;
};

/// The limits of the months from today on, for as many as there is room, of a forecast whose horizon is long enough. Their
/// chances are those of fit_curve.
void fit_limits(const FitForecast& forecast, Length lowest, Length highest, std::span<FitLimits> months);

} // namespace saddlerule
