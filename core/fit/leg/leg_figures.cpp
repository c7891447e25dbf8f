#include "core/fit/leg/leg_figures.h"

#include <array>
#include <cmath>

namespace saddlerule {
namespace {

constexpr Angle flattest_seat_tube = Angle::degrees(30.0);
constexpr Angle steepest_seat_tube = Angle::degrees(100.0);

bool above_zero(Length length) {
    return std::isfinite(length.in_millimetres()) && length > Length{};
}

bool possible(const LegFigures& figures) {
    return above_zero(figures.saddle_height) && above_zero(figures.bottom_bracket_height) &&
           above_zero(figures.crank) && above_zero(figures.stature) && above_zero(figures.inseam) &&
           std::isfinite(figures.sole.in_millimetres()) && figures.sole >= Length{} &&
           figures.seat_tube >= flattest_seat_tube && figures.seat_tube <= steepest_seat_tube;
}

} // namespace

std::string_view name_of(LegObstacle obstacle) {
    constexpr std::array<std::string_view, 5> names{"figure_impossible", "crank_reaches_floor",
                                                    "saddle_below_bottom_bracket", "pedal_out_of_reach",
                                                    "leg_cannot_fold"};
    return names[static_cast<std::size_t>(obstacle)];
}

std::optional<LegObstacle> contradiction_in(const LegFigures& figures) {
    if (!possible(figures))
        return LegObstacle::figure_impossible;
    if (figures.crank >= figures.bottom_bracket_height)
        return LegObstacle::crank_reaches_floor;
    if (figures.saddle_height <= figures.bottom_bracket_height)
        return LegObstacle::saddle_below_bottom_bracket;
    return std::nullopt;
}

Length saddle_to_pedal(const LegFigures& figures) {
    const Length rise = figures.saddle_height - figures.bottom_bracket_height;
    return rise / std::sin(figures.seat_tube.in_radians()) + figures.crank;
}

} // namespace saddlerule
