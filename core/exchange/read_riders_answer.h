// The answer to `read_riders`: a table of riders as the requests about them want it.
#pragma once

#include "core/exchange/request_fields.h"

#include <string>

namespace saddlerule {

/// Reads `text`, `units` and `today`, and writes each row with its cells, its rider and its problems.
std::string read_riders(RequestFields& fields);

} // namespace saddlerule
