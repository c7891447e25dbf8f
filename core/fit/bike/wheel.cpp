#include "core/fit/bike/wheel.h"

#include "core/base/typed_text/decimal_text.h"
#include "core/base/typed_text/length_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <utility>

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

constexpr Length seat_of_700c = 622_mm;

/// ISO 5775-1, from memory: 16 x 1 3/8 is 37-349, 20 x 1 3/8 37-451, 24 x 1 3/8 37-540.
std::optional<Length> older_seat_of_fraction(double nominal_inches) {
    constexpr std::array<NominalWheel, 3> older{
        {{16.0, 349_mm, false}, {20.0, 451_mm, false}, {24.0, 540_mm, false}}};
    for (const NominalWheel& wheel : older) {
        if (wheel.inches == nominal_inches)
            return wheel.bead_seat;
    }
    return std::nullopt;
}

/// Dashes and crosses of print as the characters of a keyboard, and no word for the standard in front.
std::string plain_marking(std::string_view text) {
    constexpr std::array<std::pair<std::string_view, char>, 5> printed{{{"\xE2\x80\x93", '-'},
                                                                        {"\xE2\x80\x94", '-'},
                                                                        {"\xE2\x80\x91", '-'},
                                                                        {"\xE2\x80\x90", '-'},
                                                                        {"\xC3\x97", 'x'}}};
    for (const std::string_view standard : {"ETRTO", "ISO"}) {
        if (text.starts_with(standard))
            text = trimmed(text.substr(standard.size()));
    }
    std::string plain;
    while (!text.empty()) {
        const auto found = std::find_if(printed.begin(), printed.end(),
                                        [&](const auto& row) { return text.starts_with(row.first); });
        plain += found == printed.end() ? text.front() : found->second;
        text.remove_prefix(found == printed.end() ? 1 : found->first.size());
    }
    return plain;
}

} // namespace

std::span<const NominalWheel> nominal_wheels() {
    return known_wheels;
}

std::optional<Wheel> Wheel::from_text(std::string_view text) {
    std::optional<Wheel> wheel{Wheel()};
    wheel->text_ = trimmed(text);
    if (!wheel->read(plain_marking(wheel->text_)))
        wheel.reset();
    return wheel;
}

bool Wheel::read(std::string_view text) {
    return read_iso(text) || read_size_by_width(text) || read_size(text);
}

/// `47-305`.
bool Wheel::read_iso(std::string_view text) {
    const auto width = read_decimal_prefix(text);
    if (!width)
        return false;
    const std::string_view rest = trimmed(text.substr(width->length));
    const auto diameter = rest.starts_with('-') ? read_decimal(rest.substr(1)) : std::nullopt;
    if (!diameter)
        return false;
    return take(Length::millimetres(*diameter), Length::millimetres(width->value));
}

bool Wheel::take(Length bead_seat, std::optional<Length> tyre_width) {
    tyre_width_ = tyre_width;
    bead_seat_ = bead_seat;
    nominal_inches_ = nominal_of(bead_seat);
    return bead_seat >= smallest_bead_seat && bead_seat <= largest_bead_seat &&
           (!tyre_width || (*tyre_width >= narrowest_tyre && *tyre_width <= widest_tyre));
}

/// `16 x 1.75`, `12 1/2 x 2 1/4`, `700x35C`.
bool Wheel::read_size_by_width(std::string_view text) {
    const std::size_t by = text.find_first_of("xX");
    if (by == std::string_view::npos)
        return false;
    std::string_view width = trimmed(text.substr(by + 1));
    const std::string_view size = trimmed(text.substr(0, by));
    if (size == "700") {
        if (width.ends_with('C') || width.ends_with('c'))
            width.remove_suffix(1);
        const auto millimetres = read_decimal(width);
        return millimetres && take(seat_of_700c, Length::millimetres(*millimetres));
    }
    const auto tyre = read_length(width, LengthUnit::inch);
    if (!tyre || !read_size(size))
        return false;
    // A width as a fraction is that of an older size; 12 1/2 x 2 1/4 is none.
    const bool fraction = width.find('/') != std::string_view::npos;
    if (fraction && *nominal_inches_ != 12.0) {
        const auto older = older_seat_of_fraction(*nominal_inches_);
        return older && take(*older, *tyre);
    }
    const auto inches = nominal_inches_;
    const bool possible = take(bead_seat_, *tyre);
    nominal_inches_ = inches;
    return possible;
}

/// `16`, `16 in`, `12 1/2`, `700C`, or a bead seat diameter alone: `305`.
bool Wheel::read_size(std::string_view text) {
    const auto number = read_decimal_prefix(text);
    const std::string_view letter = number ? trimmed(text.substr(number->length)) : std::string_view();
    if (number && number->value == 700.0 && (letter == "C" || letter == "c"))
        return take(seat_of_700c, std::nullopt);
    const auto size = read_length(text, LengthUnit::inch);
    const auto in_millimetres = read_length(text, LengthUnit::millimetre);
    if (!size || !in_millimetres)
        return false;
    const bool bare = *size != *in_millimetres;
    for (const NominalWheel& known : known_wheels) {
        if (bare && *in_millimetres == known.bead_seat)
            return take(known.bead_seat, std::nullopt);
    }
    const double inches = *size == Length::inches(12.5) ? 12.0 : *size / Length::inches(1.0);
    for (const NominalWheel& known : known_wheels) {
        if (std::abs(known.inches - inches) < 1e-9) {
            nominal_inches_ = known.inches;
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
