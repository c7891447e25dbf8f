#include "core/planning/years/family_plan.h"

#include "core/base/sorting/sorting.h"
#include "core/base/statistics/normal_distribution.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

std::int64_t thousandths(Amount amount) {
    return std::llround(amount.in_main_units() * 1000.0);
}

Amount amount_of(std::int64_t thousandths) {
    return Amount::main_units(static_cast<double>(thousandths) / 1000.0);
}

std::int64_t comes_back(const FamilyBike& bike, double resale_share) {
    if (!bike.price || bike.kept)
        return 0;
    return std::llround(static_cast<double>(thousandths(*bike.price)) * resale_share);
}

std::vector<FutureRider> future_riders(const FamilyQuestion& question) {
    std::vector<FutureRider> riders;
    riders.reserve(question.riders.size());
    for (const Rider& rider : question.riders)
        riders.emplace_back(rider, question.today, question.months);
    return riders;
}

class PlanWriter {
public:
    PlanWriter(const FamilyQuestion& question, const std::vector<FutureRider>& riders,
               const FamilyNumbers& numbers, const BestRota& best)
        : question_(question), riders_(riders), numbers_(numbers), best_(best) {}

    FamilyPlan written() {
        plan_.value = best_.value;
        plan_.least = best_.least;
        plan_.least.net -= numbers_.owned_back;
        plan_.exact = best_.exact;
        plan_.net_thousandths = best_.value.net - numbers_.owned_back;
        plan_.riders.resize(riders_.size());
        for (std::size_t rider = 0; rider < riders_.size(); ++rider)
            write_rider(rider);
        write_money();
        write_doubt();
        for (std::size_t bike = 0; bike < question_.bikes.size(); ++bike) {
            const Bike& one = *question_.bikes[bike].bike;
            if (!one.saddle_lowest || !one.saddle_highest)
                plan_.not_measured.push_back(bike);
        }
        return std::move(plan_);
    }

private:
    void write_rider(std::size_t rider) {
        PlannedRider& planned = plan_.riders[rider];
        const int counted = numbers_.problem.counted_from[rider];
        int month = counted;
        for (const RotaStretch& stretch : best_.rota) {
            if (static_cast<std::size_t>(stretch.rider) != rider)
                continue;
            add_gap(rider, month, stretch.from);
            planned.stretches.push_back(written(stretch));
            month = stretch.to;
        }
        add_gap(rider, month, question_.months);
        if (counted > 0)
            planned.not_yet = gap(rider, 0, counted);
    }

    void add_gap(std::size_t rider, int from, int to) {
        if (from < to)
            plan_.riders[rider].gaps.push_back(gap(rider, from, to));
    }

    PlannedGap gap(std::size_t rider, int from, int to) const {
        return {
            .from = from, .to = to, .look_for = look_for(riders_[rider], from, to, question_.least_chance)};
    }

    PlannedStretch written(const RotaStretch& stretch) const {
        const FamilyBike& bike = question_.bikes[stretch.bike];
        const FutureRider& rider = riders_[static_cast<std::size_t>(stretch.rider)];
        PlannedStretch planned{.bike = stretch.bike,
                               .from = stretch.from,
                               .to = stretch.to,
                               .how = bike.owned ? HowTheyGetIt::owned : HowTheyGetIt::bought,
                               .handed_from = {},
                               .saddle_at_start = rider.saddle(*bike.bike, stretch.from),
                               .saddle_at_end = rider.saddle(*bike.bike, stretch.to - 1),
                               .least_chance = 1.0,
                               .checks = rider.checks(*bike.bike, stretch.from)};
        int latest = -1;
        for (const RotaStretch& other : best_.rota) {
            if (other.bike == stretch.bike && other.to <= stretch.from && other.to > latest) {
                latest = other.to;
                planned.handed_from = static_cast<std::size_t>(other.rider);
                planned.how = HowTheyGetIt::handed_on;
            }
        }
        for (const RotaRide& ride : numbers_.problem.rides) {
            if (ride.rider != stretch.rider || ride.bike != stretch.bike || ride.first > stretch.from ||
                ride.last + 1 < stretch.to)
                continue;
            for (int month = stretch.from; month < stretch.to; ++month)
                planned.least_chance = std::min(
                    planned.least_chance, static_cast<double>(numbers_.problem.chance(ride, month)) / 1e6);
        }
        return planned;
    }

    /// A span that serves whoever rides the bike in the plan: what they need, or where that is more, the bike's own.
    LookFor in_place_of(std::size_t bike, const BikeUse& use) const {
        const Bike& own = *question_.bikes[bike].bike;
        LookFor wanted{.lowest_at_most = Length::metres(100.0),
                       .highest_at_least = Length(),
                       .by = use.from,
                       .until = use.to,
                       .pedals = own.kind == BikeKind::pedal};
        const double share = std::max((1.0 - question_.least_chance) / 2.0, 1e-6);
        for (const RotaStretch& stretch : best_.rota) {
            if (stretch.bike != bike)
                continue;
            const FutureRider& rider = riders_[static_cast<std::size_t>(stretch.rider)];
            wanted.lowest_at_most =
                std::min(wanted.lowest_at_most, rider.lowest_at_most(stretch.from, stretch.to, share));
            wanted.highest_at_least =
                std::max(wanted.highest_at_least, rider.highest_at_least(stretch.to, share));
        }
        if (wanted.lowest_at_most < *own.saddle_lowest || wanted.highest_at_least > *own.saddle_highest) {
            wanted.lowest_at_most = *own.saddle_lowest;
            wanted.highest_at_least = *own.saddle_highest;
        }
        return wanted;
    }

