// How many bikes each filter would leave, as JSON.
#pragma once

#include "core/exchange/json_writer.h"
#include "core/fit/choice/filter_counts.h"

namespace saddlerule {

/// `filter_counts`, by the fields of `wants`.
void filter_counts_field(JsonWriter& json, const FilterCounts& counts);

} // namespace saddlerule
