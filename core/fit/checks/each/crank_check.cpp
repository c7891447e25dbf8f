// Crank: its length for this leg.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"
#include "core/fit/checks/pedalling_figures.h"

namespace saddlerule {

std::optional<Finding> each_check::crank(const CheckCase& checked) {
    if (checked.bike.kind == BikeKind::balance)
        return std::nullopt;
    const auto crank = taken(checked.bike.crank);
    if (!crank)
        return to_be_measured({Measure::crank});
    const auto bottom_bracket = taken(checked.bike.bottom_bracket_height);
    if (bottom_bracket && *crank >= *bottom_bracket)
        return contradiction_finding(LegObstacle::crank_reaches_floor, checked.bike);

    const CheckedRider& rider = checked.rider;
    const double share = *crank / rider.inseam_without_shoes;
    const double most_share = *crank / (rider.short_inseam_in_shoes() - rider.sole);
    const double least_share = *crank / (rider.long_inseam_in_shoes() - rider.sole);
    Finding finding;
    finding.basis = inseam_basis(rider);
    finding.figure = Figure::ratio(share);
    finding.limit = {.at_least = Figure::ratio(limits::crank_share_least.value),
                     .at_most = Figure::ratio(limits::crank_share_most.value)};
    finding.further = {{{"crank", *crank}}};
    finding.state = CheckState::look;
    if (share > limits::crank_share_most.value) {
        finding.reason = CheckReason::crank_long;
    } else if (share < limits::crank_share_least.value) {
        finding.reason = CheckReason::crank_short;
    } else if (most_share > limits::crank_share_most.value || least_share < limits::crank_share_least.value) {
        finding.reason = CheckReason::crank_unsettled;
    } else {
        finding.state = CheckState::ok;
        finding.reason = CheckReason::crank_usual;
    }
    return finding;
}

} // namespace saddlerule
