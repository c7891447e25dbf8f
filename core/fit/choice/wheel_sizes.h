// Which nominal wheel sizes suit the reading: of the loaded list, or by common practice while there is none.
#pragma once

#include "core/fit/bike/bike.h"
#include "core/fit/verdict/fit_verdict.h"

#include <optional>
#include <span>
#include <vector>

namespace saddlerule {

/// The saddle range usual on bikes of one wheel size.
struct TypicalSpan {
    double nominal_inches;
    Length lowest;
    Length highest;
};

/// Common practice, from memory; only until a list is loaded.
std::span<const TypicalSpan> typical_spans();

enum class WheelSizeBasis { list, common_practice };

enum class WheelSizeReason {
    only_one,           ///< no other size suits
    largest_that_suits, ///< of several (common practice: the larger one, which leaves space to grow into)
    smaller_also,       ///< suits too, with less space
};

struct SuitableWheelSize {
    double nominal_inches;
    WheelSizeBasis basis;
    WheelSizeReason reason;
    int bikes = 0; ///< of that size in the list
    int fit_now = 0;
    int close_calls = 0;
};

/// A bike's wheel and verdict, as the list has them.
struct JudgedWheel {
    std::optional<double> nominal_inches;
    Verdict verdict;
};

/// The sizes that suit, larger first. With a list: those of which a bike fits now or, where none does, of
/// which one is a close call. A list in which no wheel size is known counts as no list.
std::vector<SuitableWheelSize> suitable_wheel_sizes(std::span<const JudgedWheel> list,
                                                    const InseamEstimate& inseam,
                                                    const WindowOffsets& offsets);

} // namespace saddlerule
