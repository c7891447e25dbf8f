// Figure: a number with its unit as a tag, so that one kind of finding can carry lengths, masses and ratios
// and still be written out with the right unit.
#pragma once

#include "core/base/quantities/angle.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/base/quantities/speed.h"

#include <cstdint>
#include <string_view>

namespace saddlerule {

enum class FigureUnit : std::uint8_t {
    millimetres,
    metres,
    gear_inches,
    kilograms,
    degrees,
    kilometres_per_hour,
    turns_per_minute,
    ratio
};

/// A quantity of any kind. Built from a strong type or, for a ratio, by name.
class Figure {
public:
    constexpr Figure() = default;
    constexpr Figure(Length length) : Figure(length.in_millimetres(), FigureUnit::millimetres) {}
    constexpr Figure(Mass mass) : Figure(mass.in_kilograms(), FigureUnit::kilograms) {}
    constexpr Figure(Angle angle) : Figure(angle.in_degrees(), FigureUnit::degrees) {}
    constexpr Figure(Speed speed) : Figure(speed.in_kilometres_per_hour(), FigureUnit::kilometres_per_hour) {}

    static constexpr Figure ratio(double value) { return {value, FigureUnit::ratio}; }
    /// For lengths that people say in metres.
    static constexpr Figure metres(Length length) { return {length.in_metres(), FigureUnit::metres}; }
    static constexpr Figure gear_inches(double value) { return {value, FigureUnit::gear_inches}; }
    static constexpr Figure turns_per_minute(double value) { return {value, FigureUnit::turns_per_minute}; }

    constexpr double value() const { return value_; }
    constexpr FigureUnit unit() const { return unit_; }

    friend constexpr bool operator==(const Figure&, const Figure&) = default;

private:
    constexpr Figure(double value, FigureUnit unit) : value_(value), unit_(unit) {}

    double value_ = 0.0;
    FigureUnit unit_ = FigureUnit::ratio;
};

/// The end of a field name that holds such a figure: `mm`, `metres`, `gear_inches`, `kg`, `degrees`, `km_h`,
/// `ratio`.
std::string_view field_suffix(FigureUnit unit);

} // namespace saddlerule
