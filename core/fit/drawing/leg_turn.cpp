#include "core/fit/drawing/leg_turn.h"

#include "core/fit/leg/leg_shares.h"

namespace saddlerule {
namespace {

PlanePoint shifted(PlanePoint point, Length by) {
    return {point.x + by, point.y};
}

} // namespace

std::optional<std::variant<LegTurn, LegObstacle>> leg_turn(const SideView& view, const Rider& rider,
                                                           Length inseam_in_shoes) {
    if (!view.crank || !view.saddle_setting)
        return std::nullopt;
    const Length sole = rider.accuracy.sole;
    const Length from_inseam = leg_shares::stature_from_inseam(inseam_in_shoes - sole);
    const LegFigures figures{.saddle_height = view.saddle_setting->y,
                             .bottom_bracket_height = view.bottom_bracket.y,
                             .crank = *view.crank,
                             .seat_tube = view.seat_tube_angle,
                             .stature = rider.stature.value_or(from_inseam),
                             .inseam = inseam_in_shoes - sole,
                             .sole = sole};
    const auto built = LegLinkage::build(figures);
    if (const auto* obstacle = std::get_if<LegObstacle>(&built))
        return *obstacle;

    const auto& leg = std::get<LegLinkage>(built);
    LegTurn turn{.poses = {},
                 .least_flexion = leg.least_knee_flexion(),
                 .greatest_flexion = leg.greatest_knee_flexion(),
                 .stature_assumed = !rider.stature};
    for (int i = 0; i < poses_in_a_turn; ++i) {
        LegPose pose = leg.at(Angle::degrees(360.0 * i / poses_in_a_turn));
        for (PlanePoint* joint : {&pose.hip, &pose.knee, &pose.ankle, &pose.pedal})
            *joint = shifted(*joint, view.bottom_bracket.x);
        turn.poses.push_back(pose);
    }
    return turn;
}

} // namespace saddlerule
