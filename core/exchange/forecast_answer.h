// The answer to `forecast`: the inseam in shoes month by month, the stages with their saddle windows, and the chance that a bike
// fits.
#pragma once

#include "core/fit/bike/bike.h"
#include "core/fit/growth/rider_growth.h"
#include "core/fit/rider/rider.h"

#include <string>
#include <string_view>

namespace saddlerule {

/// `months` entries, the first one month after today. Of a bike (null: of none) each has the chance that it fits then, null where
/// an end of its span is unknown.
std::string forecast_answer(const Rider& rider, CalendarDate today, int months, const Bike* bike);

/// `measured` and so on.
std::string_view name_of(InseamBasis basis);

} // namespace saddlerule
