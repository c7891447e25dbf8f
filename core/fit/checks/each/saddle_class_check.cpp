// Saddle-height class: which standard the bike falls under, by its highest saddle.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"

namespace saddlerule {
namespace {

CheckLimit span_between(Length low, Length high) {
    return {.at_least = low, .at_most = high};
}

Finding class_of(Length highest) {
    using each_check::above;
    constexpr Length toy = limits::toy_highest_saddle.value;
    constexpr Length children = limits::young_children_highest_saddle.value;
    constexpr Length young_adult = limits::young_adult_highest_saddle.value;

    Finding finding;
    finding.state = CheckState::ok;
    if (!above(highest, toy)) {
        finding.state = CheckState::look;
        finding.reason = CheckReason::class_toy;
        finding.limit = {.at_least = {}, .at_most = toy};
    } else if (above(children, highest)) {
        finding.reason = CheckReason::class_young_children;
        finding.limit = span_between(toy, children);
    } else if (!above(highest, limits::us_sidewalk_highest_saddle.value)) {
        finding.reason = CheckReason::class_at_both;
        finding.limit = span_between(children, young_adult);
    } else if (above(young_adult, highest)) {
        finding.reason = CheckReason::class_young_adult;
        finding.limit = span_between(children, young_adult);
    } else {
        finding.reason = CheckReason::class_full_size;
        finding.limit = {.at_least = young_adult, .at_most = {}};
    }
    return finding;
}

} // namespace

std::optional<Finding> each_check::saddle_class(const CheckCase& checked) {
    if (checked.bike.kind == BikeKind::balance)
        return std::nullopt; // no pedals: not a bicycle in these standards
    const auto highest = taken(checked.bike.saddle_highest);
    if (!highest)
        return to_be_measured({Measure::saddle_highest});
    Finding finding = class_of(*highest);
    finding.figure = *highest;
    return finding;
}

} // namespace saddlerule
