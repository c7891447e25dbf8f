#include "core/json/json_figure.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <limits>

namespace saddlerule {
namespace {

/// These and all below are doubles without rounding.
constexpr int largest_exact_power = 22;

/// More than takes the smallest double to the largest.
constexpr int largest_power = 2000;

/// One more digit might leave 64 bits.
constexpr std::uint64_t most_digits = (std::numeric_limits<std::uint64_t>::max() - 9) / 10;

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

double power_of_ten(int power) {
    double result = 1.0;
    for (int i = 0; i < power; ++i)
        result *= 10.0;
    return result;
}

/// `number` times ten to the power, in as few steps as are exact.
double scaled(double number, int power) {
    for (; number != 0.0 && std::isfinite(number) && power != 0;) {
        const int step = std::clamp(power, -largest_exact_power, largest_exact_power);
        number = step < 0 ? number / power_of_ten(-step) : number * power_of_ten(step);
        power -= step;
    }
    return number;
}

std::size_t digits_at(std::string_view text, std::size_t offset) {
    std::size_t end = offset;
    while (end < text.size() && is_digit(text[end]))
        ++end;
    return end - offset;
}

bool stands_at(std::string_view text, std::size_t offset, std::string_view any_of) {
    return offset < text.size() && any_of.find(text[offset]) != std::string_view::npos;
}

} // namespace

std::size_t json_figure_length(std::string_view text) {
    std::size_t end = stands_at(text, 0, "-") ? 1 : 0;
    const std::size_t whole = stands_at(text, end, "0") ? 1 : digits_at(text, end);
    if (whole == 0)
        return 0;
    end += whole;
    if (stands_at(text, end, ".")) {
        const std::size_t decimals = digits_at(text, end + 1);
        end += decimals > 0 ? 1 + decimals : 0;
    }
    if (stands_at(text, end, "eE")) {
        const std::size_t sign = stands_at(text, end + 1, "+-") ? 1 : 0;
        const std::size_t exponent = digits_at(text, end + 1 + sign);
        end += exponent > 0 ? 1 + sign + exponent : 0;
    }
    return end;
}

double json_figure_value(std::string_view figure) {
    const std::size_t mark = std::min(figure.find_first_of("eE"), figure.size());
    std::uint64_t digits = 0;
    int power = 0;
    bool after_point = false;
    for (const char c : figure.substr(0, mark)) {
        if (c == '.')
            after_point = true;
        if (!is_digit(c))
            continue;
        const bool counts = digits <= most_digits;
        if (counts)
            digits = digits * 10 + static_cast<std::uint64_t>(c - '0');
        power += (counts ? 0 : 1) - (after_point ? 1 : 0);
    }
    if (mark < figure.size()) {
        std::string_view exponent = figure.substr(mark + 1);
        if (exponent.front() == '+')
            exponent.remove_prefix(1);
        int written = 0;
        const auto [stop, error] =
            std::from_chars(exponent.data(), exponent.data() + exponent.size(), written);
        if (error != std::errc())
            written = exponent.front() == '-' ? -largest_power : largest_power;
        power += std::clamp(written, -largest_power, largest_power);
    }
    const double value = scaled(static_cast<double>(digits), power);
    return figure.front() == '-' ? -value : value;
}

} // namespace saddlerule
