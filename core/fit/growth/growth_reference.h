// Growth reference: how long legs are, how tall and how heavy children are, for their age and sex.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/fit/growth/lms.h"
#include "core/fit/rider/rider.h"

namespace saddlerule {

/// Ages between the whole years of a table are on a natural cubic spline. Under 2 years medians go on as a
/// straight line; ages under 1 count as 1 and ages over 18 as 18.

/// Leg length: stature less sitting height, Fredriks et al. 2005, the scale on which legs are followed. Below 3 years
/// the median grows as British children do. Where children of a country are on this scale: population.h.
Lms<Length> leg_length_reference(Sex sex, Days age);

/// Stature, CDC 2000.
Lms<Length> stature_reference(Sex sex, Days age);

/// Weight, CDC 2000.
Lms<Mass> weight_reference(Sex sex, Days age);

} // namespace saddlerule
