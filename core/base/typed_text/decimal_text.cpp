#include "core/base/typed_text/decimal_text.h"

namespace saddlerule {
namespace {

constexpr std::string_view no_break_space = "\xC2\xA0";
constexpr std::string_view thin_space = "\xE2\x80\x89";
constexpr std::string_view narrow_no_break_space = "\xE2\x80\xAF";

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
    const char* begin = text.data();
    const char* end = begin + text.size();
    const auto is_no_break_space = [](const char* at) {
        return at[0] == no_break_space[0] && at[1] == no_break_space[1];
    };
    const auto is_thin_space = [](const char* at) {
        return at[0] == thin_space[0] && at[1] == thin_space[1] &&
               (at[2] == thin_space[2] || at[2] == narrow_no_break_space[2]);
    };
    while (begin != end) {
        if (*begin == ' ' || *begin == '\t')
            ++begin;
        else if (end - begin >= 2 && is_no_break_space(begin))
            begin += 2;
        else if (end - begin >= 3 && is_thin_space(begin))
            begin += 3;
        else
            break;
    }
    while (begin != end) {
        if (end[-1] == ' ' || end[-1] == '\t')
            --end;
        else if (end - begin >= 2 && is_no_break_space(end - 2))
            end -= 2;
        else if (end - begin >= 3 && is_thin_space(end - 3))
            end -= 3;
        else
            break;
    }
    return {begin, static_cast<std::size_t>(end - begin)};
}

} // namespace saddlerule
