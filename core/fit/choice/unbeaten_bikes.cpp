#include "core/fit/choice/unbeaten_bikes.h"

#include "core/base/sorting/sorting.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <limits>
#include <map>
#include <tuple>
#include <utility>

namespace saddlerule {
namespace {

constexpr double worst = std::numeric_limits<double>::infinity();

/// A currency's three letters as one number.
using CurrencyKey = std::uint32_t;

CurrencyKey key_of(Currency currency) {
    CurrencyKey key = 0;
    for (const char letter : currency.code())
        key = key * 256 + static_cast<unsigned char>(letter);
    return key;
}

/// What is against a bike, a bit each. What is against one bike and not against another makes a larger number, or another.
using Faults = std::uint32_t;

constexpr Faults stopped_fault = 8;
constexpr Faults all_but_stopped = 7;

Faults faults_of(const AgainstABike& against) {
    return (against.stopped ? stopped_fault : 0U) + (against.close_call ? 4U : 0U) +
           (against.unavailable ? 2U : 0U) + (against.pauses ? 1U : 0U);
}

/// Calls `visit` with every set of faults that may beat these: none of them stopped, and none with another fault.
template <typename Visit>
void for_each_no_worse(Faults faults, Visit visit) {
    const Faults own = faults & all_but_stopped;
    for (Faults some = 0; some <= own; ++some) {
        if ((some & ~own) == 0)
            visit(some);
    }
}

/// One bike with every figure as a cost: less is better, and what is not known is the worst there is.
struct Costs {
    double brevity = worst;
    double price = worst;
    CurrencyKey currency = 0; ///< 0 where there is no price
    double mass = worst;
    Faults faults = 0;
    std::size_t index = 0;

    auto figures() const { return std::tie(brevity, price, currency, mass, faults); }
};

double cost_of(double figure) {
    return std::isnan(figure) ? worst : figure;
}

Costs costs_of(const ChoiceFigures& bike, std::size_t index) {
    Costs costs;
    costs.index = index;
    costs.faults = faults_of(bike.against);
    if (bike.lasts)
        costs.brevity = cost_of(-bike.lasts->count());
    if (bike.mass)
        costs.mass = cost_of(bike.mass->in_kilograms());
    if (bike.price) {
        costs.price = bike.price->in_main_units();
        costs.currency = key_of(bike.price->currency());
    }
    return costs;
}

bool complete(const Costs& costs) {
    return costs.brevity < worst && costs.price < worst && costs.mass < worst;
}

/// Of bikes met so far, for every price the lightest that costs no more: mass falls as price rises.
class PriceStairs {
public:
    const Costs* lightest_up_to(double price) const {
        const auto above = steps_.upper_bound(price);
        return above == steps_.begin() ? nullptr : &std::prev(above)->second;
    }

    /// A bike that no step beats.
    void add(const Costs& bike) {
        const auto [step, added] = steps_.insert_or_assign(bike.price, bike);
        const auto next = std::next(step);
        steps_.erase(next, std::find_if(next, steps_.end(),
                                        [&](const auto& other) { return other.second.mass < bike.mass; }));
    }

private:
    std::map<double, Costs> steps_;
};

/// Something for each currency. A list has one, or a few with what was merged and taped.
template <typename Value>
class ByCurrency {
public:
    const Value* find(CurrencyKey currency) const {
        const auto found = std::find_if(values_.begin(), values_.end(),
                                        [&](const auto& value) { return value.first == currency; });
        return found == values_.end() ? nullptr : &found->second;
    }

    /// Made as `fresh` where there was none.
    Value& of(CurrencyKey currency, const Value& fresh) {
        if (const Value* found = find(currency))
            return const_cast<Value&>(*found);
        return values_.emplace_back(currency, fresh).second;
    }

private:
    std::vector<std::pair<CurrencyKey, Value>> values_;
};

/// Bikes in the order of brevity, price and mass: whatever beats a bike has been met before it.
class Sweep {
public:
    /// The unbeaten bike that beats this one.
    const Costs* better_than(const Costs& bike) const {
        const Costs* rival = nullptr;
        if (bike.price < worst) {
            const PriceStairs* stairs = by_currency_.find(bike.currency);
            rival = stairs ? stairs->lightest_up_to(bike.price) : nullptr;
        } else if (lightest_) {
            rival = &*lightest_;
        }
        return rival && rival->mass <= bike.mass ? rival : nullptr;
    }

