// Typical years: at which ages most children have legs of some length. For orientation only.
#pragma once

#include "core/base/quantities/length.h"

#include <optional>
#include <vector>

namespace saddlerule {

/// Whole years of age, both included. An end beyond the reference is absent.
struct YearRange {
    std::optional<int> from;
    std::optional<int> to;
};

/// Inseams of the middle child of each age, by the growth reference; girls and boys count alike.
class TypicalYears {
public:
    TypicalYears();

    /// The years in whose middle the middle child's inseam in shoes is within the range, or, of a narrow range, the one that comes
    /// nearest. Absent ends of the range are open.
    YearRange of(std::optional<Length> from, std::optional<Length> to) const;

private:
    std::vector<Length> inseams_; ///< of each year of age, from `youngest`
};

} // namespace saddlerule
