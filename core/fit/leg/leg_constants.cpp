#include "core/fit/leg/leg_constants.h"

#include "core/fit/leg/leg_shares.h"

namespace saddlerule {

std::vector<StatedConstant> leg_constants() {
    using namespace leg_shares;
    constexpr std::string_view adults = "Drillis and Contini 1966, adults, from memory";
    constexpr std::string_view assumption = "assumption, from memory";
    constexpr std::string_view of_stature = "of stature";
    return {
        {"leg.thigh", {thigh}, of_stature, adults, "hip to knee"},
        {"leg.shank", {shank}, of_stature, adults, "knee to ankle"},
        {"leg.ankle_height", {ankle_height}, of_stature, adults, "floor to ankle, barefoot"},
        {"leg.hip_height", {hip_height}, of_stature, adults, "floor to hip, standing"},
        {"leg.sitting_height", {sitting_height}, of_stature, adults, "the rest is the inseam without shoes"},
        {"leg.foot_length", {foot_length}, of_stature, adults, "heel to toe"},
        {"leg.ankle_behind_ball_of_foot",
         {ankle_behind_ball_of_foot},
         "of foot length",
         assumption,
         "the ball of the foot is over the pedal axle"},
        {"leg.heel_up", {heel_up.in_degrees()}, "degrees", assumption, "the foot through the whole turn"},
        {"leg.axle_to_pedal_surface",
         {axle_to_pedal_surface.in_millimetres()},
         "mm",
         "assumption",
         "half of a pedal 25 mm thick"},
    };
}

} // namespace saddlerule
