#include "core/planning/suits/typical_years.h"

#include "core/fit/growth/growth_reference.h"
#include "core/fit/rider/rider.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

/// The ages that the reference has, for children who sit on bikes.
constexpr int youngest = 1;
constexpr int oldest = 17;

Length middle_inseam(double years) {
    const auto leg = [&](Sex sex) { return leg_length_reference(sex, Days::years(years)).median; };
    return (leg(Sex::girl) + leg(Sex::boy)) / 2.0 + ReadingAccuracy().sole;
}

} // namespace

TypicalYears::TypicalYears() {
    for (int year = youngest; year <= oldest; ++year)
        inseams_.push_back(middle_inseam(year + 0.5));
}

YearRange TypicalYears::of(std::optional<Length> from, std::optional<Length> to) const {
    const auto first = from ? std::lower_bound(inseams_.begin(), inseams_.end(), *from) : inseams_.begin();
    const auto last = to ? std::upper_bound(inseams_.begin(), inseams_.end(), *to) : inseams_.end();
    const auto year = [&](auto at) { return youngest + static_cast<int>(at - inseams_.begin()); };
    YearRange years;
    if (from && to && first >= last) {
        // Between the middles of two years: the nearer one.
        const Length middle = (*from + *to) / 2.0;
        if (first == inseams_.end() || first == inseams_.begin())
            return years;
        const int nearest = middle - *(first - 1) < *first - middle ? year(first - 1) : year(first);
        return {nearest, nearest};
    }
    if (from && first != inseams_.end() && first != inseams_.begin())
        years.from = year(first);
    else if (from && first == inseams_.begin())
        years.from = youngest;
    if (to && last != inseams_.begin() && last != inseams_.end())
        years.to = year(last - 1);
    return years;
}

} // namespace saddlerule
