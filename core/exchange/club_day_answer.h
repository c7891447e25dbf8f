// The answer to `club_day`: pairs, who is left and why, what is spare, and what to get.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/fit/bike/bike.h"

#include <span>
#include <string>

namespace saddlerule {

/// Reads the request, plans the morning and writes the answer.
std::string club_day(RequestFields& fields, std::span<const Bike> bikes);

} // namespace saddlerule
