// The answers to `read_riders` and `write_riders`: a table of riders as the requests about them want it, and back.
#pragma once

#include "core/exchange/request_fields.h"

#include <string>

namespace saddlerule {

/// Reads `text`, `units` and `today`, and writes each row with its cells, its rider and its problems.
std::string read_riders(RequestFields& fields);

/// Reads `riders` (each with its cells by name) and writes them as one table, `text`, which `read_riders` reads as the same.
std::string write_riders(RequestFields& fields);

} // namespace saddlerule
