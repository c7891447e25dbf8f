#include "core/fit/checks/measure.h"

#include <array>

namespace saddlerule {
namespace {

// In the order of the enumeration.
constexpr std::array<std::string_view, measure_count> fields{
    "saddle_lowest",
    "saddle_highest",
    "standover",
    "bottom_bracket_height",
    "seat_tube_angle_deg",
    "crank",
    "lever_reach",
    "brakes",
    "wheel",
    "chainring",
    "sprocket",
    "mass_kg",
    "rider_mass_limit_kg",
    "rider.mass_kg",
};

} // namespace

std::string_view field_of(Measure measure) {
    return fields[static_cast<std::size_t>(measure)];
}

} // namespace saddlerule
