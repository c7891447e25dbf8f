// Angle: of a seat tube, a crank or a knee.
#pragma once

#include <compare>
#include <numbers>

namespace saddlerule {

/// An angle, in radians inside.
class Angle {
public:
    constexpr Angle() = default;

    static constexpr Angle radians(double value) { return Angle(value); }
    static constexpr Angle degrees(double value) { return Angle(value * std::numbers::pi / 180.0); }

    constexpr double in_radians() const { return rad_; }
    constexpr double in_degrees() const { return rad_ * 180.0 / std::numbers::pi; }

    friend constexpr auto operator<=>(Angle, Angle) = default;

    friend constexpr Angle operator+(Angle a, Angle b) { return Angle(a.rad_ + b.rad_); }
    friend constexpr Angle operator-(Angle a, Angle b) { return Angle(a.rad_ - b.rad_); }

private:
    explicit constexpr Angle(double rad) : rad_(rad) {}

    double rad_ = 0.0;
};

} // namespace saddlerule
