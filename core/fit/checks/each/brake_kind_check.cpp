// Brake kind: which systems are fitted, against what the rules ask of a bike of this class.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"

#include <algorithm>

namespace saddlerule {
namespace {

struct Fitted {
    bool front_hand = false;
    bool rear_hand = false;
    bool coaster = false;

    bool rear() const { return rear_hand || coaster; }
    bool none() const { return !front_hand && !rear(); }
};

Fitted fitted_to(const std::vector<Brake>& brakes) {
    const auto has = [&](Brake brake) {
        return std::find(brakes.begin(), brakes.end(), brake) != brakes.end();
    };
    return {.front_hand = has(Brake::front_hand),
            .rear_hand = has(Brake::rear_hand),
            .coaster = has(Brake::coaster)};
}

struct Outcome {
    CheckState state;
    CheckReason reason;
};

/// ISO 8098 and ISO 4210 ask for two independent systems, one front and one rear; the US rule for a rear one,
/// and on sidewalk bicycles for a foot brake.
Outcome judged(const Fitted& fitted, bool toy, bool us_sidewalk) {
    if (fitted.none())
        return toy ? Outcome{CheckState::look, CheckReason::brakes_none_on_toy}
                   : Outcome{CheckState::stop, CheckReason::brakes_none};
    if (!fitted.rear())
        return {CheckState::stop, CheckReason::brakes_front_only};
    if (!fitted.front_hand && !fitted.coaster && us_sidewalk && !toy)
        return {CheckState::stop, CheckReason::brakes_rear_hand_only};
    if (!fitted.front_hand)
        return {CheckState::look,
                fitted.rear_hand ? CheckReason::brakes_no_front : CheckReason::brakes_coaster_only};
    if (us_sidewalk && !fitted.coaster)
        return {CheckState::ok, CheckReason::brakes_two_hands_only};
    return {CheckState::ok, CheckReason::brakes_two_systems};
}

} // namespace

std::optional<Finding> each_check::brake_kind(const CheckCase& checked) {
    // A balance bike is stopped with the feet, and none of these rules covers it.
    if (checked.bike.kind == BikeKind::balance)
        return std::nullopt;
    if (!checked.bike.brakes)
        return to_be_measured({Measure::brakes});

    const auto highest = taken(checked.bike.saddle_highest);
    const bool toy = highest && !above(*highest, limits::toy_highest_saddle.value);
    const bool us_sidewalk = highest && !above(*highest, limits::us_sidewalk_highest_saddle.value);
    const auto [state, reason] = judged(fitted_to(*checked.bike.brakes), toy, us_sidewalk);
    Finding finding;
    finding.state = state;
    finding.reason = reason;
    return finding;
}

} // namespace saddlerule
