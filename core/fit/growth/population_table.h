// How long the legs of children are from country to country, at whole years from 2 to 18, beside the Dutch table of
// leg_length_table.h. Leg length is stature less sitting height.
//
// us: Snyder, Schneider, Owings, Reynolds, Golomb, Schork: Anthropometry of infants, children and youths to age 18 for
// product safety design. UM-HSRI-77-17, 1977, for the US Consumer Product Safety Commission. Summarised by a straight line
// fitted at each age to the children within 0.75 years of it, 62 to 160 of them. The survey's first row is at 2.25 years:
// the one at 2 is that one less the British growth, those at 17 and 18 are the one at 16 with the Dutch growth since.
//
// gb: the British reference of 1990. Freeman et al., Arch Dis Child 1995;73:17-24; Cole et al., Stat Med 1998;17:407-429; leg
// length after Dangour et al., Ann Hum Biol 2002;29:290-305.
#pragma once

#include "core/fit/growth/table_figure.h"
#include "core/fit/growth/year_curve.h"

#include <array>

namespace saddlerule {

/// Legs in millimetres, and their share of the stature, among children of the US survey.
struct SurveyedLegsRow {
    TableFigure leg;
    TableFigure leg_sd;
    TableFigure share;
    TableFigure share_sd;
};

using SurveyedLegsTable = std::array<SurveyedLegsRow, year_curve_knots>;

inline constexpr SurveyedLegsTable boys_us_legs{{
    // leg, sd in millimetres, share of the stature, sd at 2, 3, ... 18 years
    {345.9, 21.4, 0.3985, 0.0166},
    {395.9, 24.2, 0.4158, 0.0158},
    {434.9, 26.6, 0.4288, 0.0152},
    {477.7, 26.7, 0.4388, 0.0141},
    {515.5, 28.7, 0.4480, 0.0120},
    {556.6, 31.7, 0.4563, 0.0137},
    {590.8, 34.6, 0.4622, 0.0140},
    {629.3, 36.5, 0.4719, 0.0138},
    {656.8, 38.2, 0.4757, 0.0120},
    {682.7, 32.7, 0.4796, 0.0121},
    {718.9, 43.0, 0.4851, 0.0125},
    {753.2, 46.9, 0.4884, 0.0126},
    {789.8, 48.7, 0.4899, 0.0142},
    {811.9, 44.3, 0.4863, 0.0141},
    {841.1, 49.0, 0.4833, 0.0146},
    {850.5, 49.5, 0.4833, 0.0146},
    {854.0, 49.8, 0.4833, 0.0146},
}};

inline constexpr SurveyedLegsTable girls_us_legs{{
    // leg, sd in millimetres, share of the stature, sd at 2, 3, ... 18 years
    {346.1, 18.7, 0.4069, 0.0166},
    {394.4, 24.1, 0.4222, 0.0165},
    {442.5, 30.4, 0.4364, 0.0175},
    {478.4, 29.3, 0.4434, 0.0152},
    {509.8, 28.8, 0.4466, 0.0129},
    {550.4, 30.1, 0.4567, 0.0119},
    {585.4, 34.4, 0.4634, 0.0127},
    {623.7, 38.9, 0.4705, 0.0130},
    {657.0, 39.8, 0.4768, 0.0133},
    {692.4, 43.6, 0.4807, 0.0127},
    {722.8, 41.0, 0.4830, 0.0134},
    {745.1, 42.5, 0.4805, 0.0143},
    {760.8, 44.0, 0.4791, 0.0142},
    {768.9, 43.5, 0.4757, 0.0136},
    {767.8, 40.2, 0.4734, 0.0143},
    {769.4, 40.3, 0.4734, 0.0143},
    {770.3, 40.3, 0.4734, 0.0143},
}};

using MedianTable = std::array<TableFigure, year_curve_knots>;

/// Medians in millimetres at 2, 3, ... 18 years.
inline constexpr MedianTable boys_gb_legs{{
    348.4,
    399,
    442.2,
    483,
    523.8,
    563.5,
    601.6,
    633.6,
    660.6,
    686.4,
    714.9,
    749.4,
    786,
    814.4,
    831.8,
    841.3,
    845.2,
}};
inline constexpr MedianTable girls_gb_legs{{
    348.2,
    400.4,
    440.9,
    481.3,
    520.2,
    556.7,
    590.6,
    623.9,
    657.4,
    691.4,
    721.9,
    743.3,
    756.1,
    763.6,
    768.1,
    769.7,
    770,
}};

/// The spread S of British legs, the same at all ages; they are normal (L = 1).
inline constexpr double boys_gb_spread = 0.05504;
inline constexpr double girls_gb_spread = 0.05284;

} // namespace saddlerule
