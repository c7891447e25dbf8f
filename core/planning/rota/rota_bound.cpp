#include "core/planning/rota/rota_bound.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

constexpr std::uint32_t all_riders = 0xffffffff;

} // namespace

void RotaBound::price_bikes() {
    const RotaProblem& problem = index_.problem;
    const int months = problem.months;
    busy_left_.assign(problem.bikes.size() * static_cast<std::size_t>(months + 1), 0);
    profit_.assign(busy_left_.size(), 0);
    profits_.assign(static_cast<std::size_t>(months) + 1, 0);
    for (std::uint32_t bike = 0; bike < problem.bikes.size(); ++bike) {
        if (index_.first_pair[bike] == index_.first_pair[bike + 1])
            continue;
        for (int month = months - 1; month >= 0; --month) {
            busy_left_[cell(bike, month)] =
                busy_left_[cell(bike, month + 1)] +
                prices_->busy[bike * static_cast<std::size_t>(months) + place_of(month)];
            const double charge =
                prices_->year[place_of(index_.year(month))] * static_cast<double>(problem.bikes[bike].price);
            const std::int64_t money = problem.bikes[bike].net + static_cast<std::int64_t>(charge);
            profit_[cell(bike, month)] =
                std::max(profit_[cell(bike, month + 1)], takings(bike, month, all_riders) - money);
            profits_[place_of(month)] += profit_[cell(bike, month)];
        }
    }
}

std::int64_t RotaBound::takings(std::uint32_t bike, int month, std::uint32_t riders) const {
    std::int64_t sum = busy_left_[cell(bike, month)];
    for (std::uint32_t pair = index_.first_pair[bike]; pair < index_.first_pair[bike + 1]; ++pair) {
        const RotaIndex::Pair& one = index_.pairs[pair];
        if (one.last >= month && (riders >> one.rider & 1U) != 0)
            sum += prices_->part[pair];
    }
    return sum;
}

std::optional<int> RotaBound::best_purchase(std::uint32_t bike) const {
    if (profit(bike, 0) == 0)
        return std::nullopt;
    int month = 0;
    while (profit(bike, month + 1) == profit(bike, month))
        ++month;
    return month;
}

void RotaBound::price(const RotaPrices& prices) {
    prices_ = &prices;
    price_bikes();
    const RotaProblem& problem = index_.problem;
    const int months = problem.months;
    places_.assign(static_cast<std::size_t>(months) + 1, 0);
    for (int month = months - 1; month >= 0; --month)
        places_[place_of(month)] =
            places_[place_of(month + 1)] + prices.shed[place_of(month)] * std::max(index_.free_places(), 0);

    free_.resize(static_cast<std::size_t>(problem.riders) * static_cast<std::size_t>(months + 1));
    riding_.resize(index_.all_ride_months);
    for (int rider = 0; rider < problem.riders; ++rider) {
        RotaWorth* const to_come =
            &free_[static_cast<std::size_t>(rider) * static_cast<std::size_t>(months + 1)];
        to_come[months] = {};
        for (int month = months - 1; month >= 0; --month) {
            RotaWorth best = without(rider, month) + to_come[month + 1];
            for (const std::uint32_t ride : index_.rides_in(rider, month)) {
                RotaWorth after = to_come[month + 1];
                if (month < problem.rides[ride].last)
                    after = std::min(after, riding_[slot(ride, month + 1)]);
                const RotaWorth on = month_on(ride, month) + after;
                riding_[slot(ride, month)] = on;
                best = std::min(best, getting_on(ride) + on);
            }
            to_come[month] = best;
        }
    }
}

RotaWorth RotaBound::month_on(std::uint32_t ride, int month) const {
    const RotaRide& one = index_.problem.rides[ride];
    const std::size_t cell = one.bike * static_cast<std::size_t>(index_.problem.months) + place_of(month);
    const std::int64_t place = index_.always_in_shed(one.bike) ? 0 : prices_->shed[place_of(month)];
    return {prices_->busy[cell] + place, -index_.problem.chance(one, month)};
}

std::int64_t RotaBound::promised_money(int month, std::int64_t spent_this_year) const {
    if (!index_.problem.most_per_year || month >= index_.problem.months)
        return 0;
    const int year = index_.year(month);
    const auto most = static_cast<double>(*index_.problem.most_per_year);
    double sum = prices_->year[place_of(year)] * (most - static_cast<double>(spent_this_year));
    for (int later = year + 1; later < index_.years(); ++later)
        sum += prices_->year[place_of(later)] * most;
    return static_cast<std::int64_t>(std::ceil(sum));
}

RotaWorth RotaBound::bound() const {
    RotaWorth sum{-profits(0) - places(0) - promised_money(0, 0), 0};
    for (int rider = 0; rider < index_.problem.riders; ++rider)
        sum += free(rider, 0);
    return sum;
}

Rota RotaBound::path(int rider) const {
    const RotaProblem& problem = index_.problem;
    Rota path;
    int month = 0;
    while (month < problem.months) {
        const RotaWorth best = free(rider, month);
        const auto& rides = index_.rides_in(rider, month);
        const auto on = std::find_if(rides.begin(), rides.end(), [&](std::uint32_t ride) {
            return getting_on(ride) + riding(ride, month) == best;
        });
        if (on == rides.end()) {
            ++month;
            continue;
        }
        RotaStretch stretch{.rider = rider, .bike = problem.rides[*on].bike, .from = month, .to = month + 1};
        while (stretch.to <= problem.rides[*on].last && riding(*on, stretch.to) <= free(rider, stretch.to))
            ++stretch.to;
        path.push_back(stretch);
        month = stretch.to;
    }
    return path;
}

std::vector<RotaWorth> RotaBound::detours() const {
    const RotaProblem& problem = index_.problem;
    const int months = problem.months;
    std::vector<RotaWorth> detours(problem.rides.size(), worst);
    std::vector<RotaWorth> so_far(problem.rides.size(), worst); // on the ride, at the beginning of the month
    std::vector<RotaWorth> reached(static_cast<std::size_t>(months) + 1);
    for (int rider = 0; rider < problem.riders; ++rider) {
        std::fill(reached.begin(), reached.end(), worst);
        reached[0] = {};
        for (int month = 0; month < months; ++month) {
            reached[place_of(month + 1)] =
                std::min(reached[place_of(month + 1)], reached[place_of(month)] + without(rider, month));
            for (const std::uint32_t ride : index_.rides_in(rider, month)) {
                so_far[ride] = std::min(so_far[ride], reached[place_of(month)] + getting_on(ride));
                detours[ride] = std::min(detours[ride], so_far[ride] + riding(ride, month));
                so_far[ride] += month_on(ride, month);
                reached[place_of(month + 1)] = std::min(reached[place_of(month + 1)], so_far[ride]);
            }
        }
        for (std::size_t ride = 0; ride < problem.rides.size(); ++ride) {
            if (problem.rides[ride].rider == rider)
                detours[ride] -= free(rider, 0);
        }
    }
    return detours;
}

} // namespace saddlerule
