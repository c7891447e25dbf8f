// The grammar of figures in JSON: RFC 8259, section 6.
#pragma once

#include <cstddef>
#include <string_view>

namespace saddlerule {

/// The length of the figure at the front of `text`, or 0 where there is none: of `49.5.1` it is 4, of `012` it is 1.
std::size_t json_figure_length(std::string_view text);

} // namespace saddlerule
