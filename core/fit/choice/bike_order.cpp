#include "core/fit/choice/bike_order.h"

#include "core/base/sorting/sorting.h"

#include <numeric>

namespace saddlerule {
namespace {

int place_of(Verdict verdict) {
    switch (verdict) {
    case Verdict::fits_now:
        return 0;
    case Verdict::close_call:
        return 1;
    case Verdict::too_tall:
        return 2;
    case Verdict::not_measured:
        return 3;
    case Verdict::outgrown:
        break;
    }
    return 4;
}

/// -1, 0 or 1 as `a` comes before, with or after `b`. What is absent comes after what is known.
template <typename Quantity, typename Before>
int compare(const std::optional<Quantity>& a, const std::optional<Quantity>& b, Before before) {
    if (!a || !b)
        return static_cast<int>(b.has_value()) - static_cast<int>(a.has_value());
    return before(*a, *b) ? -1 : before(*b, *a) ? 1 : 0;
}

constexpr auto less_first = [](const auto& a, const auto& b) { return a < b; };
constexpr auto more_first = [](const auto& a, const auto& b) { return a > b; };

/// Lowest saddles not above the target first, nearest first; then those above it, nearest first.
auto nearer_from_below(Length target) {
    return [target](Length a, Length b) {
        const bool a_below = a <= target;
        const bool b_below = b <= target;
        if (a_below != b_below)
            return a_below;
        return a_below ? a > b : a < b;
    };
}

} // namespace

int BikeOrder::compared(const OrderFacts& a, const OrderFacts& b) const {
    if (a.suits_stage != b.suits_stage)
        return a.suits_stage ? -1 : 1;
    if (a.verdict != b.verdict)
        return place_of(a.verdict) - place_of(b.verdict);
    if (a.stopped != b.stopped)
        return a.stopped ? 1 : -1;
    if (a.available != b.available)
        return a.available ? -1 : 1;
    switch (order_) {
    case Order::cost:
        return compare(a.cost_per_month, b.cost_per_month, less_first);
    case Order::light:
        return compare(a.mass, b.mass, less_first);
    case Order::closest:
        return compare(a.lowest, b.lowest, nearer_from_below(target_));
    case Order::lasts:
        break;
    }
    return by_use(a, b);
}

int BikeOrder::by_use(const OrderFacts& a, const OrderFacts& b) const {
    if (a.verdict == Verdict::too_tall)
        return compare(a.fits_from, b.fits_from, less_first);
    if (a.verdict == Verdict::outgrown)
        return compare(a.margin, b.margin, more_first);
    if (const int by_room_known = static_cast<int>(b.room.has_value()) - static_cast<int>(a.room.has_value()))
        return by_room_known;
    if (const int by_length = compare(a.use, b.use, more_first))
        return by_length;
    return compare(a.room, b.room, more_first);
}

bool may_be_first_choice(const OrderFacts& bike) {
    const bool worth_trying = bike.verdict == Verdict::fits_now || bike.verdict == Verdict::close_call;
    return worth_trying && bike.suits_stage && !bike.stopped;
}

std::vector<std::size_t> order_of(std::span<const OrderFacts> bikes, Order order, Length target) {
    std::vector<std::size_t> places(bikes.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    const BikeOrder rule(order, target);
    heap_sort(places, [&](std::size_t a, std::size_t b) {
        const int order_of_two = rule.compared(bikes[a], bikes[b]);
        return order_of_two != 0 ? order_of_two < 0 : a < b;
    });
    return places;
}

} // namespace saddlerule
