// Every figure that the leg linkage is built from, each with its source.
#pragma once

#include "core/base/quantities/stated_constant.h"

#include <vector>

namespace saddlerule {

std::vector<StatedConstant> leg_constants();

} // namespace saddlerule
