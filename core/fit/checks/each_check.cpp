#include "core/fit/checks/each_check.h"

#include <cmath>

namespace saddlerule::each_check {

std::optional<Length> taken(const std::optional<Length>& figure) {
    if (!figure || !std::isfinite(figure->in_millimetres()) || !(*figure > Length{}))
        return std::nullopt;
    return figure;
}

std::optional<Mass> taken(const std::optional<Mass>& figure) {
    if (!figure || !std::isfinite(figure->in_kilograms()) || !(*figure > Mass{}))
        return std::nullopt;
    return figure;
}

Finding to_be_measured(MeasureSet missing) {
    Finding finding;
    finding.to_measure = missing;
    return finding;
}

bool above(Length a, Length b) {
    return a - b > Length::millimetres(0.001);
}

std::optional<RiderMass> mass_of(const CheckedRider& rider) {
    if (const auto weighed = taken(rider.mass))
        return RiderMass{*weighed, FindingBasis::measured};
    if (!rider.estimated_mass)
        return std::nullopt;
    const auto median = taken(rider.estimated_mass->median);
    return median ? std::optional(RiderMass{*median, FindingBasis::estimated_rider_mass}) : std::nullopt;
}

FindingBasis inseam_basis(const CheckedRider& rider) {
    return rider.guessed_inseam_sd ? FindingBasis::estimated_inseam : FindingBasis::measured;
}

bool setting_is_out_of_question(const CheckCase& checked) {
    return !taken(checked.saddle_setting) && missing_for_setting(checked).empty();
}

MeasureSet missing_for_setting(const CheckCase& checked) {
    MeasureSet missing;
    if (taken(checked.saddle_setting))
        return missing;
    if (!taken(checked.bike.saddle_lowest))
        missing.add(Measure::saddle_lowest);
    if (!taken(checked.bike.saddle_highest))
        missing.add(Measure::saddle_highest);
    return missing;
}

} // namespace saddlerule::each_check
