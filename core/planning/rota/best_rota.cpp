#include "core/planning/rota/best_rota.h"

#include "core/planning/rota/rota_bound.h"
#include "core/planning/rota/rota_prices.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numeric>
#include <utility>

namespace saddlerule {
namespace {

RotaWorth worth_of(const RotaValue& value, const WorthScale& scale) {
    return {value.gap_months * scale.month() + value.net, value.changes * change_weight - value.chances};
}

/// Prices as they are improved: kept by bike, rider and month, so that rides can be taken out between.
struct FinePrices {
    std::vector<double> share; ///< money of each pair: bike * riders + rider
    std::vector<double> busy;  ///< bike * months + month
    std::vector<double> shed;
    std::vector<double> year;

    RotaPrices rounded(const RotaIndex& index) const {
        RotaPrices prices = RotaPrices::even(index);
        for (std::uint32_t pair = 0; pair < index.pairs.size(); ++pair) {
            const RotaIndex::Pair& one = index.pairs[pair];
            const auto place = one.bike * static_cast<std::size_t>(index.problem.riders);
            const bool alone = index.first_pair[one.bike + 1] - index.first_pair[one.bike] == 1;
            prices.part[pair] = alone ? index.problem.bikes[one.bike].net
                                      : std::llround(share[place + static_cast<std::size_t>(one.rider)]);
            if (alone)
                continue;
            const auto months = static_cast<std::size_t>(index.problem.months);
            for (std::size_t month = one.bike * months; month < (one.bike + 1) * months; ++month)
                prices.busy[month] = std::llround(busy[month]);
        }
        std::transform(shed.begin(), shed.end(), prices.shed.begin(),
                       [](double price) { return std::llround(price); });
        prices.year = year;
        return prices;
    }
};

/// How far the riders' own best paths miss what binds them together.
struct Misses {
    std::vector<double> share;
    std::vector<double> busy;
    std::vector<double> shed;
    std::vector<double> year;

    /// Turns from its own direction towards another: paths jump to and fro, and their mean points the way.
    void turn_to(const Misses& other) {
        if (share.empty()) {
            *this = other;
            return;
        }
        mix(share, other.share);
        mix(busy, other.busy);
        mix(shed, other.shed);
        mix(year, other.year);
    }

    double along(const Misses& other) const {
        return product(share, other.share) + product(busy, other.busy) + product(shed, other.shed) +
               product(year, other.year);
    }
    double square() const { return along(*this); }

private:
    static constexpr double newest = 0.05;

    static void mix(std::vector<double>& own, const std::vector<double>& other) {
        for (std::size_t i = 0; i < own.size(); ++i)
            own[i] += newest * (other[i] - own[i]);
    }
    static double product(const std::vector<double>& a, const std::vector<double>& b) {
        return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
    }
};

class Planner {
public:
    Planner(const RotaProblem& problem, const RotaEffort& effort)
        : effort_(effort), scale_(problem), problem_(problem) {
        const auto bikes = problem.bikes.size();
        const auto months = static_cast<std::size_t>(problem.months);
        const auto riders = static_cast<std::size_t>(problem.riders);
        take(Rota());
        reindex();
        prices_ = {.share = std::vector<double>(bikes * riders, 0.0),
                   .busy = std::vector<double>(bikes * months, 0.0),
                   .shed = std::vector<double>(months, 0.0),
                   .year = std::vector<double>(static_cast<std::size_t>(index_->years()), 0.0)};
        for (const RotaIndex::Pair& pair : index_->pairs) {
            prices_.share[pair.bike * riders + static_cast<std::size_t>(pair.rider)] =
                static_cast<double>(problem.bikes[pair.bike].net) /
                (index_->first_pair[pair.bike + 1] - index_->first_pair[pair.bike]);
        }
    }

    BestRota run() {
        put(prices_);
        take(paths_side_by_side());
        search(first_width);
        std::size_t width = first_width;
        for (int round = 0; !closed() && !stopped_; ++round) {
            improve_prices(round == 0 ? 500 : 200);
            if (closed() || stopped_)
                break;
            leave_out_hopeless();
            search(width);
            if (width == effort_.most_width)
                break;
            width = std::min(width * 4, effort_.most_width);
        }
        return {.rota = std::move(best_),
                .value = scale_.value(worth_),
                .least = scale_.lowest(std::min(proven_, worth_)),
                .exact = closed()};
    }

private:
    bool closed() const { return proven_ >= worth_; }

