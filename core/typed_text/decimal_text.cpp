#include "core/typed_text/decimal_text.h"

namespace saddlerule {
namespace {

constexpr std::string_view no_break_space = "\xC2\xA0";

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

} // namespace

std::optional<DecimalPrefix> read_decimal_prefix(std::string_view text) {
    if (text.empty() || !is_digit(text.front()))
        return std::nullopt;
    // Digits are gathered as one integer and divided once: exact for up to 15 digits, so 49.5 is the double
    // nearest 49.5.
    DecimalPrefix result;
    double mantissa = 0.0;
    double divisor = 1.0;
    int significant = 0;
    bool after_mark = false;
    for (const char c : text) {
        if ((c == '.' || c == ',') && !after_mark) {
            after_mark = true;
            result.whole = false;
        } else if (is_digit(c)) {
            const bool counts = significant < 15;
            if (counts)
                mantissa = mantissa * 10.0 + (c - '0');
            else if (!after_mark)
                mantissa *= 10.0;
            if (counts && after_mark)
                divisor *= 10.0;
            if (mantissa > 0.0)
                ++significant;
        } else {
            break;
        }
        ++result.length;
    }
    if (!is_digit(text[result.length - 1]))
        return std::nullopt; // "49." says that something was left out
    result.value = mantissa / divisor;
    return result;
}

std::optional<double> read_decimal(std::string_view text) {
    text = trimmed(text);
    const auto number = read_decimal_prefix(text);
    if (!number || number->length != text.size())
        return std::nullopt;
    return number->value;
}

std::string_view trimmed(std::string_view text) {
    const auto blank_front = [&]() -> std::size_t {
        if (text.starts_with(no_break_space))
            return no_break_space.size();
        return text.starts_with(' ') || text.starts_with('\t') ? 1 : 0;
    };
    const auto blank_back = [&]() -> std::size_t {
        if (text.ends_with(no_break_space))
            return no_break_space.size();
        return text.ends_with(' ') || text.ends_with('\t') ? 1 : 0;
    };
    while (const std::size_t n = blank_front())
        text.remove_prefix(n);
    while (const std::size_t n = blank_back())
        text.remove_suffix(n);
    return text;
}

} // namespace saddlerule
