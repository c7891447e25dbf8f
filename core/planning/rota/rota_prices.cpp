#include "core/planning/rota/rota_prices.h"

#include "core/base/sorting/sorting.h"

#include <algorithm>
#include <numeric>

namespace saddlerule {

RotaIndex::RotaIndex(const RotaProblem& of) : problem(of) {
    const std::size_t rides = problem.rides.size();
    std::vector<std::uint32_t> order(rides);
    std::iota(order.begin(), order.end(), 0U);
    heap_sort(order, [&](std::uint32_t a, std::uint32_t b) {
        const RotaRide& x = problem.rides[a];
        const RotaRide& y = problem.rides[b];
        return x.bike != y.bike     ? x.bike < y.bike
               : x.rider != y.rider ? x.rider < y.rider
                                    : x.first < y.first;
    });
    pair_of_ride.resize(rides);
    first_pair.assign(problem.bikes.size() + 1, 0);
    for (const std::uint32_t ride : order) {
        const RotaRide& one = problem.rides[ride];
        if (pairs.empty() || pairs.back().bike != one.bike || pairs.back().rider != one.rider) {
            pairs.push_back({.rider = one.rider, .bike = one.bike, .last = one.last});
            ++first_pair[one.bike + 1];
        }
        pairs.back().last = one.last;
        pair_of_ride[ride] = static_cast<std::uint32_t>(pairs.size() - 1);
    }
    std::partial_sum(first_pair.begin(), first_pair.end(), first_pair.begin());

    in_month_.resize(static_cast<std::size_t>(problem.riders) * static_cast<std::size_t>(problem.months));
    ride_months.reserve(rides);
    for (std::uint32_t ride = 0; ride < rides; ++ride) {
        const RotaRide& one = problem.rides[ride];
        ride_months.push_back(all_ride_months);
        all_ride_months += static_cast<std::size_t>(one.last - one.first + 1);
        for (int month = one.first; month <= one.last; ++month)
            in_month_[slot_of(one.rider, month)].push_back(ride);
    }

    free_places_ = problem.most_bikes.value_or(0);
    for (std::uint32_t bike = 0; bike < problem.bikes.size(); ++bike)
        free_places_ -= always_in_shed(bike) ? 1 : 0;
}

RotaPrices RotaPrices::even(const RotaIndex& index) {
    RotaPrices prices;
    prices.part.resize(index.pairs.size());
    for (std::uint32_t pair = 0; pair < index.pairs.size(); ++pair) {
        const std::uint32_t bike = index.pairs[pair].bike;
        const auto sharers = static_cast<std::int64_t>(index.first_pair[bike + 1] - index.first_pair[bike]);
        prices.part[pair] = index.problem.bikes[bike].net / sharers;
    }
    const auto months = static_cast<std::size_t>(index.problem.months);
    prices.busy.assign(index.problem.bikes.size() * months, 0);
    prices.shed.assign(months, 0);
    prices.year.assign(static_cast<std::size_t>(index.years()), 0.0);
    return prices;
}

} // namespace saddlerule
