#include "core/fit/cost/cost_of_fit.h"

#include <algorithm>
#include <array>

namespace saddlerule {

std::string_view name_of(CostGap gap) {
    constexpr std::array<std::string_view, 4> names{"no_price", "no_forecast", "fits_too_briefly",
                                                    "resale_share_out_of_range"};
    return names[static_cast<std::size_t>(gap)];
}

std::variant<CostPerMonth, CostGap>
cost_per_month(const std::optional<Money>& price, const std::optional<TimeOfFit>& fits, double resale_share) {
    if (!price)
        return CostGap::no_price;
    if (!(resale_share >= 0.0 && resale_share <= 1.0))
        return CostGap::resale_share_out_of_range;
    if (!fits)
        return CostGap::no_forecast;
    if (!(fits->mean >= least_time_of_fit))
        return CostGap::fits_too_briefly;

    const double spent = price->in_main_units() * (1.0 - resale_share);
    const auto over = [&](Days time) { return Money::amount(spent / time.in_months(), price->currency()); };
    CostPerMonth cost{.expected = over(fits->mean), .low = over(std::max(fits->p90, fits->mean)), .high = {}};
    if (fits->p10 >= least_time_of_fit)
        cost.high = over(std::min(fits->p10, fits->mean));
    return cost;
}

} // namespace saddlerule
