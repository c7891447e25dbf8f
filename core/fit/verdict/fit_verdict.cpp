#include "core/fit/verdict/fit_verdict.h"

#include "core/base/statistics/normal_distribution.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

/// How far a span reaches into the window at either edge, and what that is worth.
struct Overlap {
    Length under_high; ///< window high less lowest saddle
    Length over_low;   ///< highest saddle less window low
    double probability;

    Length margin() const { return std::min(under_high, over_low); }
};

/// A span that only touches the window meets it, whatever the last bits of the two figures are.
constexpr Length touching = Length::millimetres(0.001);

class Judge {
public:
    Judge(const InseamEstimate& inseam, const WindowOffsets& offsets)
        : window_(offsets.range.shifted_by(inseam.mean)), target_(inseam.mean + offsets.target),
          sd_(Length::millimetres(
              std::hypot(inseam.sd.in_millimetres(), bike_measurement_sd.in_millimetres()))) {}

    Overlap overlap(Length lowest, Length highest) const {
        const Length under_high = window_.high() - lowest;
        const Length over_low = highest - window_.low();
        const double probability = normal::cdf(under_high / sd_) + normal::cdf(over_low / sd_) - 1.0;
        return {under_high, over_low, std::max(probability, 0.0)};
    }

    Verdict verdict(const Overlap& overlap) const {
        if (overlap.probability > surely_not) {
            const bool meets = overlap.margin() >= -touching;
            return meets && overlap.probability >= surely ? Verdict::fits_now : Verdict::close_call;
        }
        return overlap.under_high < overlap.over_low ? Verdict::too_tall : Verdict::outgrown;
    }

    SaddleSetting setting(const SaddleSpan& span, Length lowest, Length highest) const {
        const Length low = std::max(lowest, window_.low());
        const Length high = std::max(low, std::min(highest, window_.high()));
        const auto reachable = *ClosedRange<Length>::between(low, high);
        SaddleSetting setting{
            .above_floor = reachable.nearest_to(target_), .above_lowest = {}, .below_highest = {}};
        if (span.lowest)
            setting.above_lowest = setting.above_floor - *span.lowest;
        if (span.highest)
            setting.below_highest = *span.highest - setting.above_floor;
        return setting;
    }

    Fit fit(const SaddleSpan& span, Length lowest, Length highest) const {
        const Overlap reach = overlap(lowest, highest);
        Fit result{.verdict = verdict(reach),
                   .probability = reach.probability,
                   .margin = reach.margin(),
                   .setting = {}};
        const bool worth_setting =
            result.verdict == Verdict::fits_now || result.verdict == Verdict::close_call;
        if (worth_setting && reach.margin() >= -touching)
            result.setting = setting(span, lowest, highest);
        return result;
    }

private:
    ClosedRange<Length> window_;
    Length target_;
    Length sd_;
};

} // namespace

Fit fit_of(const SaddleSpan& span, const InseamEstimate& inseam, const WindowOffsets& offsets) {
    const Judge judge(inseam, offsets);
    if (span.lowest && span.highest)
        return judge.fit(span, *span.lowest, *span.highest);
    if (!span.lowest && !span.highest)
        return {};

    // The least the span can be is the one point that was measured; the most reaches as far as matters.
    const Length known = span.lowest ? *span.lowest : *span.highest;
    const Length far = Length::metres(10.0);
    const Fit least = judge.fit(span, known, known);
    const Fit most = span.lowest ? judge.fit(span, known, known + far) : judge.fit(span, known - far, known);
    if (least.verdict == most.verdict)
        return least;
    return {};
}

} // namespace saddlerule
