// Every limit by which a slip in a list is found, each with its source.
#pragma once

#include "core/base/quantities/stated_constant.h"

#include <vector>

namespace saddlerule {

std::vector<StatedConstant> slip_constants();

} // namespace saddlerule
