// Rota prices: what riders pay for what they share, so that each can be planned alone and the sum is a bound for all.
#pragma once

#include "core/planning/rota/rota_problem.h"
#include "core/planning/rota/worth.h"

#include <cstdint>
#include <vector>

namespace saddlerule {

/// What stays the same whatever the prices are.
class RotaIndex {
public:
    explicit RotaIndex(const RotaProblem& problem);

    const RotaProblem& problem;

    /// Pairs of a rider and a bike, one for each that has a ride.
    struct Pair {
        int rider = 0;
        std::uint32_t bike = 0;
        int last = 0; ///< the last month in which the rider may ride it
    };
    std::vector<Pair> pairs;
    std::vector<std::uint32_t> pair_of_ride;
    /// Pairs of a bike: from first_pair[bike] to before first_pair[bike + 1].
    std::vector<std::uint32_t> first_pair;

    /// Rides of a rider that cover a month.
    const std::vector<std::uint32_t>& rides_in(int rider, int month) const {
        return in_month_[slot_of(rider, month)];
    }
    /// Where the months of a ride begin in tables of all months of all rides.
    std::vector<std::size_t> ride_months;
    std::size_t all_ride_months = 0;

    int years() const { return problem.year_of_month.empty() ? 1 : problem.year_of_month.back() + 1; }
    int year(int month) const {
        return problem.year_of_month.empty() ? 0 : problem.year_of_month[place_of(month)];
    }
    /// Bikes that may be in the shed beside those that always are.
    int free_places() const { return free_places_; }
    bool always_in_shed(std::uint32_t bike) const {
        return problem.bikes[bike].owned && problem.bikes[bike].kept;
    }

private:
    std::size_t slot_of(int rider, int month) const {
        return static_cast<std::size_t>(rider) * static_cast<std::size_t>(problem.months) +
               static_cast<std::size_t>(month);
    }

    std::vector<std::vector<std::uint32_t>> in_month_;
    int free_places_ = 0;
};

/// Any prices that are not negative give a bound; good ones give a close one. All in the unit of RotaWorth::major.
struct RotaPrices {
    std::vector<std::int64_t> part; ///< of each pair: what the rider pays for getting on the bike
    std::vector<std::int64_t>
        busy; ///< of each bike in each month (bike * months + month), for riding it then
    std::vector<std::int64_t> shed; ///< of each month, for riding a bike that takes a place in the shed
    std::vector<double> year;       ///< of each year, for each thousandth spent

    /// Every rider pays the same part, and nothing else has a price.
    static RotaPrices even(const RotaIndex& index);
};

} // namespace saddlerule
