#include "core/fit/choice/wheel_sizes.h"

#include "core/base/sorting/sorting.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace saddlerule {
namespace {

using namespace literals;

/// Less than that is the edge of the span (design choice).
constexpr Length clearly_below = 10_mm;

constexpr std::array<TypicalSpan, 3> usual_balance_spans{{
    {10.0, 260_mm, 370_mm},
    {12.0, 300_mm, 450_mm},
    {14.0, 370_mm, 510_mm},
}};

constexpr std::array<TypicalSpan, 7> usual_spans{{
    {12.0, 360_mm, 460_mm},
    {14.0, 420_mm, 540_mm},
    {16.0, 480_mm, 620_mm},
    {18.0, 530_mm, 680_mm},
    {20.0, 570_mm, 760_mm},
    {24.0, 660_mm, 860_mm},
    {26.0, 740_mm, 950_mm},
}};

std::vector<SuitableWheelSize> sizes_of_list(std::span<const JudgedWheel> list) {
    std::vector<SuitableWheelSize> sizes;
    for (const JudgedWheel& wheel : list) {
        if (!wheel.nominal_inches)
            continue;
        auto size = std::find_if(sizes.begin(), sizes.end(), [&](const SuitableWheelSize& known) {
            return known.nominal_inches == *wheel.nominal_inches;
        });
        if (size == sizes.end()) {
            sizes.push_back(
                {*wheel.nominal_inches, WheelSizeBasis::list, WheelSizeReason::also, 0, 0, 0, false});
            size = sizes.end() - 1;
        }
        ++size->bikes;
        size->fit_now += wheel.verdict == Verdict::fits_now ? 1 : 0;
        size->close_calls += wheel.verdict == Verdict::close_call ? 1 : 0;
    }
    return sizes;
}

std::vector<SuitableWheelSize> sizes_of_practice(BikeKind kind, const InseamEstimate& inseam,
                                                 const WindowOffsets& offsets) {
    std::vector<SuitableWheelSize> sizes;
    for (const TypicalSpan& usual : typical_spans(kind)) {
        const Verdict verdict = fit_of({usual.lowest, usual.highest}, inseam, offsets).verdict;
        sizes.push_back({usual.nominal_inches, WheelSizeBasis::common_practice, WheelSizeReason::also, 0,
                         verdict == Verdict::fits_now ? 1 : 0, verdict == Verdict::close_call ? 1 : 0,
                         usual.lowest + clearly_below <= inseam.mean + offsets.target});
    }
    return sizes;
}

void keep_suitable(std::vector<SuitableWheelSize>& sizes) {
    const auto fits = [](const SuitableWheelSize& size) { return size.fit_now > 0; };
    const bool any_fits = std::any_of(sizes.begin(), sizes.end(), fits);
    std::erase_if(sizes, [&](const SuitableWheelSize& size) {
        return any_fits ? size.fit_now == 0 : size.close_calls == 0;
    });
}

} // namespace

std::span<const TypicalSpan> typical_spans(BikeKind kind) {
    if (kind == BikeKind::balance)
        return usual_balance_spans;
    return usual_spans;
}

std::vector<SuitableWheelSize> suitable_wheel_sizes(std::span<const JudgedWheel> list, BikeKind kind,
                                                    const InseamEstimate& inseam,
                                                    const WindowOffsets& offsets) {
    std::vector<SuitableWheelSize> sizes = sizes_of_list(list);
    const bool of_list = !sizes.empty();
    if (!of_list)
        sizes = sizes_of_practice(kind, inseam, offsets);
    keep_suitable(sizes);
    insertion_sort(sizes, [](const SuitableWheelSize& a, const SuitableWheelSize& b) {
        return std::tuple(a.fit_now, a.close_calls, a.room_below, a.nominal_inches) >
               std::tuple(b.fit_now, b.close_calls, b.room_below, b.nominal_inches);
    });
    if (!sizes.empty())
        sizes.front().reason = sizes.size() == 1 ? WheelSizeReason::only_one
                               : of_list         ? WheelSizeReason::most_fit
                                                 : WheelSizeReason::largest_that_suits;
    // Common practice knows spans, not bikes.
    for (SuitableWheelSize& size : sizes) {
        if (size.basis == WheelSizeBasis::common_practice)
            size.fit_now = size.close_calls = 0;
    }
    return sizes;
}

} // namespace saddlerule
