// Leg length over stature, 2 to 18 years: one less the sitting height/height ratio of Fredriks et al., Arch
// Dis Child 2005;90:807-812.
#pragma once

#include "core/fit/growth/table_figure.h"
#include "core/fit/growth/year_curve.h"

#include <array>

namespace saddlerule {

/// The leg's share of stature at one whole year of age.
struct LegShareRow {
    TableFigure mean;
    TableFigure sd;
    TableFigure first_percentile;
    TableFigure last_percentile; ///< the 99th
};

using LegShareTable = std::array<LegShareRow, year_curve_knots>;

inline constexpr LegShareTable boys_leg_share{{
    // mean, sd, 1 %, 99 % at 2, 3, ... 18 years
    {0.3975, 0.021, 0.355, 0.455},
    {0.4293, 0.0193, 0.39, 0.481},
    {0.4463, 0.0187, 0.408, 0.497},
    {0.4551, 0.0172, 0.42, 0.501},
    {0.46, 0.0165, 0.426, 0.504},
    {0.465, 0.0158, 0.432, 0.507},
    {0.4699, 0.0151, 0.438, 0.51},
    {0.4758, 0.0144, 0.446, 0.513},
    {0.4808, 0.0137, 0.452, 0.516},
    {0.4847, 0.013, 0.457, 0.519},
    {0.4877, 0.0129, 0.46, 0.521},
    {0.4917, 0.0128, 0.464, 0.525},
    {0.4927, 0.0134, 0.465, 0.528},
    {0.4907, 0.0134, 0.462, 0.526},
    {0.4888, 0.014, 0.459, 0.526},
    {0.4878, 0.014, 0.458, 0.525},
    {0.4859, 0.0146, 0.455, 0.524},
}};

inline constexpr LegShareTable girls_leg_share{{
    // mean, sd, 1 %, 99 % at 2, 3, ... 18 years
    {0.4005, 0.0221, 0.355, 0.46},
    {0.4333, 0.0203, 0.391, 0.487},
    {0.4482, 0.0191, 0.409, 0.499},
    {0.4551, 0.0177, 0.418, 0.502},
    {0.46, 0.017, 0.424, 0.505},
    {0.4648, 0.0157, 0.432, 0.506},
    {0.4698, 0.015, 0.438, 0.509},
    {0.4747, 0.0143, 0.444, 0.512},
    {0.4788, 0.0148, 0.447, 0.517},
    {0.4817, 0.0141, 0.452, 0.518},
    {0.4847, 0.014, 0.455, 0.521},
    {0.4847, 0.014, 0.455, 0.521},
    {0.4827, 0.0141, 0.453, 0.519},
    {0.4787, 0.0142, 0.448, 0.515},
    {0.4767, 0.0143, 0.446, 0.514},
    {0.4767, 0.0143, 0.446, 0.514},
    {0.4767, 0.0143, 0.446, 0.514},
}};

} // namespace saddlerule
