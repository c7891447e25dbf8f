// Leg extension: how straight the knee gets with the pedal down, and how bent with the pedal up.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"
#include "core/fit/checks/pedalling_figures.h"
#include "core/fit/leg/leg_linkage.h"

#include <variant>

namespace saddlerule {
namespace {

/// The leg meets both ends of the turn.
Finding turn_finding(const LegLinkage& leg) {
    Finding finding;
    finding.figure = leg.least_knee_flexion();
    finding.limit = {.at_least = limits::knee_flexion_least.value,
                     .at_most = limits::knee_flexion_most.value};
    finding.further = {{{"most_bent", leg.greatest_knee_flexion()}}};
    finding.state = CheckState::ok;
    if (leg.least_knee_flexion() < limits::knee_flexion_least.value) {
        finding.state = CheckState::look;
        finding.reason = CheckReason::leg_nearly_straight;
    } else if (leg.least_knee_flexion() > limits::knee_flexion_most.value) {
        finding.reason = CheckReason::leg_bent; // the price of feet on the floor: nothing to look into
    } else {
        finding.reason = CheckReason::leg_as_adults;
    }
    return finding;
}

Finding unreached_finding(LegObstacle obstacle) {
    Finding finding;
    finding.state = CheckState::look;
    finding.reason = obstacle == LegObstacle::pedal_out_of_reach ? CheckReason::leg_out_of_reach
                                                                 : CheckReason::leg_cannot_fold;
    return finding;
}

} // namespace

std::optional<Finding> each_check::leg_extension(const CheckCase& checked) {
    if (checked.bike.kind == BikeKind::balance || setting_is_out_of_question(checked))
        return std::nullopt;
    const MeasureSet missing = missing_for_leg(checked);
    if (!missing.empty())
        return to_be_measured(missing);

    const LegFigures figures = leg_figures_of(checked);
    if (const auto contradiction = contradiction_in(figures))
        return contradiction_finding(*contradiction, checked.bike);
    const auto leg = LegLinkage::build(figures);
    const auto* linkage = std::get_if<LegLinkage>(&leg);
    Finding finding = linkage ? turn_finding(*linkage) : unreached_finding(*std::get_if<LegObstacle>(&leg));
    finding.basis = inseam_basis(checked.rider);
    if (finding.basis == FindingBasis::measured && !taken(checked.rider.stature))
        finding.basis = FindingBasis::estimated_stature;
    return finding;
}

} // namespace saddlerule
