#include "core/fit/checks/figure.h"

#include <array>

namespace saddlerule {

std::string_view field_suffix(FigureUnit unit) {
    // In the order of the enumeration.
    static constexpr std::array<std::string_view, 8> suffixes{
        "mm", "metres", "gear_inches", "kg", "degrees", "km_h", "turns_per_minute", "ratio"};
    return suffixes[static_cast<std::size_t>(unit)];
}

} // namespace saddlerule
