// Gears: how far a turn of the crank goes, and how fast that is. Shown for what it is; no rule says how long
// a gear should be.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"
#include "core/fit/checks/fitted_gear.h"
#include "core/fit/gears/gearing.h"

namespace saddlerule {

std::optional<Finding> each_check::gears(const CheckCase& checked) {
    if (checked.bike.kind == BikeKind::balance)
        return std::nullopt;
    const auto gear = fitted_gear(checked.bike);
    if (!gear)
        return to_be_measured(missing_for_gear(checked.bike));

    Finding finding;
    finding.state = CheckState::ok;
    finding.reason =
        checked.bike.gears.value_or(1) > 1 ? CheckReason::gears_one_of_several : CheckReason::gears_single;
    finding.figure = Figure::metres(gear->development);
    finding.further = {{{"gear_inches", Figure::gear_inches(gear->gear_inches)},
                        {"easy_speed", speed_at(*gear, limits::easy_cadence.value.value())},
                        {"brisk_speed", speed_at(*gear, limits::brisk_cadence.value.value())}}};
    return finding;
}

} // namespace saddlerule
