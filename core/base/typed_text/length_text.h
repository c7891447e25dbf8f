// Reading lengths as people type them: "19 1/2 in", "49,5 cm", "1 ft 7 in", or a bare number under a stated
// unit.
#pragma once

#include "core/base/outcomes/result.h"
#include "core/base/quantities/length.h"

#include <optional>
#include <string>
#include <string_view>

namespace saddlerule {

enum class LengthUnit { millimetre, centimetre, metre, inch, foot };

/// Reads a unit as the catalogue and the page name it: mm, cm, m, in, ft; words in English, German, French,
/// Spanish and Dutch; the prime marks for feet and inches. Case does not matter.
std::optional<LengthUnit> unit_from_text(std::string_view text);

/// Its short name: mm, cm, m, in, ft.
std::string_view unit_name(LengthUnit unit);

Length length_of(double value, LengthUnit unit);

/// The length as a problem tells it: in that unit.
Number length_figure(Length length, LengthUnit unit);

/// Reads one length, zero or more.
///
/// A number is decimal (point or comma), a fraction (`1/2`, or the character ½), or whole and fraction (`19
/// 1/2`, `19-1/2`). It may carry a unit; without one it counts in `bare`. Feet may be followed by inches. No
/// thousands separators, exponents, signs or hexadecimal.
///
/// Problems: the codes figure_*, with the text and an example as figures.
Result<Length> read_length(std::string_view text, LengthUnit bare);

} // namespace saddlerule
