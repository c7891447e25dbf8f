#include "core/fit/verdict/saddle_window.h"

namespace saddlerule {
namespace {

using namespace literals;

Length side_wheels_target(Confidence confidence) {
    switch (confidence) {
    case Confidence::wary:
        return 0_mm;
    case Confidence::usual:
        return 38_mm; // 1 1/2 in
    case Confidence::bold:
        break;
    }
    return 76_mm; // 3 in
}

ClosedRange<Length> range(Length low, Length high) {
    return *ClosedRange<Length>::between(low, high);
}

} // namespace

WindowOffsets window_offsets(Stage stage, Confidence confidence) {
    switch (stage) {
    case Stage::gliding:
        return {range(-50_mm, -10_mm), -30_mm, "common practice, from memory: knees bent to push"};
    case Stage::side_wheels:
        return {range(0_mm, 76_mm), side_wheels_target(confidence),
                "common practice: 0 to 3 in above the inside leg"};
    case Stage::starting:
        // Low edge: an assumption. High edge too: saddle and tyres give about a centimetre under a child, and
        // the heights in a list are taken unloaded.
        return {range(-25_mm, 10_mm), 0_mm,
                "common practice: both feet flat, saddle height equals inside leg"};
    case Stage::riding:
        break;
    }
    return {range(51_mm, 102_mm), 76_mm, "common practice: tiptoes, 2 to 4 in above the inside leg"};
}

SaddleWindow saddle_window(Length inseam_in_shoes, Stage stage, Confidence confidence) {
    const WindowOffsets offsets = window_offsets(stage, confidence);
    return {offsets.range.shifted_by(inseam_in_shoes), inseam_in_shoes + offsets.target};
}

std::vector<StageFrom> stage_timeline(const Rider& rider, CalendarDate today) {
    std::vector<StageFrom> timeline{{today, rider.stage}};
    const bool date_ahead = rider.riding_from && *rider.riding_from > today;
    CalendarDate moves_on = date_ahead ? *rider.riding_from : today.plus_months(usual_months_in_stage);
    if (rider.stage == Stage::gliding && rider.pedals_from && *rider.pedals_from > today) {
        timeline.push_back({*rider.pedals_from, Stage::starting});
        const bool later = date_ahead && *rider.riding_from > *rider.pedals_from;
        timeline.push_back(
            {later ? moves_on : rider.pedals_from->plus_months(usual_months_in_stage), Stage::riding});
    }
    if (rider.stage == Stage::side_wheels) {
        timeline.push_back({moves_on, Stage::starting});
        moves_on = moves_on.plus_months(usual_months_in_stage);
    }
    if (rider.stage == Stage::side_wheels || rider.stage == Stage::starting)
        timeline.push_back({moves_on, Stage::riding});
    return timeline;
}

} // namespace saddlerule
