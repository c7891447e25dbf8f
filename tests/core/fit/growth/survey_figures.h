// Heights of two surveys, for checks of the stature reference. Derived by
// tests/support/derive-survey-figures.R.
#pragma once

#include "core/fit/rider/rider.h"

namespace saddlerule::testing {

/// Children of the Dutch survey of 2009 by nearest whole year. Millimetres and years.
struct SurveyedHeight {
    Sex sex;
    int children;
    double mean_age;
    double mean;
    double sd;
};

// clang-format off
constexpr SurveyedHeight dutch_heights[] = {
    {Sex::boy, 435, 1.91, 874.2, 45.6},
    {Sex::girl, 443, 1.91, 860.1, 46.5},
    {Sex::boy, 209, 2.95, 973.4, 41.5},
    {Sex::girl, 205, 2.96, 969.8, 42.8},
    {Sex::boy, 186, 3.91, 1043.1, 46.7},
    {Sex::girl, 206, 3.96, 1042.6, 43.1},
    {Sex::boy, 105, 5.07, 1132.8, 44.7},
    {Sex::girl, 140, 5.05, 1125.2, 52.0},
    {Sex::boy, 118, 5.95, 1192.7, 53.2},
    {Sex::girl, 152, 5.96, 1181.0, 56.4},
    {Sex::boy, 137, 6.98, 1259.8, 58.5},
    {Sex::girl, 174, 7.02, 1257.0, 53.5},
    {Sex::boy, 171, 8.00, 1329.0, 57.3},
    {Sex::girl, 146, 7.98, 1310.4, 60.0},
    {Sex::boy, 220, 9.06, 1389.6, 68.9},
    {Sex::girl, 260, 8.99, 1373.2, 62.2},
    {Sex::boy, 238, 10.00, 1437.5, 63.0},
    {Sex::girl, 296, 10.04, 1429.7, 63.8},
    {Sex::boy, 248, 10.99, 1486.8, 68.0},
    {Sex::girl, 250, 10.99, 1496.6, 70.9},
    {Sex::boy, 197, 11.98, 1553.9, 75.8},
    {Sex::girl, 247, 12.02, 1553.1, 74.7},
    {Sex::boy, 175, 13.00, 1613.9, 89.4},
    {Sex::girl, 215, 13.01, 1616.7, 75.2},
    {Sex::boy, 227, 14.01, 1678.6, 95.8},
    {Sex::girl, 256, 14.01, 1649.8, 65.1},
    {Sex::boy, 221, 15.05, 1763.6, 79.0},
    {Sex::girl, 246, 14.99, 1670.4, 61.5},
    {Sex::boy, 148, 15.97, 1786.7, 70.7},
    {Sex::girl, 179, 15.92, 1678.4, 64.4},
    {Sex::boy, 122, 17.06, 1805.2, 66.7},
    {Sex::girl, 136, 17.01, 1689.9, 70.7},
};
// clang-format on

/// Growth of the Oxford boys, millimetres a year.
struct SurveyedGrowth {
    double from_age;
    double to_age;
    double mean;
    double sd;
};

constexpr SurveyedGrowth oxford_growth[] = {
    {12.0, 13.0, 60.5, 14.0},
    {13.0, 14.0, 71.6, 22.3},
};

} // namespace saddlerule::testing
