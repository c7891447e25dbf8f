// Raise list: the days on which to raise a bike's saddle as the rider grows, ready for a diary.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/fit/lasting/fit_forecast.h"
#include "core/fit/verdict/fit_verdict.h"

#include <vector>

namespace saddlerule {

struct SaddleRaise {
    CalendarDate on;
    Length saddle; ///< above the floor
};

/// From the setting of today (or the bike's lowest where it is still too tall) in steps of 10 mm until the
/// top: each on the day the median inseam plus the stage's target asks for it. When a stage moves on, one
/// entry says the whole change, which is downwards when side wheels come off. Empty where an end of the span
/// is unknown.
std::vector<SaddleRaise> raise_list(const FitForecast& forecast, const SaddleSpan& span);

} // namespace saddlerule
