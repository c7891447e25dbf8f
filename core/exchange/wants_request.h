// The wants of a request: from JSON to the engine's own types.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/fit/choice/wants.h"

namespace saddlerule {

/// Problems: the codes request_*, each with the path of its field.
Result<Wants> wants_from_request(const JsonValue& value, const std::string& path);

} // namespace saddlerule
