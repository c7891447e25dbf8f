// Length: every distance in the engine, from an inseam to a crank. The unit is in the constructor and the
// accessor, so no bare number can be taken for the wrong one.
#pragma once

#include <compare>

namespace saddlerule {

/// A distance or a difference of distances, in millimetres inside. May be negative (a margin, an offset).
class Length {
public:
    constexpr Length() = default;

    static constexpr Length millimetres(double value) { return Length(value); }
    static constexpr Length centimetres(double value) { return Length(value * 10.0); }
    static constexpr Length metres(double value) { return Length(value * 1000.0); }
    /// The international inch: 25.4 mm exactly (international yard and pound agreement, 1959).
    static constexpr Length inches(double value) { return Length(value * 25.4); }
    static constexpr Length feet(double value) { return inches(value * 12.0); }

    constexpr double in_millimetres() const { return mm_; }
    constexpr double in_centimetres() const { return mm_ / 10.0; }
    constexpr double in_metres() const { return mm_ / 1000.0; }
    constexpr double in_inches() const { return mm_ / 25.4; }

    friend constexpr auto operator<=>(Length, Length) = default;

    friend constexpr Length operator+(Length a, Length b) { return Length(a.mm_ + b.mm_); }
    friend constexpr Length operator-(Length a, Length b) { return Length(a.mm_ - b.mm_); }
    friend constexpr Length operator-(Length a) { return Length(-a.mm_); }
    friend constexpr Length operator*(Length a, double factor) { return Length(a.mm_ * factor); }
    friend constexpr Length operator*(double factor, Length a) { return Length(a.mm_ * factor); }
    friend constexpr Length operator/(Length a, double divisor) { return Length(a.mm_ / divisor); }
    /// A ratio of lengths is a plain number.
    friend constexpr double operator/(Length a, Length b) { return a.mm_ / b.mm_; }

    constexpr Length& operator+=(Length other) {
        mm_ += other.mm_;
        return *this;
    }

private:
    explicit constexpr Length(double mm) : mm_(mm) {}

    double mm_ = 0.0;
};

namespace literals {
constexpr Length operator""_mm(unsigned long long value) {
    return Length::millimetres(static_cast<double>(value));
}
constexpr Length operator""_mm(long double value) {
    return Length::millimetres(static_cast<double>(value));
}
} // namespace literals

} // namespace saddlerule
