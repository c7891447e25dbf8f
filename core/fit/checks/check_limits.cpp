#include "core/fit/checks/check_limits.h"

#include <array>

namespace saddlerule {
namespace {

template <typename Quantity>
constexpr StatedFigure tagged(const Stated<Quantity>& stated) {
    return {stated.name, Figure(stated.value), stated.source, stated.reason};
}

constexpr StatedFigure tagged(const Stated<double>& stated) {
    return {stated.name, Figure::ratio(stated.value), stated.source, stated.reason};
}

constexpr std::array all_limits{
    tagged(limits::standover_room),
    tagged(limits::standover_room_off_road),
    tagged(limits::bike_mass_look),
    tagged(limits::bike_mass_stop),
    tagged(limits::estimated_mass_margin),
    tagged(limits::knee_flexion_least),
    tagged(limits::knee_flexion_most),
    tagged(limits::saddle_height_factor),
    tagged(limits::crank_share_least),
    tagged(limits::crank_share_most),
    tagged(limits::lever_reach),
    tagged(limits::lever_reach_us_sidewalk),
    tagged(limits::lever_reach_us),
    tagged(limits::toy_highest_saddle),
    tagged(limits::young_children_highest_saddle),
    tagged(limits::young_adult_highest_saddle),
    tagged(limits::us_sidewalk_highest_saddle),
    tagged(limits::top_of_post),
    tagged(limits::easy_cadence),
    tagged(limits::brisk_cadence),
};

} // namespace

std::span<const StatedFigure> stated_limits() {
    return all_limits;
}

} // namespace saddlerule
