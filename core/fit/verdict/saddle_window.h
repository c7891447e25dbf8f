// The saddle window: from an inseam and a stage to the saddle heights that suit, now and as the stage moves
// on.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/closed_range.h"
#include "core/base/quantities/length.h"
#include "core/fit/rider/rider.h"

#include <vector>

namespace saddlerule {

/// Offsets of the saddle's height from the inseam in shoes.
struct WindowOffsets {
    ClosedRange<Length> range;
    Length target;
    const char* basis; ///< where the figures come from
};

/// The rule of the trade for one stage. Confidence matters on side wheels only.
WindowOffsets window_offsets(Stage stage, Confidence confidence);

/// The saddle heights that suit a rider, floor to top of saddle.
struct SaddleWindow {
    ClosedRange<Length> range;
    Length target;
};

SaddleWindow saddle_window(Length inseam_in_shoes, Stage stage, Confidence confidence);

/// A stage and the day it begins.
struct StageFrom {
    CalendarDate from;
    Stage stage;
};

/// How long a stage lasts where the family has set no date (assumption).
constexpr int usual_months_in_stage = 6;

/// The rider's stages from `today` on; the first is the one the family names, whatever dates say. Side wheels
/// become starting, and starting becomes riding, on `riding_from`, or six months on where no date is set or
/// it has passed; a rider coming off side wheels rides six months after that. Gliding stays gliding unless the family has
/// said when the child gets pedals: the next stage needs another bike.
std::vector<StageFrom> stage_timeline(const Rider& rider, CalendarDate today);

} // namespace saddlerule
