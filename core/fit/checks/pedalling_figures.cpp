#include "core/fit/checks/pedalling_figures.h"

#include "core/fit/checks/each_check.h"
#include "core/fit/leg/leg_shares.h"

namespace saddlerule::each_check {

MeasureSet missing_for_leg(const CheckCase& checked) {
    MeasureSet missing = missing_for_setting(checked);
    if (!taken(checked.bike.bottom_bracket_height))
        missing.add(Measure::bottom_bracket_height);
    if (!taken(checked.bike.crank))
        missing.add(Measure::crank);
    if (!(checked.bike.seat_tube_angle_degrees.value_or(0.0) > 0.0))
        missing.add(Measure::seat_tube_angle);
    return missing;
}

LegFigures leg_figures_of(const CheckCase& checked) {
    const Length from_inseam = leg_shares::stature_from_inseam(checked.rider.inseam_without_shoes);
    return {.saddle_height = *checked.saddle_setting,
            .bottom_bracket_height = *checked.bike.bottom_bracket_height,
            .crank = *checked.bike.crank,
            .seat_tube = Angle::degrees(*checked.bike.seat_tube_angle_degrees),
            .stature = taken(checked.rider.stature).value_or(from_inseam),
            .inseam = checked.rider.inseam_without_shoes,
            .sole = checked.rider.sole};
}

Finding contradiction_finding(LegObstacle contradiction, const Bike& bike) {
    if (contradiction == LegObstacle::crank_reaches_floor) {
        Finding finding = to_be_measured({Measure::crank, Measure::bottom_bracket_height});
        finding.reason = CheckReason::crank_reaches_floor;
        finding.figure = *bike.crank;
        finding.limit.at_most = *bike.bottom_bracket_height;
        return finding;
    }
    if (contradiction == LegObstacle::saddle_below_bottom_bracket) {
        Finding finding =
            to_be_measured({Measure::saddle_lowest, Measure::saddle_highest, Measure::bottom_bracket_height});
        finding.reason = CheckReason::saddle_below_bottom_bracket;
        return finding;
    }
    // All lengths are above zero by now: it is the angle.
    Finding finding = to_be_measured({Measure::seat_tube_angle});
    finding.reason = CheckReason::seat_tube_impossible;
    finding.figure = Angle::degrees(*bike.seat_tube_angle_degrees);
    return finding;
}

} // namespace saddlerule::each_check
