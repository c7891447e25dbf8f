// Legs of US children: Snyder, Schneider, Owings, Reynolds, Golomb, Schork: Anthropometry of infants, children and youths
// to age 18 for product safety design, UM-HSRI-77-17, 1977, for the US Consumer Product Safety Commission. Leg = stature less
// erect sitting height. At each age a straight line fitted to the children within 0.75 years (Epanechnikov weights).
#pragma once

#include "core/fit/rider/rider.h"

#include <cmath>

namespace saddlerule::testing {

struct SurveyedLegs {
    Sex sex;
    double age;
    int children;         ///< within half a year
    double leg;           ///< mean, millimetres
    double leg_sd;        ///< of the children around it
    double stature_score; ///< standard deviations from the CDC median
    double share;         ///< leg by stature
    double share_sd;

    double leg_error() const { return leg_sd / std::sqrt(children); } ///< standard error of the mean
};

// clang-format off
constexpr SurveyedLegs us_survey[] = {
    {Sex::boy, 2.25, 40, 358.9, 22.2, -0.03, 0.4036, 0.0166},
    {Sex::boy, 2.5, 53, 373.5, 23.7, 0.08, 0.4087, 0.0165},
    {Sex::boy, 3, 80, 395.9, 24.2, 0.05, 0.4158, 0.0158},
    {Sex::boy, 4, 116, 434.9, 26.6, -0.2, 0.4288, 0.0152},
    {Sex::boy, 5, 139, 477.7, 26.7, -0.01, 0.4388, 0.0141},
    {Sex::boy, 6, 116, 515.5, 28.7, -0.07, 0.448, 0.012},
    {Sex::boy, 7, 104, 556.6, 31.7, 0.03, 0.4563, 0.0137},
    {Sex::boy, 8, 103, 590.8, 34.6, -0.03, 0.4622, 0.014},
    {Sex::boy, 9, 117, 629.3, 36.5, -0.04, 0.4719, 0.0138},
    {Sex::boy, 10, 121, 656.8, 38.2, -0.1, 0.4757, 0.012},
    {Sex::boy, 11, 139, 682.7, 32.7, -0.18, 0.4796, 0.0121},
    {Sex::boy, 12, 152, 718.9, 43, -0.15, 0.4851, 0.0125},
    {Sex::boy, 13, 152, 753.2, 46.9, -0.25, 0.4884, 0.0126},
    {Sex::boy, 14, 154, 789.8, 48.7, -0.3, 0.4899, 0.0142},
    {Sex::boy, 15, 131, 811.9, 44.3, -0.33, 0.4863, 0.0141},
    {Sex::boy, 16, 98, 841.1, 49, 0.11, 0.4833, 0.0146},
    {Sex::girl, 2.25, 39, 359.8, 19.4, -0.01, 0.4107, 0.0166},
    {Sex::girl, 2.5, 52, 370.5, 19.9, -0.12, 0.4145, 0.0169},
    {Sex::girl, 3, 65, 394.4, 24.1, -0.12, 0.4222, 0.0165},
    {Sex::girl, 4, 106, 442.5, 30.4, 0.11, 0.4364, 0.0175},
    {Sex::girl, 5, 123, 478.4, 29.3, 0.02, 0.4434, 0.0152},
    {Sex::girl, 6, 125, 509.8, 28.8, -0.13, 0.4466, 0.0129},
    {Sex::girl, 7, 122, 550.4, 30.1, -0.2, 0.4567, 0.0119},
    {Sex::girl, 8, 94, 585.4, 34.4, -0.24, 0.4634, 0.0127},
    {Sex::girl, 9, 137, 623.7, 38.9, -0.08, 0.4705, 0.013},
    {Sex::girl, 10, 134, 657, 39.8, -0.07, 0.4768, 0.0133},
    {Sex::girl, 11, 137, 692.4, 43.6, -0.02, 0.4807, 0.0127},
    {Sex::girl, 12, 132, 722.8, 41, -0.2, 0.483, 0.0134},
    {Sex::girl, 13, 160, 745.1, 42.5, -0.27, 0.4805, 0.0143},
    {Sex::girl, 14, 116, 760.8, 44, -0.23, 0.4791, 0.0142},
    {Sex::girl, 15, 131, 768.9, 43.5, -0.04, 0.4757, 0.0136},
    {Sex::girl, 16, 98, 767.8, 40.2, -0.06, 0.4734, 0.0143},
};
// clang-format on

} // namespace saddlerule::testing
