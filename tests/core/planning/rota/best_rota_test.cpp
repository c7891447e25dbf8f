// The best rota against every rota there is, on hundreds of small problems, and the laws that larger ones keep as well. Whole
// families are held against a published solver in tests/wasm-bindings/years-ahead.test.mjs.
#include "core/planning/rota/best_rota.h"

#include "tests/core/planning/rota/random_rota.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <optional>
#include <tuple>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

constexpr int nothing = -1;

auto order_of(const RotaValue& value) {
    return std::tuple(value.gap_months, value.net, value.changes, -value.chances);
}

auto gaps_and_money(const RotaValue& value) {
    return std::tuple(value.gap_months, value.net);
}

/// Every rota of a small problem, by trying them all; values and limits are worked out here and not by the planner's code.
class EveryRota {
public:
    explicit EveryRota(const RotaProblem& problem) : problem_(problem) {
        for (int rider = 0; rider < problem.riders; ++rider) {
            Way way(static_cast<std::size_t>(problem.months), nothing);
            ways_.emplace_back();
            add_ways(rider, 0, way);
        }
        combine(0);
    }

    const RotaValue& best() const { return *best_; }

private:
    using Way = std::vector<int>; ///< the bike of each month

    std::optional<std::int64_t> chance(int rider, int bike, int month) const {
        for (const RotaRide& ride : problem_.rides) {
            if (ride.rider == rider && static_cast<int>(ride.bike) == bike && ride.first <= month &&
                month <= ride.last)
                return problem_.chance(ride, month);
        }
        return std::nullopt;
    }

    void add_ways(int rider, int month, Way& way) {
        if (month == problem_.months) {
            ways_.back().push_back(way);
            return;
        }
        const auto at = static_cast<std::size_t>(month);
        way[at] = nothing;
        add_ways(rider, month + 1, way);
        for (int bike = 0; bike < static_cast<int>(problem_.bikes.size()); ++bike) {
            const auto so_far = way.begin() + month;
            const bool stays = month > 0 && way[at - 1] == bike;
            const bool rode = std::find(way.begin(), so_far, bike) != so_far;
            if (!chance(rider, bike, month) || (rode && !stays))
                continue;
            way[at] = bike;
            add_ways(rider, month + 1, way);
        }
        way[at] = nothing;
    }

    void combine(std::size_t rider) {
        if (rider == ways_.size()) {
            look_at();
            return;
        }
        for (const Way& way : ways_[rider]) {
            const bool shared = std::any_of(chosen_.begin(), chosen_.end(), [&](const Way* other) {
                for (std::size_t month = 0; month < way.size(); ++month) {
                    if (way[month] != nothing && way[month] == (*other)[month])
                        return true;
                }
                return false;
            });
            if (shared)
                continue;
            chosen_.push_back(&way);
            combine(rider + 1);
            chosen_.pop_back();
        }
    }

    void look_at() {
        RotaValue value;
        std::vector<int> first(problem_.bikes.size(), problem_.months);
        std::vector<int> last(problem_.bikes.size(), -1);
        for (std::size_t rider = 0; rider < chosen_.size(); ++rider) {
            for (int month = 0; month < problem_.months; ++month) {
                const auto at = static_cast<std::size_t>(month);
                const int bike = (*chosen_[rider])[at];
                if (bike == nothing) {
                    value.gap_months += month >= problem_.counted_from[rider] ? 1 : 0;
                    continue;
                }
                value.changes += month == 0 || (*chosen_[rider])[at - 1] != bike ? 1 : 0;
                value.chances += *chance(static_cast<int>(rider), bike, month);
                const auto used = static_cast<std::size_t>(bike);
                first[used] = std::min(first[used], month);
                last[used] = std::max(last[used], month);
            }
        }
        for (std::size_t bike = 0; bike < first.size(); ++bike)
            value.net += last[bike] >= 0 ? problem_.bikes[bike].net : 0;
        if (best_ && order_of(*best_) <= order_of(value))
            return;
        if (within_limits(first, last))
            best_ = value;
    }

    bool within_limits(const std::vector<int>& first, const std::vector<int>& last) const {
        for (int month = 0; month < problem_.months; ++month) {
            std::int64_t spent = 0;
            int held = 0;
            for (std::size_t i = 0; i < first.size(); ++i) {
                const RotaBike& bike = problem_.bikes[i];
                const bool used = last[i] >= 0;
                if (used && !bike.owned &&
                    problem_.year_of_month[static_cast<std::size_t>(first[i])] ==
                        problem_.year_of_month[static_cast<std::size_t>(month)])
                    spent += bike.price;
                held += (bike.owned || first[i] <= month) && (bike.kept || month <= last[i]) ? 1 : 0;
            }
            if (problem_.most_per_year && spent > *problem_.most_per_year)
                return false;
            if (problem_.most_bikes && held > *problem_.most_bikes)
                return false;
        }
        return true;
    }

    const RotaProblem& problem_;
    std::vector<std::vector<Way>> ways_;
    std::vector<const Way*> chosen_;
    std::optional<RotaValue> best_;
};

/// Compares with every rota there is. Returns whether the planner proved its own.
bool agrees(const RotaProblem& problem) {
    const RotaValue best = EveryRota(problem).best();
    const BestRota found = best_rota(problem, {});
    CHECK(keeps_rules(problem, found.rota));
    CHECK(value_of(problem, found.rota) == found.value);
    CHECK(gaps_and_money(found.least) <= gaps_and_money(best));
    CHECK(order_of(best) <= order_of(found.value));
    if (found.exact) {
        CHECK(order_of(found.value) == order_of(best));
        CHECK(gaps_and_money(found.least) == gaps_and_money(best));
    }
    return found.exact;
}

