// The answer to `suits`: for each bike and each wheel size the inside legs that it fits.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/fit/bike/bike.h"

#include <span>
#include <string>

namespace saddlerule {

/// Reads `rows`, `only`, `reading_sd_mm` and `form`, turns the list round and writes the answer; as `csv` the whole of it as one `text`.
std::string suits(RequestFields& fields, std::span<const Bike> bikes);

} // namespace saddlerule
