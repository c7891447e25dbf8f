#include "core/fit/gears/gearing.h"

#include <numbers>

namespace saddlerule {

Length rollout(const Wheel& wheel) {
    return 2.0 * std::numbers::pi * wheel.rolling_radius();
}

std::optional<Gearing> gearing(int chainring_teeth, int sprocket_teeth, const Wheel& wheel) {
    if (chainring_teeth < 1 || sprocket_teeth < 1)
        return std::nullopt;
    const double ratio = static_cast<double>(chainring_teeth) / sprocket_teeth;
    return Gearing{.ratio = ratio,
                   .development = ratio * rollout(wheel),
                   .gear_inches = 2.0 * wheel.rolling_radius().in_inches() * ratio};
}

Speed speed_at(const Gearing& gear, double turns_per_minute) {
    return Speed::metres_per_second(gear.development.in_metres() * turns_per_minute / 60.0);
}

} // namespace saddlerule
