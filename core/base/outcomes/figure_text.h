// Figures as people read them: 49.5, not 49.500000.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace saddlerule {

/// `value` rounded to `decimals` (0 to 6) places, without trailing zeros, with a decimal point and no
/// separators of thousands: "49.5", "-3", "0". What is not finite or is 1e15 and more in size gives "?".
std::string figure_text(double value, int decimals = 2);

/// The first `count` Unicode characters of valid UTF-8, or all of it where it is no longer.
std::string_view first_characters(std::string_view text, std::size_t count);

/// The same with "..." after it where something was left out.
std::string excerpt(std::string_view text, std::size_t count = 40);

} // namespace saddlerule
