#include "core/fit/checks/measure.h"

#include <array>

namespace saddlerule {
namespace {

struct MeasureText {
    std::string_view field;
    std::string_view words;
};

// In the order of the enumeration.
constexpr std::array<MeasureText, measure_count> measure_texts{{
    {"saddle_lowest", "the saddle at its lowest"},
    {"saddle_highest", "the saddle at its highest"},
    {"standover", "the height of the top tube"},
    {"bottom_bracket_height", "the height of the bottom bracket"},
    {"seat_tube_angle_deg", "the angle of the seat tube"},
    {"crank", "the length of the crank"},
    {"lever_reach", "the reach from grip to brake lever"},
    {"brakes", "which brakes it has"},
    {"wheel", "the marking on the tyre"},
    {"chainring", "the teeth of the chainring"},
    {"sprocket", "the teeth of the sprocket"},
    {"mass_kg", "the weight of the bike"},
    {"rider_mass_limit_kg", "the rider's weight that the maker allows"},
    {"rider.mass_kg", "the rider's weight"},
}};

} // namespace

std::string_view field_of(Measure measure) {
    return measure_texts[static_cast<std::size_t>(measure)].field;
}

std::string_view words_of(Measure measure) {
    return measure_texts[static_cast<std::size_t>(measure)].words;
}

} // namespace saddlerule
