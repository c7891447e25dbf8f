// What a bike costs a month while it fits.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/money.h"

#include <optional>
#include <string_view>
#include <variant>

namespace saddlerule {

/// Share of the price that comes back when the bike is sold on (assumption; the user's to change).
constexpr double usual_resale_share = 0.5;

/// A bike that fits for less than this has no monthly cost worth a figure.
constexpr Days least_time_of_fit = Days::months(1.0);

/// How long a bike fits, from the forecast.
struct TimeOfFit {
    Days mean;
    Days p10;
    Days p90;
};

struct CostPerMonth {
    Money expected; ///< (price - resale) / mean months
    Money low;      ///< over the long end of the forecast, its p90
    std::optional<Money>
        high; ///< over the short end, its p10; nothing where that is under a month: no upper bound
};

/// Why there is no cost.
enum class CostGap { no_price, no_forecast, fits_too_briefly, resale_share_out_of_range };

/// Its stable name: `no_price`.
std::string_view name_of(CostGap gap);

std::variant<CostPerMonth, CostGap> cost_per_month(const std::optional<Money>& price,
                                                   const std::optional<TimeOfFit>& fits,
                                                   double resale_share = usual_resale_share);

} // namespace saddlerule
