// Pauses: a bike that fits today may be too tall while its rider learns to ride alone, and fit again later.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/fit/lasting/fit_course.h"
#include "core/fit/lasting/life_of_fit.h"

#include <vector>

namespace saddlerule {

/// Times after the bike first fits, and before it is outgrown, in which the chance that it fits is below one half.
/// `chances`: of fitting, at each moment of the course. A pause that lasts to the horizon ends there.
std::vector<PauseInFit> pauses_in_fit(const Course& course, const Moments& chances, CalendarDate today);

} // namespace saddlerule
