// The answer to `forecast`: the inseam in shoes month by month, the stages with their saddle windows, and the chance that a bike
// fits.
#pragma once

#include "core/fit/bike/bike.h"
#include "core/fit/growth/rider_growth.h"
#include "core/fit/rider/rider.h"

#include <string>
#include <string_view>

namespace saddlerule {

struct ForecastQuestion {
    int months = 1;             ///< how many, the first one month after today
    const Bike* bike = nullptr; ///< where there is one, each month has the chance that it fits then
    bool centiles = false;      ///< with the child's readings among those of other children
};

/// The chance that a bike fits is null where an end of its span is unknown; the centiles are where the age is.
std::string forecast_answer(const Rider& rider, CalendarDate today, const ForecastQuestion& question);

/// `measured` and so on.
std::string_view name_of(InseamBasis basis);

} // namespace saddlerule
