// The double nearest a figure written in decimals.
#pragma once

#include <string_view>

namespace saddlerule {

/// The double nearest `figure`, which has the grammar of figures in JSON (RFC 8259, section 6); of two that are as near,
/// the even one (IEEE 754, roundTiesToEven). Infinite where it is too large for a double, zero where it is too small.
///
/// Says the same as strtod, without the arithmetic of 128 bits that the C library of the wasm build does it with.
double nearest_double(std::string_view figure);

} // namespace saddlerule