    void add_unbeaten(const Costs& bike) {
        if (bike.price < worst)
            by_currency_.of(bike.currency, {}).add(bike);
        if (!lightest_ || bike.mass < lightest_->mass)
            lightest_ = bike;
    }

private:
    ByCurrency<PriceStairs> by_currency_;
    std::optional<Costs> lightest_;
};

/// The best of each figure, for the reasons.
struct Best {
    double brevity = worst;
    ByCurrency<double> price;
    double mass = worst;
};

/// Of those with no other faults than these.
Best best_of(const std::vector<Costs>& bikes, Faults faults) {
    Best best;
    for (const Costs& bike : bikes) {
        if ((bike.faults & ~faults) != 0)
            continue;
        best.brevity = std::min(best.brevity, bike.brevity);
        best.mass = std::min(best.mass, bike.mass);
        if (bike.price < worst) {
            double& price = best.price.of(bike.currency, worst);
            price = std::min(price, bike.price);
        }
    }
    return best;
}

std::vector<Worth> worth_of(const Costs& bike, const Best& best) {
    std::vector<Worth> worth;
    if (bike.brevity < worst && bike.brevity <= best.brevity)
        worth.push_back(Worth::lasts_longest);
    const double* least_price = best.price.find(bike.currency);
    if (bike.price < worst && (!least_price || bike.price <= *least_price))
        worth.push_back(Worth::cheapest);
    if (bike.mass < worst && bike.mass <= best.mass)
        worth.push_back(Worth::lightest);
    if (worth.empty()) {
        const bool known = bike.brevity < worst || bike.price < worst || bike.mass < worst;
        worth.push_back(known ? Worth::balance : Worth::nothing_to_compare);
    }
    return worth;
}

} // namespace

std::vector<ChoiceStanding> choice_standings(std::span<const ChoiceFigures> bikes) {
    std::vector<Costs> sorted;
    sorted.reserve(bikes.size());
    for (std::size_t i = 0; i < bikes.size(); ++i)
        sorted.push_back(costs_of(bikes[i], i));
    heap_sort(sorted, [](const Costs& a, const Costs& b) {
        return std::tuple_cat(a.figures(), std::tie(a.index)) <
               std::tuple_cat(b.figures(), std::tie(b.index));
    });

    std::vector<ChoiceStanding> standings(bikes.size());
    // One for each set of faults.
    std::array<std::optional<Best>, stopped_fault> best;
    std::array<Sweep, stopped_fault> sweeps;
    const auto better_than = [&](const Costs& bike) {
        const Costs* rival = nullptr;
        for_each_no_worse(bike.faults, [&](Faults faults) {
            if (!rival)
                rival = sweeps[faults].better_than(bike);
        });
        return rival;
    };
    const Costs* previous = nullptr;
    for (const Costs& bike : sorted) {
        ChoiceStanding& standing = standings[bike.index];
        if (previous && previous->figures() == bike.figures()) {
            standing = standings[previous->index]; // equals do not beat each other
        } else if (const Costs* rival = better_than(bike)) {
            standing.standing = complete(bike) ? Standing::beaten : Standing::beaten_as_far_as_known;
            standing.beaten_by = rival->index;
        } else {
            auto& best_of_these = best[bike.faults & all_but_stopped];
            if (!best_of_these)
                best_of_these = best_of(sorted, bike.faults & all_but_stopped);
            standing.worth = worth_of(bike, *best_of_these);
            if (bike.faults < stopped_fault)
                sweeps[bike.faults].add_unbeaten(bike);
        }
        previous = &bike;
    }
    return standings;
}

std::string_view name_of(Standing standing) {
    constexpr std::array<std::string_view, 3> names{"unbeaten", "beaten", "beaten_as_far_as_known"};
    return names[static_cast<std::size_t>(standing)];
}

std::string_view name_of(Worth worth) {
    constexpr std::array<std::string_view, 5> names{"lasts_longest", "cheapest", "lightest", "balance",
                                                    "nothing_to_compare"};
    return names[static_cast<std::size_t>(worth)];
}

} // namespace saddlerule
