// LegLinkage: hip, knee, ankle and pedal as four joined bars, over a full turn of the crank.
#pragma once

#include "core/base/quantities/angle.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/plane_point.h"
#include "core/fit/leg/leg_figures.h"

#include <variant>

namespace saddlerule {

/// The leg at one angle of the crank. x is forward from the bottom bracket, y up from the floor.
struct LegPose {
    Angle crank; ///< 0 with the pedal on top, growing as the crank turns forwards; 180 degrees at the bottom
    PlanePoint hip;
    PlanePoint knee;
    PlanePoint ankle;
    PlanePoint pedal;   ///< its axle, under the ball of the foot
    Angle knee_flexion; ///< 0 is a straight leg
};

/// Segment lengths are shares of stature (leg_shares.h), drawn in so that the leg, when was on, is as long as
/// the inseam says: adult proportions, orientation for a child. The hip stays above the point where the
/// seat-post line meets the saddle; the foot keeps its angle, so the ankle runs round a circle as large as
/// the pedal's, and the turning points are exact.
class LegLinkage {
public:
    static std::variant<LegLinkage, LegObstacle> build(const LegFigures& figures);

    /// The leg at any angle of the crank, in turns as many as wanted.
    LegPose at(Angle crank) const;

    Angle least_knee_flexion() const { return least_flexion_; }
    Angle greatest_knee_flexion() const { return greatest_flexion_; }
    /// The crank's angle at these, from 0 to 360 degrees. The straightest leg is near the bottom of the turn.
    Angle crank_when_straightest() const;
    Angle crank_when_most_bent() const;

private:
    LegLinkage() = default;

    PlanePoint ankle_circle_middle() const;
    Angle flexion_at(Length hip_to_ankle) const;

    Length bottom_bracket_height_;
    Length crank_;
    Length thigh_;
    Length shank_;
    PlanePoint hip_;
    PlanePoint ankle_from_pedal_; ///< the same at every angle of the crank
    Angle least_flexion_;
    Angle greatest_flexion_;
};

} // namespace saddlerule
