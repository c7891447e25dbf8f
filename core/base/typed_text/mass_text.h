// Reading weights as people type them: "40 lb", "18,5 kg", or a bare number under a stated unit.
#pragma once

#include "core/base/outcomes/result.h"
#include "core/base/quantities/mass.h"

#include <optional>
#include <string_view>

namespace saddlerule {

enum class MassUnit { kilogram, pound };

/// Reads a unit: kg, kgs, kilo, kilos, lb, lbs, pound, pounds, with or without a full stop. Case does not matter.
std::optional<MassUnit> mass_unit_from_text(std::string_view text);

/// Reads one mass, zero or more: a decimal number (point or comma), and a unit; without one it counts in `bare`.
///
/// Problems: the codes figure_*, with the text and an example as figures.
Result<Mass> read_mass(std::string_view text, MassUnit bare);

/// The same of a text that names its unit; nothing for any other.
std::optional<Mass> mass_with_unit(std::string_view text);

} // namespace saddlerule
