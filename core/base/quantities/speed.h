// Speed: of a bike on the level.
#pragma once

#include <compare>

namespace saddlerule {

/// A speed, in metres a second inside.
class Speed {
public:
    constexpr Speed() = default;

    static constexpr Speed metres_per_second(double value) { return Speed(value); }

    constexpr double in_metres_per_second() const { return m_s_; }
    constexpr double in_kilometres_per_hour() const { return m_s_ * 3.6; }

    friend constexpr auto operator<=>(Speed, Speed) = default;

private:
    explicit constexpr Speed(double m_s) : m_s_(m_s) {}

    double m_s_ = 0.0;
};

} // namespace saddlerule
