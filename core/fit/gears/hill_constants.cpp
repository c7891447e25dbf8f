#include "core/fit/gears/hill_constants.h"

#include "core/fit/gears/first_hill.h"

namespace saddlerule {

std::vector<StatedConstant> hill_constants() {
    using namespace first_hill_assumptions;
    constexpr std::string_view assumption = "assumption";
    constexpr std::string_view of_weight = "of the rider's weight";
    return {
        {"hill.slope", {slope}, "rise over run", assumption, "a ramp that a family calls a hill"},
        {"hill.rolling_resistance",
         {rolling_resistance},
         "of the weight",
         "from memory",
         "a child's tyres at a child's pressure"},
        {"hill.peak_over_mean",
         {peak_over_mean},
         "factor",
         "half a sine wave: pi / 2",
         "one leg pushes at a time, and its push rises and falls"},
        {"hill.light_up_to", {light_up_to}, of_weight, assumption, "pushed seated without thinking about it"},
        {"hill.firm_up_to", {firm_up_to}, of_weight, assumption, "above, a child stands up or gets off"},
    };
}

} // namespace saddlerule
