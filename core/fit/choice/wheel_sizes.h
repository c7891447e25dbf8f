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

/// Common practice, from memory; only until a list is loaded. Balance bikes sit lower for their wheels.
std::span<const TypicalSpan> typical_spans(BikeKind kind);

enum class WheelSizeBasis { list, common_practice };

enum class WheelSizeReason {
    only_one,           ///< no other size suits
    most_fit,           ///< more bikes of it fit than of any other size; of several with as many the largest
    largest_that_suits, ///< by common practice: the largest whose usual lowest saddle is below the target
    also,               ///< suits too
};

struct SuitableWheelSize {
    double nominal_inches;
    WheelSizeBasis basis;
    WheelSizeReason reason;
    int bikes = 0; ///< of that size in the list
    int fit_now = 0;
    int close_calls = 0;
    bool room_below = false; ///< by common practice: the saddle goes lower than it has to
};

/// A bike's wheel and verdict, as the list has them.
struct JudgedWheel {
    std::optional<double> nominal_inches;
    Verdict verdict;
};

/// The sizes that suit, best first. With a list: those of which a bike fits now or, where none does, of
/// which one is a close call, first the one with the most such bikes: a single bike at the edge of its span names no size.
/// By common practice the largest comes first that does not suit at the edge of its span only. A list in which no wheel size is known counts as no list. `kind`: of the bikes that the rider's stage asks for.
std::vector<SuitableWheelSize> suitable_wheel_sizes(std::span<const JudgedWheel> list, BikeKind kind,
                                                    const InseamEstimate& inseam,
                                                    const WindowOffsets& offsets);

} // namespace saddlerule
