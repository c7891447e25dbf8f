// Population: how long the legs of one country's children are, where nobody measured them.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/fit/growth/drift_filter.h"
#include "core/fit/rider/rider.h"

namespace saddlerule {

/// How far a child's crotch is from where stature less sitting height puts it: nobody has measured it on children. On
/// adults of 17 to 20 it is 12 to 19 mm higher (ANSUR II), on young children the gluteal furrow is 5 to 25 mm
/// lower; so it is open between -20 and +15 mm. That is taken as 0 with an sd of 6 mm, so that the ends are about three of it away. It counts
/// where no reading was made; readings carry it in themselves.
inline constexpr Length crotch_doubt = Length::millimetres(6.0);

/// Leg length of a population's children of an age, as scores of leg_length_reference: US survey of 1977, British
/// reference of 1990, Dutch survey of 1997. `any` has mean and variance of an even mixture of the three. Ages under 2
/// take the score at 2, ages over 18 that at 18.
ScoreEstimate legs_of_population(Population population, Sex sex, Days age);

/// The same as a tape would find it: with the doubt about the crotch. This is what is known of a child before any
/// reading.
ScoreEstimate legs_before_reading(Population population, Sex sex, Days age);

/// Leg length over stature among a population's children of one age. Great Britain: British medians of the leg by
/// the CDC's of stature, and the US spread. `any`: mean and variance of an even mixture, and the outermost
/// percentiles.
struct LegShare {
    double mean = 0.0;
    double sd = 0.0;
    double first_percentile = 0.0;
    double last_percentile = 0.0; ///< the 99th
};

LegShare leg_share(Population population, Sex sex, Days age);

} // namespace saddlerule
