// Rota bound: every rider planned alone at given prices, backwards through the months; together a bound for all plans.
#pragma once

#include "core/planning/rota/rota_prices.h"
#include "core/planning/rota/rota_problem.h"
#include "core/planning/rota/worth.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace saddlerule {

/// Shortest paths over months and bikes at given prices: what is still to come for a rider who is free, or on a bike, at
/// the beginning of a month. Lets a rider take up a bike again, which no plan does: a bound all the same.
class RotaBound {
public:
    RotaBound(const RotaIndex& index, const WorthScale& scale) : index_(index), scale_(scale) {}

    void price(const RotaPrices& prices);

    /// No plan is better.
    RotaWorth bound() const;
    /// The best of one rider alone at these prices.
    Rota path(int rider) const;

    /// To come from a month on, for a rider who is on no bike.
    RotaWorth free(int rider, int month) const {
        return free_[static_cast<std::size_t>(rider) * static_cast<std::size_t>(index_.problem.months + 1) +
                     static_cast<std::size_t>(month)];
    }
    /// To come from a month on, in which the rider rides this bike.
    RotaWorth riding(std::uint32_t ride, int month) const { return riding_[slot(ride, month)]; }
    /// To come from a month on, for a rider who was on this bike the month before.
    RotaWorth coming(std::uint32_t ride, int month) const {
        const RotaRide& one = index_.problem.rides[ride];
        const RotaWorth leaving = free(one.rider, month);
        if (month > one.last)
            return leaving;
        const RotaWorth staying = riding(ride, month);
        return staying < leaving ? staying : leaving;
    }

    /// One month on a bike: its price, and the chance that it fits.
    RotaWorth month_on(std::uint32_t ride, int month) const;
    /// Getting on it: the rider's part of its money, and a change.
    RotaWorth getting_on(std::uint32_t ride) const {
        return {prices_->part[index_.pair_of_ride[ride]], change_weight};
    }
    /// A month without a bike.
    RotaWorth without(int rider, int month) const {
        return {month >= index_.problem.counted_from[static_cast<std::size_t>(rider)] ? scale_.month() : 0,
                0};
    }

    /// The least that prices give back to any plan for what is bought from this month on: what a bike takes in from its
    /// riders above its money, for all bikes that do. And for one bike.
    std::int64_t profits(int month) const { return profits_[static_cast<std::size_t>(month)]; }
    std::int64_t profit(std::uint32_t bike, int month) const { return profit_[cell(bike, month)]; }
    /// The month of the purchase that brings in most, from the first month on; nothing where none brings in anything.
    std::optional<int> best_purchase(std::uint32_t bike) const;
    /// What a bike that is there can still take in from this month on, from the riders of that mask of bits.
    std::int64_t takings(std::uint32_t bike, int month, std::uint32_t riders) const;
    /// For the shed's places from this month on.
    std::int64_t places(int month) const { return places_[static_cast<std::size_t>(month)]; }
    /// The same for what is left of a year's money and of the years after it.
    std::int64_t promised_money(int month, std::int64_t spent_this_year) const;

    /// For each ride, how much worse than its rider's best path the best path through it is, at these prices.
    std::vector<RotaWorth> detours() const;

private:
    std::size_t slot(std::uint32_t ride, int month) const {
        return index_.ride_months[ride] + static_cast<std::size_t>(month - index_.problem.rides[ride].first);
    }
    std::size_t cell(std::uint32_t bike, int month) const {
        return bike * static_cast<std::size_t>(index_.problem.months + 1) + static_cast<std::size_t>(month);
    }
    void price_bikes();

    const RotaIndex& index_;
    const WorthScale& scale_;
    const RotaPrices* prices_ = nullptr;
    std::vector<std::int64_t> busy_left_; ///< of each bike, its busy prices from a month on
    std::vector<std::int64_t> profit_;
    std::vector<std::int64_t> profits_;
    std::vector<std::int64_t> places_;
    std::vector<RotaWorth> free_;
    std::vector<RotaWorth> riding_;
};

} // namespace saddlerule
