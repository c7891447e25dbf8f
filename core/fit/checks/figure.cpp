#include "core/fit/checks/figure.h"

#include "core/base/outcomes/figure_text.h"

#include <array>

namespace saddlerule {
namespace {

struct UnitText {
    std::string_view field_suffix;
    std::string_view after_figure;
    int decimals;
};

const UnitText& text_of(FigureUnit unit) {
    // In the order of the enumeration.
    static constexpr std::array<UnitText, 8> unit_texts{{
        {"mm", " mm", 0},
        {"metres", " m", 2},
        {"gear_inches", " gear inches", 0},
        {"kg", " kg", 1},
        {"degrees", " degrees", 0},
        {"km_h", " km/h", 0},
        {"turns_per_minute", " turns a minute", 0},
        {"ratio", "", 2},
    }};
    return unit_texts[static_cast<std::size_t>(unit)];
}

} // namespace

std::string_view field_suffix(FigureUnit unit) {
    return text_of(unit).field_suffix;
}

int decimals_shown(FigureUnit unit) {
    return text_of(unit).decimals;
}

std::string figure_text(const Figure& figure) {
    const UnitText& unit = text_of(figure.unit());
    return figure_text(figure.value(), unit.decimals) + std::string(unit.after_figure);
}

} // namespace saddlerule
