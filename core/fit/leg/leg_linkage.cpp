#include "core/fit/leg/leg_linkage.h"

#include "core/fit/leg/leg_shares.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace saddlerule {
namespace {

Length distance(PlanePoint a, PlanePoint b) {
    return Length::millimetres(std::hypot((b.x - a.x).in_millimetres(), (b.y - a.y).in_millimetres()));
}

/// Over the point where the seat-post line, which starts at the bottom bracket, reaches the saddle's height.
PlanePoint hip_of(const LegFigures& figures) {
    const Length rise = figures.saddle_height - figures.bottom_bracket_height;
    return {.x = -rise / std::tan(figures.seat_tube.in_radians()),
            .y = figures.saddle_height + leg_shares::hip_above_seat * figures.stature};
}

/// Ankle behind and above the pedal axle, with the heel up.
PlanePoint ankle_over_pedal(const LegFigures& figures) {
    const Length back = leg_shares::ankle_behind_ball_of_foot * leg_shares::foot_length * figures.stature;
    const Length up =
        leg_shares::ankle_height * leg_shares::leg_stature(figures.stature, figures.inseam) + figures.sole;
    const double cosine = std::cos(leg_shares::heel_up.in_radians());
    const double sine = std::sin(leg_shares::heel_up.in_radians());
    return {.x = up * sine - back * cosine,
            .y = back * sine + up * cosine + leg_shares::axle_to_pedal_surface};
}

/// From straight up, clockwise, 0 to 360 degrees.
Angle crank_towards(double x, double y) {
    const double turn = std::atan2(x, y);
    return Angle::radians(turn < 0.0 ? turn + 2.0 * std::numbers::pi : turn);
}

} // namespace

std::variant<LegLinkage, LegObstacle> LegLinkage::build(const LegFigures& figures) {
    if (const auto contradiction = contradiction_in(figures))
        return *contradiction;

    LegLinkage leg;
    leg.bottom_bracket_height_ = figures.bottom_bracket_height;
    leg.crank_ = figures.crank;
    const Length leg_stature = leg_shares::leg_stature(figures.stature, figures.inseam);
    leg.thigh_ = leg_shares::thigh * leg_stature;
    leg.shank_ = leg_shares::shank * leg_stature;
    leg.hip_ = hip_of(figures);
    leg.ankle_from_pedal_ = ankle_over_pedal(figures);

    const Length to_middle = distance(leg.hip_, leg.ankle_circle_middle());
    const Length furthest = to_middle + figures.crank;
    const Length nearest = Length::millimetres(std::abs((to_middle - figures.crank).in_millimetres()));
    if (furthest > leg.thigh_ + leg.shank_)
        return LegObstacle::pedal_out_of_reach;
    if (nearest < leg.shank_ - leg.thigh_)
        return LegObstacle::leg_cannot_fold;
    leg.least_flexion_ = leg.flexion_at(furthest);
    leg.greatest_flexion_ = leg.flexion_at(nearest);
    return leg;
}

LegPose LegLinkage::at(Angle crank) const {
    LegPose pose;
    pose.crank = crank;
    pose.hip = hip_;
    pose.pedal = {.x = crank_ * std::sin(crank.in_radians()),
                  .y = bottom_bracket_height_ + crank_ * std::cos(crank.in_radians())};
    pose.ankle = {.x = pose.pedal.x + ankle_from_pedal_.x, .y = pose.pedal.y + ankle_from_pedal_.y};

    // The knee is where a circle of the thigh around the hip meets one of the shank around the ankle; of the
    // two points, the one in front.
    const double reach = distance(pose.hip, pose.ankle).in_millimetres();
    const double thigh = thigh_.in_millimetres();
    const double shank = shank_.in_millimetres();
    const double along = (reach * reach + thigh * thigh - shank * shank) / (2.0 * reach);
    const double aside = std::sqrt(std::max(0.0, thigh * thigh - along * along));
    const double right = (pose.ankle.x - pose.hip.x).in_millimetres() / reach;
    const double up = (pose.ankle.y - pose.hip.y).in_millimetres() / reach;
    pose.knee = {.x = pose.hip.x + Length::millimetres(along * right - aside * up),
                 .y = pose.hip.y + Length::millimetres(along * up + aside * right)};
    pose.knee_flexion = flexion_at(Length::millimetres(reach));
    return pose;
}

Angle LegLinkage::crank_when_straightest() const {
    const PlanePoint middle = ankle_circle_middle();
    return crank_towards((middle.x - hip_.x).in_millimetres(), (middle.y - hip_.y).in_millimetres());
}

Angle LegLinkage::crank_when_most_bent() const {
    const PlanePoint middle = ankle_circle_middle();
    return crank_towards((hip_.x - middle.x).in_millimetres(), (hip_.y - middle.y).in_millimetres());
}

PlanePoint LegLinkage::ankle_circle_middle() const {
    return {.x = ankle_from_pedal_.x, .y = bottom_bracket_height_ + ankle_from_pedal_.y};
}

Angle LegLinkage::flexion_at(Length hip_to_ankle) const {
    // Law of cosines for the angle inside the knee; a straight leg has 180 degrees there.
    const double thigh = thigh_.in_millimetres();
    const double shank = shank_.in_millimetres();
    const double reach = hip_to_ankle.in_millimetres();
    const double cosine = (thigh * thigh + shank * shank - reach * reach) / (2.0 * thigh * shank);
    return Angle::radians(std::numbers::pi - std::acos(std::clamp(cosine, -1.0, 1.0)));
}

} // namespace saddlerule
