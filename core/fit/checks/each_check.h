// The judges of check_list.inc, one function each, and what they share.
#pragma once

#include "core/fit/checks/check.h"

#include <optional>

namespace saddlerule::each_check {

#define SADDLERULE_CHECK(name, source) std::optional<Finding> name(const CheckCase& checked);
#include "core/fit/checks/check_list.inc"
#undef SADDLERULE_CHECK

/// A figure that is there, finite and above zero; a zero in a list is a figure that nobody took.
std::optional<Length> taken(const std::optional<Length>& figure);
std::optional<Mass> taken(const std::optional<Mass>& figure);

/// The unknown that says what to measure.
Finding to_be_measured(MeasureSet missing);

/// Whether a is above b. A difference below a thousandth of a millimetre is the unit it was typed in, not a
/// difference: 25 in is on the edge of 635 mm.
bool above(Length a, Length b);

/// The rider's mass, or the median that stands in for it.
struct RiderMass {
    Mass mass;
    FindingBasis basis;
};
std::optional<RiderMass> mass_of(const CheckedRider& rider);

/// Of a finding that rests on the rider's inseam.
FindingBasis inseam_basis(const CheckedRider& rider);

/// A saddle that has no setting although both ends of its span are known is not the rider's size: what is
/// judged at the setting does not apply. Otherwise the missing end is what to measure.
bool setting_is_out_of_question(const CheckCase& checked);
/// Those ends, to add to what is missing.
MeasureSet missing_for_setting(const CheckCase& checked);

} // namespace saddlerule::each_check
