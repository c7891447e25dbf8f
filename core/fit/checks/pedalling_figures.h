// Pedalling figures: what the checks that look at leg and crank have in common.
#pragma once

#include "core/fit/checks/check.h"
#include "core/fit/leg/leg_figures.h"

#include <optional>

namespace saddlerule::each_check {

/// The figures of saddle, crank and leg that are not there.
MeasureSet missing_for_leg(const CheckCase& checked);

/// They as the linkage takes them; only where none is missing.
LegFigures leg_figures_of(const CheckCase& checked);

/// A bike whose figures contradict each other is not judged: the unknown that says which to measure again.
Finding contradiction_finding(LegObstacle contradiction, const Bike& bike);

} // namespace saddlerule::each_check
