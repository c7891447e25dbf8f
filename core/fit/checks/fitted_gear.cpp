#include "core/fit/checks/fitted_gear.h"

namespace saddlerule::each_check {

MeasureSet missing_for_gear(const Bike& bike) {
    MeasureSet missing;
    if (!bike.wheel)
        missing.add(Measure::wheel);
    if (bike.chainring.value_or(0) < 1)
        missing.add(Measure::chainring);
    if (bike.sprocket.value_or(0) < 1)
        missing.add(Measure::sprocket);
    return missing;
}

std::optional<Gearing> fitted_gear(const Bike& bike) {
    if (!missing_for_gear(bike).empty())
        return std::nullopt;
    return gearing(*bike.chainring, *bike.sprocket, *bike.wheel);
}

} // namespace saddlerule::each_check
