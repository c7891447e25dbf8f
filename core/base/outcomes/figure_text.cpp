#include "core/base/outcomes/figure_text.h"

#include <cmath>
#include <cstdint>

namespace saddlerule {
namespace {

constexpr double too_large_to_word = 1e15;

bool starts_character(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
}

} // namespace

std::string figure_text(double value, int decimals) {
    if (!(std::abs(value) < too_large_to_word))
        return "?";
    std::uint64_t scale = 1;
    for (int i = 0; i < decimals; ++i)
        scale *= 10;
    // Split before scaling: the product of a large value and the scale would leave the integers.
    double whole_part = 0.0;
    const double fraction = std::modf(std::abs(value), &whole_part);
    auto whole = static_cast<std::uint64_t>(whole_part);
    auto scaled = static_cast<std::uint64_t>(std::llround(fraction * static_cast<double>(scale)));
    if (scaled == scale) {
        ++whole;
        scaled = 0;
    }
    std::string text = value < 0.0 && (whole > 0 || scaled > 0) ? "-" : "";
    text += std::to_string(whole);
    if (scaled > 0) {
        std::string digits = std::to_string(scaled);
        digits.insert(0, static_cast<std::size_t>(decimals) - digits.size(), '0');
        digits.erase(digits.find_last_not_of('0') + 1);
        text += '.' + digits;
    }
    return text;
}

std::string_view first_characters(std::string_view text, std::size_t count) {
    std::size_t seen = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (starts_character(text[i]) && seen++ == count)
            return text.substr(0, i);
    }
    return text;
}

std::string excerpt(std::string_view text, std::size_t count) {
    const std::string_view front = first_characters(text, count);
    return std::string(front) + (front.size() < text.size() ? "..." : "");
}

} // namespace saddlerule
