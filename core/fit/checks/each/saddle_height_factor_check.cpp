// Saddle height factor: saddle to pedal by inseam, beside the figure that adults are set up with.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"
#include "core/fit/checks/pedalling_figures.h"

namespace saddlerule {

std::optional<Finding> each_check::saddle_height_factor(const CheckCase& checked) {
    if (checked.bike.kind == BikeKind::balance || setting_is_out_of_question(checked))
        return std::nullopt;
    const MeasureSet missing = missing_for_leg(checked);
    if (!missing.empty())
        return to_be_measured(missing);
    const LegFigures figures = leg_figures_of(checked);
    if (const auto contradiction = contradiction_in(figures))
        return contradiction_finding(*contradiction, checked.bike);

    const CheckedRider& rider = checked.rider;
    const double factor = saddle_to_pedal(figures) / rider.inseam_without_shoes;
    const double most = saddle_to_pedal(figures) / (rider.short_inseam_in_shoes() - rider.sole);
    Finding finding;
    finding.basis = inseam_basis(rider);
    finding.state = most > limits::saddle_height_factor.value ? CheckState::look : CheckState::ok;
    finding.reason = factor > limits::saddle_height_factor.value ? CheckReason::height_factor_over
                     : finding.state == CheckState::look         ? CheckReason::height_factor_unsettled
                                                                 : CheckReason::height_factor_within;
    finding.figure = Figure::ratio(factor);
    finding.limit.at_most = Figure::ratio(limits::saddle_height_factor.value);
    finding.further = {{{"saddle_to_pedal", saddle_to_pedal(figures)}}};
    return finding;
}

} // namespace saddlerule
