// Leg length (stature less sitting height) for age, Dutch children 2 to 18 years, n = 14,500. Fredriks, van
// Buuren, van Heel, Dijkman-Neerincx, Verloove-Vanhorick, Wit: Nationwide age references for sitting height,
// leg length, and sitting height/height ratio. Arch Dis Child 2005;90:807-812.
#pragma once

#include "core/fit/growth/lms_table.h"

namespace saddlerule {

inline constexpr LmsTable boys_leg_length{{
    // L, M in millimetres, S at 2, 3, ... 18 years
    {0.536, 357.11, 0.071},
    {0.513, 422.89, 0.067},
    {0.53, 471.1, 0.064},
    {0.558, 512.91, 0.062},
    {0.588, 551.43, 0.061},
    {0.617, 588.26, 0.06},
    {0.644, 624.05, 0.06},
    {0.672, 657.2, 0.059},
    {0.703, 688.25, 0.059},
    {0.742, 719.47, 0.059},
    {0.791, 753.32, 0.059},
    {0.851, 791.8, 0.059},
    {0.91, 828.32, 0.058},
    {0.957, 856.18, 0.057},
    {0.99, 874.76, 0.057},
    {1.007, 884.56, 0.057},
    {1.013, 888.21, 0.057},
}};

inline constexpr LmsTable girls_leg_length{{
    // L, M in millimetres, S at 2, 3, ... 18 years
    {0.719, 352.61, 0.069},
    {0.785, 421.45, 0.066},
    {0.764, 468.01, 0.063},
    {0.713, 506.5, 0.061},
    {0.66, 544.52, 0.06},
    {0.625, 583.09, 0.059},
    {0.624, 620.11, 0.058},
    {0.662, 654.09, 0.058},
    {0.738, 686.58, 0.057},
    {0.85, 719.69, 0.057},
    {0.982, 752.47, 0.056},
    {1.101, 778.96, 0.056},
    {1.175, 794.64, 0.056},
    {1.209, 801.53, 0.055},
    {1.225, 804.91, 0.055},
    {1.234, 806.57, 0.055},
    {1.238, 807.49, 0.055},
}};

} // namespace saddlerule
