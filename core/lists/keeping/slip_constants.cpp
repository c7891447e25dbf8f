#include "core/lists/keeping/slip_constants.h"

#include "core/lists/keeping/slip_limits.h"

#include <string>

namespace saddlerule {

std::vector<StatedConstant> slip_constants() {
    constexpr std::string_view sizes = "common practice, from memory: sizes in which bikes are sold";
    std::vector<StatedConstant> all;
    for (const UsualLength& usual : usual_lengths) {
        const std::string name = "slip." + std::string(usual.field);
        all.push_back({name,
                       {usual.low.in_millimetres(), usual.high.in_millimetres()},
                       "mm",
                       sizes,
                       "lengths outside are asked about"});
        all.push_back({name + ".by_wheel",
                       {usual.low_by_wheel, usual.high_by_wheel},
                       "of the wheel with its tyre",
                       sizes,
                       "the same where the wheel is known"});
    }
    for (const UsualRatio& ratio : usual_ratios) {
        all.push_back({"slip." + std::string(usual_lengths[ratio.of].field) + "_by_" +
                           std::string(usual_lengths[ratio.to].field),
                       {ratio.low, ratio.high},
                       "ratio",
                       sizes,
                       "ratios outside are asked about"});
    }
    const auto length = [&](std::string_view name, Length value, std::string_view source,
                            std::string_view reason) {
        all.push_back({"slip." + std::string(name), {value.in_millimetres()}, "mm", source, reason});
    };
    length("narrowest_span", narrowest_span, "common practice",
           "a saddle that moves by less was measured once and written twice");
    length("widest_span", widest_span, "common practice", "no post is longer");
    length("farthest_from_others", farthest_from_others, "assumption",
           "how far a lowest saddle may be from all others of its wheel size");
    all.push_back({"slip.fewest_others",
                   {static_cast<double>(fewest_others)},
                   "bikes",
                   "assumption",
                   "from how many others on that says something"});
    return all;
}

} // namespace saddlerule
