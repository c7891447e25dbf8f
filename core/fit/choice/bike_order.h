// The order in which bikes are offered.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/base/quantities/money.h"
#include "core/fit/choice/wants.h"
#include "core/fit/verdict/fit_verdict.h"

#include <optional>
#include <span>
#include <vector>

namespace saddlerule {

/// What the order looks at. What is not known is absent, and comes after what is.
struct OrderFacts {
    Verdict verdict = Verdict::not_measured;
    bool suits_stage = true; ///< pedals where the rider pedals, none where the rider glides
    bool stopped = false;    ///< a check says stop
    bool available = true;
    std::optional<Days> use; ///< mean length of use
    std::optional<CalendarDate> fits_from;
    std::optional<Length> room;   ///< from the saddle setting up to the highest
    std::optional<Length> margin; ///< of the fit
    std::optional<Length> lowest;
    std::optional<Mass> mass;
    std::optional<Amount> cost_per_month;
};

/// The one rule for what comes before what.
///
/// First what suits the stage, then by verdict: fits_now, close_call, too_tall, not_measured, outgrown. Within a verdict what
/// no check stops comes first, then what can be had. Within these by the order asked for; under `lasts` a bike still too tall counts by how soon it fits and an
/// outgrown one by how little it misses.
class BikeOrder {
public:
    BikeOrder(Order order, Length target) : order_(order), target_(target) {}

    /// Below, at or above 0 as `a` comes before, with or after `b`.
    int compared(const OrderFacts& a, const OrderFacts& b) const;

private:
    int by_use(const OrderFacts& a, const OrderFacts& b) const;

    Order order_;
    Length target_; ///< of the rider's window
};

/// Whether a bike is worth a try, and no check stops it: only such a bike is named as the first choice.
bool may_be_first_choice(const OrderFacts& bike);

/// Places of the bikes, best first, as indexes into `bikes`. Equal bikes keep the order of the list.
std::vector<std::size_t> order_of(std::span<const OrderFacts> bikes, Order order, Length target);

} // namespace saddlerule
