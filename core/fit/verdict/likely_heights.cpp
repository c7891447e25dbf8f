#include "core/fit/verdict/likely_heights.h"

#include "core/base/statistics/normal_distribution.h"

#include <algorithm>

namespace saddlerule {
namespace {

/// Leaves one child in ten out at either end.
ClosedRange<Length> likely_inseams(const InseamEstimate& inseam) {
    const Length doubt = std::max(inseam.sd, Length()) * normal::rough_quantile(0.9);
    return *ClosedRange<Length>::between(inseam.mean - doubt, inseam.mean + doubt);
}

Length within(const SaddleSpan& span, Length height) {
    if (span.lowest)
        height = std::max(height, *span.lowest);
    return span.highest ? std::min(height, *span.highest) : height;
}

} // namespace

ClosedRange<Length> likely_window(const InseamEstimate& inseam, const WindowOffsets& offsets) {
    const ClosedRange<Length> inseams = likely_inseams(inseam);
    return *ClosedRange<Length>::between(inseams.low() + offsets.range.low(),
                                         inseams.high() + offsets.range.high());
}

ClosedRange<Length> likely_setting(const SaddleSpan& span, const InseamEstimate& inseam,
                                   const WindowOffsets& offsets) {
    const ClosedRange<Length> inseams = likely_inseams(inseam);
    return *ClosedRange<Length>::between(within(span, inseams.low() + offsets.target),
                                         within(span, inseams.high() + offsets.target));
}

} // namespace saddlerule
