// The answer to `read_bike`: what a message says of one bike.
#pragma once

#include "core/exchange/request_fields.h"

#include <string>

namespace saddlerule {

/// Reads `text` and `units`, and writes what the message says as cells by their fields.
std::string read_bike(RequestFields& fields);

} // namespace saddlerule