    void write_money() {
        const auto uses = uses_of(numbers_.problem, best_.rota);
        std::vector<std::int64_t> shares(riders_.size(), 0);
        for (std::size_t bike = 0; bike < uses.size(); ++bike) {
            const FamilyBike& one = question_.bikes[bike];
            if (!one.owned && !uses[bike])
                continue;
            if (!one.owned) {
                plan_.purchases.push_back(
                    {.bike = bike, .month = uses[bike]->from, .look_for = in_place_of(bike, *uses[bike])});
                share_out(bike, numbers_.problem.bikes[bike].net, shares);
            }
            if (!one.kept && one.price)
                plan_.sales.push_back({.bike = bike,
                                       .month = uses[bike] ? uses[bike]->to : 0,
                                       .back = amount_of(comes_back(one, question_.resale_share))});
        }
        for (std::size_t rider = 0; rider < riders_.size(); ++rider)
            plan_.riders[rider].share_of_cost = amount_of(shares[rider]);
        const auto by_month = [](const auto& a, const auto& b) { return a.month < b.month; };
        insertion_sort(plan_.purchases, by_month);
        insertion_sort(plan_.sales, by_month);
    }

    /// By the months that each rides it; what is left of the rounding goes to the last.
    void share_out(std::size_t bike, std::int64_t net, std::vector<std::int64_t>& shares) const {
        int months = 0;
        for (const RotaStretch& stretch : best_.rota)
            months += stretch.bike == bike ? stretch.to - stretch.from : 0;
        for (const RotaStretch& stretch : best_.rota) {
            if (stretch.bike != bike)
                continue;
            const std::int64_t part = net * (stretch.to - stretch.from) / months;
            shares[static_cast<std::size_t>(stretch.rider)] += part;
            net -= part;
            months -= stretch.to - stretch.from;
        }
    }

    /// A child is a score here: those between the highest `reach` and the lowest `leave` so far have fitted all along.
    void write_doubt() {
        plan_.holds.assign(static_cast<std::size_t>(question_.months), 1.0);
        for (std::size_t rider = 0; rider < riders_.size(); ++rider) {
            double reach = -9.0;
            double leave = 9.0;
            std::vector<double> still(plan_.holds.size(), 1.0);
            int month = 0;
            const auto hold_to = [&](int to) {
                for (; month < to; ++month)
                    still[place_of(month)] = std::max(normal::cdf(leave) - normal::cdf(reach), 0.0);
            };
            for (const PlannedStretch& stretch : plan_.riders[rider].stretches) {
                hold_to(stretch.from);
                const auto limits = riders_[rider].limits(*question_.bikes[stretch.bike].bike);
                while (month < stretch.to) {
                    reach = std::max(reach, (*limits)[place_of(month)].reach);
                    leave = std::min(leave, (*limits)[place_of(month)].leave);
                    hold_to(month + 1);
                }
            }
            hold_to(question_.months);
            for (std::size_t i = 0; i < still.size(); ++i)
                plan_.holds[i] *= still[i];
        }
    }

    const FamilyQuestion& question_;
    const std::vector<FutureRider>& riders_;
    const FamilyNumbers& numbers_;
    const BestRota& best_;
    FamilyPlan plan_;
};

} // namespace

FamilyNumbers numbers_of(const FamilyQuestion& question, const std::vector<FutureRider>& riders) {
    FamilyNumbers numbers;
    RotaProblem& problem = numbers.problem;
    problem.riders = static_cast<int>(riders.size());
    problem.months = question.months;
    for (int month = 0; month < question.months; ++month) {
        const int months_so_far = static_cast<int>(question.today.month()) - 1 + month;
        problem.year_of_month.push_back(months_so_far / 12);
    }
    if (question.most_per_year)
        problem.most_per_year = thousandths(*question.most_per_year);
    problem.most_bikes = question.most_bikes;
    for (const FamilyBike& bike : question.bikes) {
        const std::int64_t back = comes_back(bike, question.resale_share);
        RotaBike one{.price = 0, .net = 0, .owned = bike.owned, .kept = bike.kept};
        if (bike.owned)
            numbers.owned_back += back;
        else if (bike.price) {
            one.price = thousandths(*bike.price);
            one.net = one.price - back;
        }
        problem.bikes.push_back(one);
    }
    for (std::size_t rider = 0; rider < riders.size(); ++rider) {
        std::optional<int> any_fits;
        for (std::uint32_t at = 0; at < question.bikes.size(); ++at) {
            const FamilyBike& bike = question.bikes[at];
            const auto first = riders[rider].first_fit(*bike.bike, question.least_chance);
            if (!first)
                continue;
            any_fits = std::min(any_fits.value_or(*first), *first);
            if (bike.out || (!bike.owned && !bike.price))
                continue;
            for (const FitRun& run : riders[rider].runs(*bike.bike, question.least_chance)) {
                const int skip = bike.owned ? 0 : std::max(question.buy_from - run.first, 0);
                if (skip >= static_cast<int>(run.chances.size()))
                    continue;
                problem.rides.push_back({.rider = static_cast<int>(rider),
                                         .bike = at,
                                         .first = run.first + skip,
                                         .last = run.first + static_cast<int>(run.chances.size()) - 1,
                                         .chances = problem.chances.size()});
                problem.chances.insert(problem.chances.end(), run.chances.begin() + skip, run.chances.end());
            }
        }
        problem.counted_from.push_back(any_fits.value_or(0));
    }
    return numbers;
}

FamilyPlan plan_family(const FamilyQuestion& question, const RotaEffort& effort) {
    const std::vector<FutureRider> riders = future_riders(question);
    const FamilyNumbers numbers = numbers_of(question, riders);
    const BestRota best = best_rota(numbers.problem, effort);
    return PlanWriter(question, riders, numbers, best).written();
}

} // namespace saddlerule
