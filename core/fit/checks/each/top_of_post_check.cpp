// Top of the post: a setting so high that the minimum-insertion mark may show.
#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/each_check.h"

namespace saddlerule {

std::optional<Finding> each_check::top_of_post(const CheckCase& checked) {
    if (setting_is_out_of_question(checked))
        return std::nullopt;
    const auto setting = taken(checked.saddle_setting);
    const auto highest = taken(checked.bike.saddle_highest);
    if (!setting || !highest) {
        MeasureSet missing = missing_for_setting(checked);
        if (!highest)
            missing.add(Measure::saddle_highest);
        return to_be_measured(missing);
    }

    const Length below = *highest - *setting;
    Finding finding;
    finding.basis = inseam_basis(checked.rider);
    finding.figure = below;
    finding.limit.at_least = limits::top_of_post.value;
    if (above(*setting, *highest)) {
        finding.state = CheckState::stop;
        finding.reason = CheckReason::post_above_top;
        finding.further = {{{"over", -below}}};
    } else if (!above(below, limits::top_of_post.value)) {
        finding.state = CheckState::look;
        finding.reason = CheckReason::post_near_top;
    } else {
        finding.state = CheckState::ok;
        finding.reason = CheckReason::post_below_top;
    }
    return finding;
}

} // namespace saddlerule
