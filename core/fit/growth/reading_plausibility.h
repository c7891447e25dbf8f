// Reading plausibility: the questions a rider's figures raise. Never a refusal: whoever measured knows
// better.
#pragma once

#include "core/base/outcomes/problem.h"
#include "core/base/quantities/calendar_date.h"
#include "core/fit/rider/rider.h"

#include <vector>

namespace saddlerule {

/// Everything about the rider worth asking again, each with the place of the figure below `rider`:
///  * dates that cannot be, and ages at which the growth figures are rough (see rider_history.h);
///  * a stature that hardly any child of that age has, or, without an age, no child who rides;
///  * readings outside the central 99 % of the rider's population for the stature and age, for the age, or for the stature,
///    whichever is known, or outside 320 (gliding: 260) to 1000 mm where neither is. The likely slip is the word `slip`; `corrected` is what the reading would be without it, where that is a figure;
///  * readings of one day too far apart, and readings that shrink, or grow faster than legs do, beyond their
///  error.
std::vector<Problem> rider_notes(const Rider& rider, CalendarDate today);

} // namespace saddlerule
