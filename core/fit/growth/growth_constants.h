// Every figure that the growth model and the questions about a rider's figures judge with, each with its source.
#pragma once

#include "core/base/quantities/stated_constant.h"

#include <vector>

namespace saddlerule {

/// Limits, assumptions, the drift filter, and the references column by column at 2, 3, ... 18 years.
std::vector<StatedConstant> growth_constants();

} // namespace saddlerule
