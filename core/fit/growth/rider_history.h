// Rider history: which of a rider's dates and readings can be believed, for everything that computes with
// growth.
#pragma once

#include "core/base/outcomes/problem.h"
#include "core/base/quantities/calendar_date.h"
#include "core/fit/rider/rider.h"

#include <optional>
#include <vector>

namespace saddlerule {

/// The readings and the date of birth as the growth model takes them.
struct RiderHistory {
    std::vector<DayReading> days; ///< oldest first, none after today, none before `born`
    std::optional<CalendarDate> born;
    std::vector<Problem> notes; ///< one for every date that was questioned
};

/// A reading dated after today counts as made today. A birth after today counts as unknown. A reading dated
/// before the birth is left out, and where that leaves none, the rider counts as not measured. A newest reading of more than
/// half a year ago is noted.
/// Ages under 1 and over 18 are noted and change nothing here: the references take them as 1 and 18.
RiderHistory rider_history(const Rider& rider, CalendarDate today);

/// Nothing usable is known from which an inseam follows: no reading, no stature, no birth up to today.
bool says_nothing_of_size(const Rider& rider, CalendarDate today);

} // namespace saddlerule
