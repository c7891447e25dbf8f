#include "core/fit/bike/wheel.h"

#include "core/base/typed_text/decimal_text.h"
#include "core/base/typed_text/length_text.h"

#include <array>
#include <cmath>

namespace saddlerule {
namespace {

using namespace literals;

// ISO 5775-1 bead seat diameters, from memory.
constexpr std::array<NominalWheel, 15> known_wheels{{
    {10.0, 152_mm, true},
    {12.0, 203_mm, true},
    {14.0, 254_mm, true},
    {16.0, 305_mm, true},
    {16.0, 349_mm, false},
    {18.0, 355_mm, true},
    {20.0, 406_mm, true},
    {20.0, 451_mm, false},
    {24.0, 507_mm, true},
    {24.0, 520_mm, false},
    {24.0, 540_mm, false},
    {26.0, 559_mm, true},
    {27.5, 584_mm, true},
    {28.0, 622_mm, true},
    {29.0, 622_mm, false},
}};

constexpr Length usual_tyre = 47_mm;
constexpr Length narrowest_tyre = 15_mm;
constexpr Length widest_tyre = 130_mm;
constexpr Length smallest_bead_seat = 100_mm;
constexpr Length largest_bead_seat = 700_mm;
constexpr Length same_size = 10_mm;

std::optional<double> nominal_of(Length bead_seat) {
    std::optional<double> inches;
    double nearest = same_size.in_millimetres();
    for (const NominalWheel& wheel : known_wheels) {
        const double distance = std::abs((wheel.bead_seat - bead_seat).in_millimetres());
        if (inches ? distance < nearest : distance <= nearest) {
            nearest = distance;
            inches = wheel.inches;
        }
    }
    return inches;
}

} // namespace

std::span<const NominalWheel> nominal_wheels() {
    return known_wheels;
}

std::optional<Wheel> Wheel::from_text(std::string_view text) {
    std::optional<Wheel> wheel{Wheel()};
    if (!wheel->read(trimmed(text)))
        wheel.reset();
    return wheel;
}

bool Wheel::read(std::string_view text) {
    const auto first = read_decimal_prefix(text);
    if (!first)
        return false;
    text_ = text;
    std::string_view rest = trimmed(text.substr(first->length));

    if (rest.starts_with('-')) {
        const auto diameter = read_decimal(rest.substr(1));
        if (!diameter)
            return false;
        tyre_width_ = Length::millimetres(first->value);
        bead_seat_ = Length::millimetres(*diameter);
        nominal_inches_ = nominal_of(bead_seat_);
        return *tyre_width_ >= narrowest_tyre && *tyre_width_ <= widest_tyre &&
               bead_seat_ >= smallest_bead_seat && bead_seat_ <= largest_bead_seat;
    }

    double inches = first->value;
    if (inches == 700.0 && (rest == "C" || rest == "c")) {
        inches = 28.0;
        rest = {};
    }
    if (!rest.empty() && unit_from_text(rest) != LengthUnit::inch)
        return false;
    for (const NominalWheel& known : known_wheels) {
        if (known.inches == inches) {
            nominal_inches_ = inches;
            bead_seat_ = known.bead_seat;
            return true;
        }
    }
    return false;
}

Length Wheel::rolling_radius() const {
    return bead_seat_ / 2.0 + tyre_width_.value_or(usual_tyre);
}

} // namespace saddlerule
