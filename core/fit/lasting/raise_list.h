// Raise list: when to set a bike's saddle anew as the rider grows and rides differently, and to which height.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/fit/lasting/fit_forecast.h"
#include "core/fit/verdict/fit_verdict.h"

#include <optional>
#include <vector>

namespace saddlerule {

struct SaddleRaise {
    CalendarDate on;
    Length saddle; ///< above the floor
    /// The condition: only once the rider has come to this stage.
    std::optional<Stage> stage = std::nullopt;
};

/// Closer together, a family would be at it with a spanner for nothing that can be seen (design choice).
constexpr Days least_time_between_raises = Days(42.0);

/// From the setting of today upwards in steps of 10 mm until the top, each on the day on which the median inseam plus the
/// stage's target asks for it, and never sooner than six weeks after the step before it or after today. A change of
/// stage is a step of its own, up or down to the new target, under its condition; it takes the place of a step less than
/// six weeks before it. After a pause the first step says where the saddle goes then.
///
/// Nothing before the bike first fits, in a pause, and once it is outgrown: every height is in the bike's span and in
/// the window of the median child on that day. Empty where an end of the span is unknown.
std::vector<SaddleRaise> raise_list(const FitForecast& forecast, const SaddleSpan& span);

} // namespace saddlerule
