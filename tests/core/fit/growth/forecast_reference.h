// Leg length forecasts computed by another implementation of the drift model: tests/support/derive-forecast-reference.mjs.
#pragma once

#include "core/fit/rider/rider.h"

namespace saddlerule::testing {

/// Millimetres, years and months. `before`: the leg twelve months earlier, 0 where there is no such reading. Dutch children,
/// readings with an sd of 6 mm, legs without a sole.
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

// clang-format off
constexpr ForecastRow forecast_reference[] = {
    {Sex::boy, 5, 520, 0, 6, 529.7, 539.5, 549.3},
    {Sex::boy, 5, 520, 0, 12, 546.9, 558.7, 570.5},
    {Sex::boy, 5, 520, 0, 24, 581.4, 595.9, 610.5},
    {Sex::boy, 5, 520, 0, 36, 614.7, 632.1, 649.7},
    {Sex::boy, 5, 520, 0, 48, 646.5, 665.6, 684.8},
    {Sex::girl, 6.5, 560, 0, 6, 569.9, 579.3, 588.7},
    {Sex::girl, 6.5, 560, 0, 12, 587.0, 598.0, 609.1},
    {Sex::girl, 6.5, 560, 0, 24, 617.6, 633.3, 649.2},
    {Sex::girl, 6.5, 560, 0, 36, 642.3, 666.1, 690.1},
    {Sex::girl, 6.5, 560, 0, 48, 665.5, 698.5, 732.0},
    {Sex::boy, 10, 700, 0, 6, 706.4, 715.5, 724.6},
    {Sex::boy, 10, 700, 0, 12, 720.0, 731.6, 743.3},
    {Sex::boy, 10, 700, 0, 24, 747.7, 766.1, 784.6},
    {Sex::boy, 10, 700, 0, 36, 781.9, 805.3, 828.7},
    {Sex::boy, 10, 700, 0, 48, 820.6, 842.1, 863.6},
    {Sex::girl, 9, 670, 0, 6, 674.6, 686.5, 698.4},
    {Sex::girl, 9, 670, 0, 12, 686.6, 703.2, 719.9},
    {Sex::girl, 9, 670, 0, 24, 713.1, 737.5, 762.0},
    {Sex::girl, 9, 670, 0, 36, 745.4, 770.4, 795.5},
    {Sex::girl, 9, 670, 0, 48, 772.3, 796.6, 820.8},
    {Sex::boy, 13, 780, 0, 6, 789.0, 799.1, 809.3},
    {Sex::boy, 13, 780, 0, 12, 803.3, 816.8, 830.2},
    {Sex::boy, 13, 780, 0, 24, 821.9, 845.2, 868.6},
    {Sex::boy, 13, 780, 0, 36, 830.7, 864.2, 897.8},
    {Sex::boy, 13, 780, 0, 48, 833.6, 874.3, 914.9},
    {Sex::girl, 12, 740, 0, 6, 743.2, 755.0, 766.8},
    {Sex::girl, 12, 740, 0, 12, 749.0, 767.5, 786.0},
    {Sex::girl, 12, 740, 0, 24, 751.3, 784.3, 817.0},
    {Sex::girl, 12, 740, 0, 36, 751.6, 792.0, 831.9},
    {Sex::girl, 12, 740, 0, 48, 752.4, 795.5, 838.2},
    {Sex::boy, 11, 730, 695, 6, 736.7, 746.0, 755.3},
    {Sex::boy, 11, 730, 695, 12, 751.8, 764.2, 776.6},
    {Sex::boy, 11, 730, 695, 24, 786.2, 803.5, 821.0},
    {Sex::boy, 11, 730, 695, 36, 822.5, 839.5, 856.7},
    {Sex::boy, 11, 730, 695, 48, 847.3, 865.9, 884.6},
    {Sex::girl, 11, 735, 700, 6, 741.1, 751.7, 762.3},
    {Sex::girl, 11, 735, 700, 12, 753.8, 767.5, 781.1},
    {Sex::girl, 11, 735, 700, 24, 769.7, 792.8, 815.9},
    {Sex::girl, 11, 735, 700, 36, 771.4, 807.0, 842.7},
    {Sex::girl, 11, 735, 700, 48, 771.4, 812.8, 854.9},
    {Sex::boy, 14.5, 840, 800, 6, 841.7, 853.1, 864.6},
    {Sex::boy, 14.5, 840, 800, 12, 849.1, 865.2, 881.4},
    {Sex::boy, 14.5, 840, 800, 24, 857.2, 881.5, 905.8},
    {Sex::boy, 14.5, 840, 800, 36, 858.9, 888.5, 918.0},
};
// clang-format on

} // namespace saddlerule::testing
