// Saddle heights with the doubt of the inseam in them, for a rider whom nobody measured.
#pragma once

#include "core/base/quantities/closed_range.h"
#include "core/base/quantities/length.h"
#include "core/fit/verdict/fit_verdict.h"

namespace saddlerule {

/// From the low edge of the window of a short leg to the high edge of that of a long one: the inseams between which 8 children
/// in 10 like this rider are. As wide as the window itself where the inseam is known exactly.
ClosedRange<Length> likely_window(const InseamEstimate& inseam, const WindowOffsets& offsets);

/// Where the saddle of a bike is set for 8 children in 10 like this rider, within what was measured of its span.
ClosedRange<Length> likely_setting(const SaddleSpan& span, const InseamEstimate& inseam,
                                   const WindowOffsets& offsets);

} // namespace saddlerule
