// Findings of the checks beyond the saddle as JSON.
#pragma once

#include "core/exchange/json_writer.h"
#include "core/fit/checks/check.h"

namespace saddlerule {

/// Figures carry their unit in the field's name: `value_mm`, `limit_mm`; a limit with two ends is
/// `limit_low_...` and `limit_high_...`. `figures` are the further parts of the sentence, for those who word
/// the `code`.
void write(JsonWriter& json, const CheckResult& result);

} // namespace saddlerule
