// Lever reach: whether a child's fingers get round the brake lever.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"

#include <algorithm>

namespace saddlerule {
namespace {

bool hand_brake(Brake brake) {
    return brake != Brake::coaster;
}

} // namespace

std::optional<Finding> each_check::lever_reach(const CheckCase& checked) {
    const auto& brakes = checked.bike.brakes;
    if (brakes && std::none_of(brakes->begin(), brakes->end(), hand_brake))
        return std::nullopt;
    const auto reach = taken(checked.bike.lever_reach);
    if (!reach) {
        // Most balance bikes have no lever, and one that has is rarely relied on: nothing to send anybody
        // for.
        if (!brakes && checked.bike.kind == BikeKind::balance)
            return std::nullopt;
        MeasureSet missing{Measure::lever_reach};
        if (!brakes)
            missing.add(Measure::brakes);
        return to_be_measured(missing);
    }

    Finding finding;
    finding.figure = *reach;
    finding.limit.at_most = limits::lever_reach.value;
    if (above(*reach, limits::lever_reach_us.value)) {
        finding.state = CheckState::stop;
        finding.reason = CheckReason::lever_beyond_every_rule;
    } else if (above(*reach, limits::lever_reach.value)) {
        finding.state = CheckState::look;
        finding.reason = CheckReason::lever_far;
    } else {
        finding.state = CheckState::ok;
        finding.reason = CheckReason::lever_near;
    }
    return finding;
}

} // namespace saddlerule
