#include "core/planning/years/look_for.h"

#include <algorithm>

namespace saddlerule {

std::vector<LookFor> look_for(const FutureRider& rider, int from, int to, double least_chance) {
    // Too tall and outgrown share the doubt; a chance of one is asked of nobody.
    const double share = std::max((1.0 - least_chance) / 2.0, 1e-6);
    std::vector<LookFor> bikes;
    for (int month = from; month < to;) {
        LookFor wanted{.lowest_at_most = {},
                       .highest_at_least = {},
                       .by = month,
                       .until = month,
                       .pedals = rider.pedals(month)};
        while (wanted.until < to && rider.pedals(wanted.until) == wanted.pedals) {
            const Length lowest = rider.lowest_at_most(month, wanted.until + 1, share);
            const Length highest = std::max(rider.highest_at_least(wanted.until + 1, share), lowest);
            if (wanted.until > month && highest - lowest > usual_span)
                break;
            wanted.lowest_at_most = lowest;
            wanted.highest_at_least = highest;
            ++wanted.until;
        }
        month = wanted.until;
        bikes.push_back(wanted);
    }
    return bikes;
}

} // namespace saddlerule
