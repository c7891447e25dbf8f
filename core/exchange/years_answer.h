// The request `years_ahead`: a family's plan of bikes.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/lists/catalogue/catalogue.h"

#include <functional>
#include <span>
#include <string>
#include <string_view>

namespace saddlerule {

/// Whether a plan may go on, given the milliseconds that the request allows: asked now and then. Whoever has a clock
/// answers; without one a plan goes on until it is done.
using MayGoOn = std::function<bool(double limit_ms)>;

/// Reads the request and answers it. `list` may be null, `bikes` are its bikes; `request_text` is what `fields` was read from.
std::string years_answer(RequestFields& fields, std::string_view request_text, const Catalogue* list,
                         std::span<const Bike> bikes, const MayGoOn& may_go_on);

} // namespace saddlerule
