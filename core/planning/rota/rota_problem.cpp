#include "core/planning/rota/rota_problem.h"

#include "core/base/sorting/sorting.h"

#include <algorithm>
#include <array>

namespace saddlerule {
namespace {

const RotaRide* ride_of(const RotaProblem& problem, const RotaStretch& stretch) {
    const auto found = std::find_if(problem.rides.begin(), problem.rides.end(), [&](const RotaRide& ride) {
        return ride.rider == stretch.rider && ride.bike == stretch.bike && ride.first <= stretch.from &&
               stretch.to <= ride.last + 1;
    });
    return found == problem.rides.end() ? nullptr : &*found;
}

bool overlap(const RotaStretch& a, const RotaStretch& b) {
    return a.from < b.to && b.from < a.to;
}

bool keeps_budget(const RotaProblem& problem, const std::vector<std::optional<BikeUse>>& uses) {
    if (!problem.most_per_year)
        return true;
    std::vector<std::int64_t> spent(
        place_of(problem.year_of_month.empty() ? 0 : problem.year_of_month.back() + 1));
    for (std::size_t bike = 0; bike < uses.size(); ++bike) {
        if (uses[bike] && !problem.bikes[bike].owned)
            spent[place_of(problem.year_of_month[place_of(uses[bike]->from)])] += problem.bikes[bike].price;
    }
    return std::all_of(spent.begin(), spent.end(),
                       [&](std::int64_t sum) { return sum <= *problem.most_per_year; });
}

bool keeps_shed(const RotaProblem& problem, const std::vector<std::optional<BikeUse>>& uses) {
    if (!problem.most_bikes)
        return true;
    for (int month = 0; month < problem.months; ++month) {
        int held = 0;
        for (std::size_t i = 0; i < uses.size(); ++i) {
            const RotaBike& bike = problem.bikes[i];
            const bool arrived = bike.owned || (uses[i] && uses[i]->from <= month);
            const bool stays = bike.kept || (uses[i] && month < uses[i]->to);
            held += arrived && stays ? 1 : 0;
        }
        if (held > *problem.most_bikes)
            return false;
    }
    return true;
}

} // namespace

WorthScale::WorthScale(const RotaProblem& problem) {
    // A plan changes at most once a month and rider, and buys nothing twice.
    std::vector<std::int64_t> nets;
    for (const RotaBike& bike : problem.bikes)
        nets.push_back(bike.net);
    const std::size_t most = std::min(nets.size(), static_cast<std::size_t>(problem.riders) *
                                                       static_cast<std::size_t>(problem.months));
    heap_sort(nets, std::greater<>());
    for (std::size_t i = 0; i < most; ++i)
        all_money_ += nets[i];
    month_ = 4 * (all_money_ + 1);
}

RotaValue WorthScale::lowest(RotaWorth worth) const {
    const std::int64_t major = std::max<std::int64_t>(worth.major, 0);
    RotaValue bound{.gap_months = major / month_, .net = major % month_};
    if (bound.net > all_money_)
        bound = {.gap_months = bound.gap_months + 1};
    return bound;
}

RotaValue WorthScale::value(RotaWorth worth) const {
    // minor = changes * weight - chances, with chances below the weight.
    const std::int64_t changes = (worth.minor + change_weight - 1) / change_weight;
    return {.gap_months = worth.major / month_,
            .net = worth.major % month_,
            .changes = changes,
            .chances = changes * change_weight - worth.minor};
}

std::vector<std::optional<BikeUse>> uses_of(const RotaProblem& problem, const Rota& rota) {
    std::vector<std::optional<BikeUse>> uses(problem.bikes.size());
    for (const RotaStretch& stretch : rota) {
        auto& use = uses[stretch.bike];
        use = use ? BikeUse{std::min(use->from, stretch.from), std::max(use->to, stretch.to)}
                  : BikeUse{stretch.from, stretch.to};
    }
    return uses;
}

RotaValue value_of(const RotaProblem& problem, const Rota& rota) {
    RotaValue value;
    for (const int from : problem.counted_from)
        value.gap_months += problem.months - from;
    for (const RotaStretch& stretch : rota) {
        value.gap_months -=
            std::max(stretch.to - std::max(stretch.from, problem.counted_from[place_of(stretch.rider)]), 0);
        ++value.changes;
        if (const RotaRide* ride = ride_of(problem, stretch)) {
            for (int month = stretch.from; month < stretch.to; ++month)
                value.chances += problem.chance(*ride, month);
        }
    }
    const auto uses = uses_of(problem, rota);
    for (std::size_t bike = 0; bike < uses.size(); ++bike)
        value.net += uses[bike] ? problem.bikes[bike].net : 0;
    return value;
}

bool keeps_rules(const RotaProblem& problem, const Rota& rota) {
    for (std::size_t i = 0; i < rota.size(); ++i) {
        if (rota[i].from >= rota[i].to || ride_of(problem, rota[i]) == nullptr)
            return false;
        for (std::size_t j = i + 1; j < rota.size(); ++j) {
            const bool same_rider = rota[i].rider == rota[j].rider;
            const bool same_bike = rota[i].bike == rota[j].bike;
            if ((same_rider && same_bike) || ((same_rider || same_bike) && overlap(rota[i], rota[j])))
                return false;
        }
    }
    const auto uses = uses_of(problem, rota);
    return keeps_budget(problem, uses) && keeps_shed(problem, uses);
}

} // namespace saddlerule
