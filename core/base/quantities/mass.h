// Mass: of a bike or a rider.
#pragma once

#include <compare>

namespace saddlerule {

/// A mass, in kilograms inside.
class Mass {
public:
    constexpr Mass() = default;

    static constexpr Mass kilograms(double value) { return Mass(value); }
    /// The international pound: 0.45359237 kg exactly (international yard and pound agreement, 1959).
    static constexpr Mass pounds(double value) { return Mass(value * 0.45359237); }

    constexpr double in_kilograms() const { return kg_; }

    friend constexpr auto operator<=>(Mass, Mass) = default;

    friend constexpr Mass operator+(Mass a, Mass b) { return Mass(a.kg_ + b.kg_); }
    /// A ratio of masses is a plain number.
    friend constexpr double operator/(Mass a, Mass b) { return a.kg_ / b.kg_; }

private:
    explicit constexpr Mass(double kg) : kg_(kg) {}

    double kg_ = 0.0;
};

} // namespace saddlerule
