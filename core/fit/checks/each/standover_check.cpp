// Standover: room between the rider and the top tube, feet on the floor.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"

namespace saddlerule {

std::optional<Finding> each_check::standover(const CheckCase& checked) {
    const auto top_tube = taken(checked.bike.standover);
    if (!top_tube)
        return to_be_measured({Measure::standover});

    const Length room = checked.rider.inseam_in_shoes - *top_tube;
    const Length wanted =
        checked.rider.off_road ? limits::standover_room_off_road.value : limits::standover_room.value;
    Finding finding;
    finding.figure = room;
    finding.limit.at_least = wanted;
    finding.further = {{{"top_tube", *top_tube}}};
    finding.basis = inseam_basis(checked.rider);
    // A guess settles what holds for longer and shorter legs alike.
    const Length least_room = checked.rider.short_inseam_in_shoes() - *top_tube;
    const Length most_room = checked.rider.long_inseam_in_shoes() - *top_tube;
    if (above(Length{}, most_room)) {
        finding.state = CheckState::stop;
        finding.reason = CheckReason::standover_too_high;
        finding.further = {{{"over", -room}}};
    } else if (above(wanted, room) && !above(Length{}, room)) {
        finding.state = CheckState::look;
        finding.reason = CheckReason::standover_tight;
    } else if (above(wanted, least_room)) {
        finding.state = CheckState::look;
        finding.reason = CheckReason::standover_unsettled;
    } else {
        finding.state = CheckState::ok;
        finding.reason = CheckReason::standover_clear;
    }
    return finding;
}

} // namespace saddlerule
