// The answer to `forecast`: the inseam in shoes month by month, and the stages with their saddle windows.
#pragma once

#include "core/fit/growth/rider_growth.h"
#include "core/fit/rider/rider.h"

#include <string>
#include <string_view>

namespace saddlerule {

/// `months` entries, the first one month after today.
std::string forecast_answer(const Rider& rider, CalendarDate today, int months);

/// `measured` and so on.
std::string_view name_of(InseamBasis basis);

} // namespace saddlerule
