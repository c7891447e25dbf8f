// What to look for: the span a bike should have to serve a child, or several, for some months of a plan.
#pragma once

#include "core/base/quantities/length.h"
#include "core/planning/years/future_rider.h"

#include <vector>

namespace saddlerule {

struct LookFor {
    Length lowest_at_most;
    Length highest_at_least;
    int by = 0;    ///< the month in which it is needed
    int until = 0; ///< the month before which it serves
    bool pedals = true;
};

/// How far apart the ends of a bike's span are at most, where one is to be looked for (common practice, from memory: a seat
/// post gives 150 to 200 mm). What needs more needs another bike.
constexpr Length usual_span = Length::millimetres(180.0);

/// Bikes one after another that would serve from a month to before another, each as long as a usual span lets it. Any bike
/// with such a span fits in all its months with at least that chance.
std::vector<LookFor> look_for(const FutureRider& rider, int from, int to, double least_chance);

} // namespace saddlerule
