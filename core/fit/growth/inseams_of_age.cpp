#include "core/fit/growth/inseams_of_age.h"

#include "core/base/statistics/normal_distribution.h"
#include "core/fit/growth/growth_limits.h"
#include "core/fit/growth/population.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace saddlerule {

ScoreEstimate inseam_before_reading(const Rider& rider, Sex sex, Days age) {
    ScoreEstimate legs = legs_before_reading(rider.population, sex, age);
    const Lms<Length> reference = leg_length_reference(sex, age);
    const double sole =
        rider.accuracy.sole_sd / reference.median * reference.shape.slope(reference.shape.ratio(legs.mean));
    legs.variance += sole * sole;
    return legs;
}

InseamsOfAge::InseamsOfAge(const Rider& rider, Days age) : sole_(rider.accuracy.sole) {
    for (const Sex sex : {Sex::girl, Sex::boy}) {
        if (!rider.sex || *rider.sex == sex)
            sexes_.push_back({.reference = leg_length_reference(sex, age),
                              .legs = inseam_before_reading(rider, sex, age)});
    }
}

double InseamsOfAge::share_shorter(Length inseam) const {
    const Length leg = std::max(inseam - sole_, growth_limits::shortest_leg);
    double sum = 0.0;
    for (const OneSex& one : sexes_) {
        const double score = one.reference.shape.score(leg / one.reference.median);
        sum += normal::cdf((score - one.legs.mean) / std::sqrt(one.legs.variance));
    }
    return sum / static_cast<double>(sexes_.size());
}

Length InseamsOfAge::centile(double share) const {
    const double z = normal::quantile(share);
    const auto of_sex = [&](const OneSex& one) {
        return one.reference.value(one.legs.mean + z * std::sqrt(one.legs.variance)) + sole_;
    };
    // That of the mixture is between those of its parts.
    Length low = of_sex(sexes_.front());
    Length high = of_sex(sexes_.back());
    if (high < low)
        std::swap(low, high);
    while (high - low > Length::millimetres(0.01)) {
        const Length middle = low + (high - low) / 2.0;
        (share_shorter(middle) < share ? low : high) = middle;
    }
    return low;
}

} // namespace saddlerule
