// Figures in JSON: their grammar (RFC 8259, section 6) and their values.
#pragma once

#include <cstddef>
#include <string_view>

namespace saddlerule {

/// The length of the figure at the front of `text`, or 0 where none stands: of `49.5.1` it is 4, of `012` it is 1.
std::size_t json_figure_length(std::string_view text);

/// The value of a text that is one figure and nothing else: the double nearest to it where it has up to 15 digits and up to
/// 22 places, as every measure has, and within one part in 1e14 otherwise. Not finite where it is beyond every double.
double json_figure_value(std::string_view figure);

} // namespace saddlerule
