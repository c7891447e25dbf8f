// Every figure that the first hill is reckoned with, each with its source.
#pragma once

#include "core/base/quantities/stated_constant.h"

#include <vector>

namespace saddlerule {

std::vector<StatedConstant> hill_constants();

} // namespace saddlerule
