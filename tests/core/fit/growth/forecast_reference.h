// Leg length forecasts computed by two independent implementations of the drift model, which agree within
// 0.22 mm.
#pragma once

#include "core/fit/rider/rider.h"

namespace saddlerule::testing {

/// Millimetres, years and months. `before`: the leg twelve months earlier, 0 where there is no such reading.
struct ForecastRow {
    Sex sex;
    double age;
    double leg;
    double before;
    int months;
    double p10;
    double median;
    double p90;
};

/// One reading of the leg itself, noise 6 mm.
// clang-format off
constexpr ForecastRow forecast_reference[] = {
    {Sex::boy, 5, 520, 0, 6, 529.8, 539.6, 549.5},
    {Sex::boy, 5, 520, 0, 12, 547, 558.7, 570.6},
    {Sex::boy, 5, 520, 0, 24, 581.8, 595.9, 610.1},
    {Sex::boy, 5, 520, 0, 36, 615.6, 632.2, 648.9},
    {Sex::boy, 5, 520, 0, 48, 646.7, 665.6, 684.7},
    {Sex::girl, 6.5, 560, 0, 6, 570.2, 579.3, 588.3},
    {Sex::girl, 6.5, 560, 0, 12, 587.6, 598, 608.5},
    {Sex::girl, 6.5, 560, 0, 24, 618.8, 633.3, 647.9},
    {Sex::girl, 6.5, 560, 0, 36, 644.5, 666.1, 687.8},
    {Sex::girl, 6.5, 560, 0, 48, 668.7, 698.5, 728.6},
    {Sex::boy, 10, 700, 0, 6, 705.7, 715.6, 725.5},
    {Sex::boy, 10, 700, 0, 12, 718.2, 731.7, 745.2},
    {Sex::boy, 10, 700, 0, 24, 743.5, 766.2, 789},
    {Sex::boy, 10, 700, 0, 36, 776.3, 805.4, 834.7},
    {Sex::boy, 10, 700, 0, 48, 815.7, 842.2, 868.8},
    {Sex::girl, 9, 670, 0, 6, 675.2, 686.4, 697.7},
    {Sex::girl, 9, 670, 0, 12, 687.8, 703.1, 718.4},
    {Sex::girl, 9, 670, 0, 24, 715, 737.2, 759.5},
    {Sex::girl, 9, 670, 0, 36, 747.6, 770.3, 792.9},
    {Sex::girl, 9, 670, 0, 48, 774.6, 796.7, 818.7},
    {Sex::boy, 13, 780, 0, 6, 787.7, 799.1, 810.6},
    {Sex::boy, 13, 780, 0, 12, 800.9, 816.9, 832.8},
    {Sex::boy, 13, 780, 0, 24, 816.8, 845.6, 874.5},
    {Sex::boy, 13, 780, 0, 36, 823, 864.8, 906.7},
    {Sex::boy, 13, 780, 0, 48, 824, 875, 925.9},
    {Sex::girl, 12, 740, 0, 6, 743.5, 754.8, 766},
    {Sex::girl, 12, 740, 0, 12, 749.9, 767.1, 784.3},
    {Sex::girl, 12, 740, 0, 24, 753.2, 783.5, 813.6},
    {Sex::girl, 12, 740, 0, 36, 754, 791, 827.7},
    {Sex::girl, 12, 740, 0, 48, 754.9, 794.5, 833.6},
    {Sex::boy, 11, 730, 695, 6, 735.8, 746.4, 757},
    {Sex::boy, 11, 730, 695, 12, 750.1, 764.7, 779.3},
    {Sex::boy, 11, 730, 695, 24, 783.2, 804.2, 825.3},
    {Sex::boy, 11, 730, 695, 36, 818.9, 840, 861},
    {Sex::boy, 11, 730, 695, 48, 842.6, 865.9, 889.2},
    {Sex::girl, 11, 735, 700, 6, 741.8, 751.6, 761.5},
    {Sex::girl, 11, 735, 700, 12, 755.1, 767.5, 780},
    {Sex::girl, 11, 735, 700, 24, 772.2, 793.2, 814.2},
    {Sex::girl, 11, 735, 700, 36, 775.2, 807.9, 840.3},
    {Sex::girl, 11, 735, 700, 48, 775.2, 813.9, 852.2},
    {Sex::boy, 14.5, 840, 800, 6, 840.9, 853.9, 866.9},
    {Sex::boy, 14.5, 840, 800, 12, 847.5, 866.3, 885.2},
    {Sex::boy, 14.5, 840, 800, 24, 853.8, 882.9, 912.1},
    {Sex::boy, 14.5, 840, 800, 36, 854.3, 890.2, 926.2},
};
// clang-format on

} // namespace saddlerule::testing