    bool go_on() {
        if (!stopped_ && effort_.keep_going && !effort_.keep_going())
            stopped_ = true;
        return !stopped_;
    }

    /// Each rider's best path, less the stretches that break a rule together with those of the riders before. Quick however
    /// many bikes there are: a search that is stopped at once has this to answer with.
    Rota paths_side_by_side() const {
        Rota rota;
        for (int rider = 0; rider < problem_.riders; ++rider) {
            for (const RotaStretch& stretch : bound_->path(rider)) {
                rota.push_back(stretch);
                if (!keeps_rules(problem_, rota))
                    rota.pop_back();
            }
        }
        return rota;
    }

    /// Keeps a rota that is better than the best so far.
    void take(Rota rota) {
        const RotaWorth worth = worth_of(value_of(problem_, rota), scale_);
        if (worth < worth_) {
            worth_ = worth;
            best_ = std::move(rota);
        }
    }

    void reindex() {
        index_ = std::make_unique<RotaIndex>(problem_);
        bound_ = std::make_unique<RotaBound>(*index_, scale_);
    }

    /// Puts prices in force. Returns the bound.
    RotaWorth put(const FinePrices& prices) {
        in_force_ = prices.rounded(*index_);
        bound_->price(in_force_);
        const RotaWorth bound = bound_->bound();
        proven_ = std::max(proven_, bound);
        return bound;
    }

    /// The volume algorithm (Barahona and Anbil, Mathematical Programming 87, 2000): steps from the best prices along the
    /// mean of what the paths have missed so far.
    void improve_prices(int rounds) {
        RotaWorth highest = put(prices_);
        Misses direction;
        int since_better = 0;
        for (int round = 0; round < rounds && go_on() && !closed(); ++round) {
            Rota paths;
            for (int rider = 0; rider < problem_.riders; ++rider) {
                const Rota path = bound_->path(rider);
                paths.insert(paths.end(), path.begin(), path.end());
            }
            if (keeps_rules(problem_, paths))
                take(paths);
            const Misses misses = misses_of(paths);
            direction.turn_to(misses);
            const auto distance = static_cast<double>(worth_.major - highest.major);
            const double square = direction.square();
            if (square == 0.0 || distance <= 0.0)
                break;
            FinePrices tried = prices_;
            follow(direction, reach_ * distance / square, tried);
            const RotaWorth bound = put(tried);
            if (bound > highest) {
                highest = bound;
                prices_ = std::move(tried);
                since_better = 0;
                if (misses.along(direction) > 0.0)
                    reach_ = std::min(reach_ * 1.1, 2.0);
            } else if (++since_better == 5) {
                since_better = 0;
                reach_ *= 0.8;
            }
        }
        put(prices_);
    }

