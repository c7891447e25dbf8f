// The strict number grammar behind everything that people type.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace saddlerule {

/// What was read from the front of a text, and how many bytes of it.
struct DecimalPrefix {
    double value = 0.0;
    std::size_t length = 0;
    bool whole = true; ///< no decimal mark was there
};

/// Reads digits, one point or comma, digits; at most 15 significant digits count. No sign, exponent,
/// separators of thousands, hexadecimal, infinity. Independent of any locale. Nothing where no digit leads
/// ("," and ".5" too).
std::optional<DecimalPrefix> read_decimal_prefix(std::string_view text);

/// The whole text as one such number, blanks around it allowed.
std::optional<double> read_decimal(std::string_view text);

/// `text` without blanks (space, tab, no-break space, thin space) at either end.
std::string_view trimmed(std::string_view text);

} // namespace saddlerule
