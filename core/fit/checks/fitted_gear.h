// Fitted gear: the one gear that a list's chainring and sprocket make.
#pragma once

#include "core/fit/bike/bike.h"
#include "core/fit/checks/measure.h"
#include "core/fit/gears/gearing.h"

#include <optional>

namespace saddlerule::each_check {

/// What is not there of wheel, chainring and sprocket; a sprocket without teeth is not there either.
MeasureSet missing_for_gear(const Bike& bike);

/// Nothing while any of them is missing.
std::optional<Gearing> fitted_gear(const Bike& bike);

} // namespace saddlerule::each_check