    /// At the prices in force.
    Misses misses_of(const Rota& paths) const {
        const auto months = static_cast<std::size_t>(problem_.months);
        const auto riders = static_cast<std::size_t>(problem_.riders);
        Misses misses{.share = std::vector<double>(prices_.share.size(), 0.0),
                      .busy = std::vector<double>(prices_.busy.size(), 0.0),
                      .shed = std::vector<double>(months, 0.0),
                      .year = std::vector<double>(prices_.year.size(), 0.0)};
        const bool few_places = problem_.most_bikes && index_->free_places() < problem_.riders;
        for (const RotaStretch& stretch : paths) {
            const std::size_t bike = stretch.bike;
            misses.share[bike * riders + static_cast<std::size_t>(stretch.rider)] = 1.0;
            for (int month = stretch.from; month < stretch.to; ++month) {
                misses.busy[bike * months + static_cast<std::size_t>(month)] += 1.0;
                if (few_places && !index_->always_in_shed(stretch.bike))
                    misses.shed[static_cast<std::size_t>(month)] += 1.0;
            }
        }
        for (std::uint32_t bike = 0; bike < problem_.bikes.size(); ++bike) {
            const std::uint32_t first = index_->first_pair[bike];
            const std::uint32_t after = index_->first_pair[bike + 1];
            if (after == first)
                continue;
            const std::optional<int> bought = bound_->best_purchase(bike);
            if (bought)
                misses.year[place_of(index_->year(*bought))] +=
                    static_cast<double>(problem_.bikes[bike].price);
            for (std::uint32_t pair = first; pair < after; ++pair) {
                double& miss = misses.share[place(pair)];
                const bool counted = bought && index_->pairs[pair].last >= *bought;
                miss = after - first > 1 ? miss - (counted ? 1.0 : 0.0) : 0.0;
                if (miss < 0.0 && in_force_.part[pair] == 0)
                    miss = 0.0;
            }
            for (int month = 0; month < problem_.months; ++month) {
                const std::size_t at = bike * months + static_cast<std::size_t>(month);
                double& miss = misses.busy[at];
                const bool counted = bought && month >= *bought;
                miss = after - first > 1 ? (miss - (counted ? 1.0 : 0.0)) / month_unit : 0.0;
                if (miss < 0.0 && in_force_.busy[at] == 0)
                    miss = 0.0;
            }
        }
        for (std::size_t month = 0; month < months; ++month) {
            double& miss = misses.shed[month];
            miss = (miss - index_->free_places()) / month_unit;
            if (!few_places || (miss < 0.0 && in_force_.shed[month] == 0))
                miss = 0.0;
        }
        for (std::size_t year = 0; year < misses.year.size(); ++year) {
            double& miss = misses.year[year];
            miss = (miss - static_cast<double>(problem_.most_per_year.value_or(0))) / year_unit();
            if (!problem_.most_per_year || (miss < 0.0 && in_force_.year[year] == 0.0))
                miss = 0.0;
        }
        return misses;
    }

    /// Money is looked at in parts of a year's: the other misses are about one.
    double year_unit() const {
        return static_cast<double>(std::max<std::int64_t>(problem_.most_per_year.value_or(0), 1000));
    }

    std::size_t place(std::uint32_t pair) const {
        const RotaIndex::Pair& one = index_->pairs[pair];
        return one.bike * static_cast<std::size_t>(problem_.riders) + static_cast<std::size_t>(one.rider);
    }

    void follow(const Misses& misses, double step, FinePrices& prices) const {
        const auto move = [&](std::vector<double>& values, const std::vector<double>& by, double unit = 1.0) {
            for (std::size_t i = 0; i < values.size(); ++i)
                values[i] = std::max(values[i] + step * by[i] / unit, 0.0);
        };
        move(prices.share, misses.share);
        move(prices.busy, misses.busy, month_unit);
        move(prices.shed, misses.shed, month_unit);
        move(prices.year, misses.year, year_unit());
    }

    /// Rides that cannot be part of a better plan than the best so far.
    void leave_out_hopeless() {
        const RotaWorth bound = bound_->bound();
        const std::vector<RotaWorth> detours = bound_->detours();
        std::vector<RotaRide> kept;
        for (std::size_t ride = 0; ride < detours.size(); ++ride) {
            if (bound + detours[ride] < worth_)
                kept.push_back(problem_.rides[ride]);
        }
        if (kept.size() == problem_.rides.size())
            return;
        problem_.rides = std::move(kept);
        reindex();
        put(prices_);
    }

    void search(std::size_t width) {
        const KeepGoing keep_going = [this] { return go_on(); };
        RotaSearchResult found = search_rota(*index_, *bound_, worth_, width, keep_going);
        if (found.rota) {
            worth_ = found.worth;
            best_ = std::move(*found.rota);
        }
        if (!found.stopped)
            proven_ = std::max(proven_, std::min(found.left_out, worth_));
    }

    /// Prices of months are smaller than those of bikes. Tried: from 1 to 12, on families like those of the tests.
    static constexpr std::size_t first_width = 16;
    static constexpr double month_unit = 3.0;

    const RotaEffort& effort_;
    WorthScale scale_;
    RotaProblem problem_; ///< rides are taken out of it
    std::unique_ptr<RotaIndex> index_;
    std::unique_ptr<RotaBound> bound_;
    FinePrices prices_;
    RotaPrices in_force_;
    double reach_ = 1.0; ///< of a step along misses, by the one that would close the gap were they straight
    Rota best_;
    RotaWorth worth_ = worst;
    RotaWorth proven_{-worst.major, 0};
    bool stopped_ = false;
};

} // namespace

BestRota best_rota(const RotaProblem& problem, const RotaEffort& effort) {
    return Planner(problem, effort).run();
}

} // namespace saddlerule
