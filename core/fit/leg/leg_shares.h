// Shares of the body, as fractions of stature, that the leg linkage is built from. Measured on adults: for a
// child they are orientation, never a reason to refuse a bike.
#pragma once

#include "core/base/quantities/angle.h"
#include "core/base/quantities/length.h"

namespace saddlerule::leg_shares {

// Drillis and Contini 1966, adults, from memory.
constexpr double thigh = 0.245;        ///< hip to knee
constexpr double shank = 0.246;        ///< knee to ankle
constexpr double ankle_height = 0.039; ///< floor to ankle, barefoot
constexpr double hip_height = 0.530;   ///< floor to hip, standing
constexpr double sitting_height = 0.520;
constexpr double foot_length = 0.152;

/// Hip above the saddle: what hip height exceeds the leg length below the seat by.
constexpr double hip_above_seat = hip_height + sitting_height - 1.0;

/// Inseam without shoes: what sitting height leaves of stature.
constexpr double inseam = 1.0 - sitting_height;

/// Ankle behind the ball of the foot, of foot length: the ball is about 0.70 of the foot from the heel, the
/// ankle about 0.25 (assumption, from memory).
constexpr double ankle_behind_ball_of_foot = 0.45;

/// The foot is held heel up by this much through the whole turn. Riders let it rise and sink by some 10
/// degrees around it (assumption, from memory); one angle keeps the turn in closed form.
constexpr Angle heel_up = Angle::degrees(20.0);

/// Pedal axle to the surface under the shoe (assumption: half of a 25 mm platform).
constexpr Length axle_to_pedal_surface = Length::millimetres(12.0);

/// Stature of an adult with this inseam (without shoes), for riders whose stature is not known.
constexpr Length stature_from_inseam(Length inseam_without_shoes) {
    return inseam_without_shoes / inseam;
}

/// Stature of the adult who has this rider's legs: whose hip, standing, is as high above the floor. A young
/// child's legs are a smaller share of stature than an adult's, and the difference is up to a tenth.
constexpr Length leg_stature(Length stature, Length inseam_without_shoes) {
    return (inseam_without_shoes + hip_above_seat * stature) / hip_height;
}

} // namespace saddlerule::leg_shares
