// The British reference of leg length, 1990.
#pragma once

#include "core/fit/rider/rider.h"

namespace saddlerule::testing {

/// Leg length, UK 1990: medians at whole years in millimetres. Freeman et al., Arch Dis Child 1995;73:17-24;
/// Cole et al., Stat Med 1998;17:407-429; leg length after Dangour et al., Ann Hum Biol 2002;29:290-305.
struct BritishLegs {
    int age;
    double boys;
    double girls;

    double of(Sex sex) const { return sex == Sex::boy ? boys : girls; }
};

// clang-format off
constexpr BritishLegs british_legs[] = {
    {2, 348.4, 348.2},
    {3, 399.0, 400.4},
    {4, 442.2, 440.9},
    {5, 483.0, 481.3},
    {6, 523.8, 520.2},
    {7, 563.5, 556.7},
    {8, 601.6, 590.6},
    {9, 633.6, 623.9},
    {10, 660.6, 657.4},
    {11, 686.4, 691.4},
    {12, 714.9, 721.9},
    {13, 749.4, 743.3},
    {14, 786.0, 756.1},
    {15, 814.4, 763.6},
    {16, 831.8, 768.1},
    {17, 841.3, 769.7},
    {18, 845.2, 770.0},
};
// clang-format on

} // namespace saddlerule::testing
