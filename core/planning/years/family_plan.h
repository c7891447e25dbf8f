// Family plan: which bike each child rides when over the coming years, what to buy, hand on, sell and look for.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/money.h"
#include "core/fit/bike/bike.h"
#include "core/fit/checks/check.h"
#include "core/fit/rider/rider.h"
#include "core/planning/rota/best_rota.h"
#include "core/planning/years/future_rider.h"
#include "core/planning/years/look_for.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace saddlerule {

/// A bike as the family sees it. All prices are of one currency.
struct FamilyBike {
    const Bike* bike = nullptr;
    std::optional<Amount> price; ///< nothing: cannot be bought
    bool owned = false;
    bool kept = false; ///< never sold
    bool out = false;  ///< not to be ridden in this plan
};

struct FamilyQuestion {
    CalendarDate today;
    int months = 72; ///< 1 to longest_horizon_months
    std::vector<Rider> riders;
    std::vector<FamilyBike> bikes;
    double resale_share = 0.5;
    double least_chance = 0.8;
    std::optional<Amount> most_per_year;
    std::optional<int> most_bikes; ///< not less than the owned ones that are kept
    int buy_from = 0;              ///< the first month in which anything may be bought
};

enum class HowTheyGetIt { bought, owned, handed_on };

struct PlannedStretch {
    std::size_t bike = 0; ///< of the question
    int from = 0;
    int to = 0;
    HowTheyGetIt how = HowTheyGetIt::bought;
    std::optional<std::size_t> handed_from; ///< the rider who had it before
    Length saddle_at_start;
    Length saddle_at_end; ///< in its last month
    double least_chance = 0.0;
    std::vector<CheckResult> checks; ///< in its first month
};

struct PlannedGap {
    int from = 0;
    int to = 0;
    std::vector<LookFor> look_for; ///< bikes that would close it, one after another
};

struct PlannedRider {
    std::vector<PlannedStretch> stretches;
    std::vector<PlannedGap> gaps;
    /// The time before any bike of the list could fit, which is no gap.
    std::optional<PlannedGap> not_yet;
    Amount share_of_cost = Amount::main_units(0.0); ///< of the bikes' net costs, by months ridden
};

struct PlannedPurchase {
    std::size_t bike = 0;
    int month = 0;
    LookFor look_for; ///< what would serve in its place
};

struct PlannedSale {
    std::size_t bike = 0;
    int month = 0; ///< may be the one after the last
    Amount back;
};

struct FamilyPlan {
    std::vector<PlannedRider> riders;
    std::vector<PlannedPurchase> purchases; ///< by month
    std::vector<PlannedSale> sales;         ///< by month
    std::int64_t net_thousandths = 0;       ///< less what comes back for owned bikes
    RotaValue value;
    RotaValue least; ///< net: as net_thousandths
    bool exact = false;
    /// The chance that every child still fits the bike that the plan has for it, from today to each month, where each keeps
    /// its place among children like it and siblings grow independently.
    std::vector<double> holds;
    std::vector<std::size_t> not_measured; ///< bikes with one end of their span unknown
};

FamilyPlan plan_family(const FamilyQuestion& question, const RotaEffort& effort);

/// The part of it that is only numbers, as it is solved: for tests against other solvers. `owned_back`: what comes back for
/// owned bikes, whatever the plan is.
struct FamilyNumbers {
    RotaProblem problem;
    std::int64_t owned_back = 0;
};
FamilyNumbers numbers_of(const FamilyQuestion& question, const std::vector<FutureRider>& riders);

} // namespace saddlerule
