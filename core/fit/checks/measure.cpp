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
    {"saddle_lowest", "the lowest saddle height"},
    {"saddle_highest", "the highest saddle height"},
    {"standover", "the height of the top tube"},
    {"bottom_bracket_height", "the height of the bottom bracket"},
    {"seat_tube_angle_deg", "the angle of the seat tube"},
    {"crank", "the length of the crank"},
    {"lever_reach", "the reach from grip to brake lever"},
    {"brakes", "the brakes fitted"},
    {"wheel", "the marking on the tyre"},
    {"chainring", "the teeth on the front chainring"},
    {"sprocket", "the teeth on the rear sprocket"},
    {"mass_kg", "the weight of the bike"},
    {"rider_mass_limit_kg", "the maker's weight limit for the rider"},
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