int count_proven(std::uint64_t seed, RotaSize size, int problems, bool limits = true) {
    RepeatableRandom random(seed);
    int proven = 0;
    for (int i = 0; i < problems; ++i) {
        CAPTURE(seed, size.riders, size.months, size.bikes, i);
        proven += agrees(random_rota(random, size, limits)) ? 1 : 0;
    }
    return proven;
}

RotaProblem without_limits(RotaProblem problem) {
    problem.most_per_year.reset();
    problem.most_bikes.reset();
    return problem;
}

/// The months before which no bike fits stay as they are: what counts is who has a bike.
RotaProblem with_another_bike(RotaProblem problem, RepeatableRandom& random) {
    RotaBike bike = random_rota_bike(random);
    bike.kept = false; // one more that has to stay in the shed takes a place
    problem.bikes.push_back(bike);
    add_rides(problem, static_cast<std::uint32_t>(problem.bikes.size() - 1), random);
    return problem;
}

/// Where many states are worth the same, width costs time and proves little.
const RotaEffort quick{.keep_going = {}, .most_width = 256};

std::int64_t months_with_bike(const Rota& rota) {
    std::int64_t months = 0;
    for (const RotaStretch& stretch : rota)
        months += stretch.to - stretch.from;
    return months;
}

} // namespace

TEST_CASE("One rider's rota is the best of all there are, and proven", "[rota]") {
    CHECK(count_proven(1, {.riders = 1, .months = 6, .bikes = 4}, 300) == 300);
    CHECK(count_proven(2, {.riders = 1, .months = 9, .bikes = 3}, 200) == 200);
    CHECK(count_proven(3, {.riders = 1, .months = 1, .bikes = 3}, 50) == 50);
}

TEST_CASE("Two riders' rota is the best of all there are, and proven", "[rota]") {
    CHECK(count_proven(11, {.riders = 2, .months = 5, .bikes = 3}, 200) == 200);
    CHECK(count_proven(12, {.riders = 2, .months = 4, .bikes = 4}, 100) == 100);
    CHECK(count_proven(13, {.riders = 2, .months = 7, .bikes = 2}, 100, false) == 100);
}

TEST_CASE("Three riders' rota is the best of all there are, and proven", "[rota]") {
    CHECK(count_proven(21, {.riders = 3, .months = 4, .bikes = 2}, 100) == 100);
    CHECK(count_proven(22, {.riders = 3, .months = 3, .bikes = 3}, 100) == 100);
}

TEST_CASE("A rota never has two riders on a bike, whatever stops the search", "[rota]") {
    RepeatableRandom random(31);
    for (int i = 0; i < 40; ++i) {
        const RotaProblem problem =
            random_rota(random, {.riders = 1 + i % 3, .months = 12, .bikes = 3 + below(random, 5)}, true);
        int steps = below(random, 200);
        const BestRota stopped =
            best_rota(problem, {.keep_going = [&] { return --steps > 0; }, .most_width = 256});
        CAPTURE(i);
        CHECK(keeps_rules(problem, stopped.rota));
        CHECK(value_of(problem, stopped.rota) == stopped.value);
        const BestRota full = best_rota(problem, quick);
        CHECK(keeps_rules(problem, full.rota));
        CHECK(value_of(problem, full.rota) == full.value);
        CHECK(gaps_and_money(stopped.least) <= gaps_and_money(full.value));
        CHECK(gaps_and_money(full.least) <= gaps_and_money(stopped.value));
        if (full.exact)
            CHECK(order_of(full.value) <= order_of(stopped.value));
    }
}

TEST_CASE("Without a limit a rota is no worse", "[rota]") {
    RepeatableRandom random(41);
    int compared = 0;
    for (int i = 0; i < 60; ++i) {
        const RotaProblem problem =
            random_rota(random, {.riders = 1 + i % 3, .months = 10, .bikes = 5}, true);
        const BestRota limited = best_rota(problem, quick);
        const BestRota free = best_rota(without_limits(problem), quick);
        CAPTURE(i);
        // Where one of the two is not proven, its bound has to allow for the other.
        CHECK(gaps_and_money(free.least) <= gaps_and_money(limited.value));
        if (free.exact) {
            CHECK(order_of(free.value) <= order_of(limited.value));
            ++compared;
        }
    }
    CHECK(compared > 50);
}

TEST_CASE("With another bike as many months have one", "[rota]") {
    RepeatableRandom random(51);
    int compared = 0;
    for (int i = 0; i < 60; ++i) {
        const RotaProblem problem =
            random_rota(random, {.riders = 1 + i % 3, .months = 10, .bikes = 5}, true);
        RotaProblem more = with_another_bike(problem, random);
        count_months(more, random);
        RotaProblem counted = problem;
        counted.counted_from = more.counted_from;
        const BestRota before = best_rota(counted, quick);
        const BestRota after = best_rota(more, quick);
        CAPTURE(i);
        CHECK(gaps_and_money(after.least) <= gaps_and_money(before.value));
        if (after.exact) {
            CHECK(months_with_bike(after.rota) >= months_with_bike(before.rota));
            ++compared;
        }
    }
    CHECK(compared > 50);
}

TEST_CASE("A rota of no bikes is one gap", "[rota]") {
    RotaProblem problem;
    problem.riders = 2;
    problem.months = 3;
    problem.counted_from = {0, 1};
    problem.year_of_month = {0, 0, 0};
    const BestRota found = best_rota(problem, {});
    CHECK(found.rota.empty());
    CHECK(found.value == RotaValue{.gap_months = 5});
    CHECK(found.exact);
}
