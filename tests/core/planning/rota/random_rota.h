// Random rota problems for tests: small ones are hard in every way that the planner knows.
#pragma once

#include "core/planning/rota/rota_problem.h"

#include "tests/repeatable_random.h"

#include <algorithm>
#include <cstdint>

namespace saddlerule::testing {

struct RotaSize {
    int riders = 1;
    int months = 6;
    int bikes = 4;
};

/// From 0 to before `count`.
inline int below(RepeatableRandom& random, int count) {
    return static_cast<int>(random.uniform() * count);
}

inline RotaBike random_rota_bike(RepeatableRandom& random) {
    RotaBike bike;
    bike.kept = below(random, 5) == 0;
    bike.owned = below(random, 4) == 0;
    if (bike.owned)
        return bike;
    bike.price = 10'000 * (1 + below(random, 20));
    bike.net = bike.kept ? bike.price : bike.price / 2 + 500 * below(random, 3);
    return bike;
}

inline void add_rides(RotaProblem& problem, std::uint32_t bike, RepeatableRandom& random) {
    for (int rider = 0; rider < problem.riders; ++rider) {
        int first = below(random, problem.months + 1);
        // Now and then with a pause, after which the same bike may be ridden.
        for (int part = below(random, 6) == 0 ? 2 : 1; part > 0 && first < problem.months; --part) {
            const int last = std::min(first + below(random, problem.months), problem.months - 1);
            problem.rides.push_back({.rider = rider,
                                     .bike = bike,
                                     .first = first,
                                     .last = last,
                                     .chances = problem.chances.size()});
            for (int month = first; month <= last; ++month)
                problem.chances.push_back(static_cast<std::uint32_t>(800'000 + 1'000 * below(random, 200)));
            first = last + 2;
        }
    }
}

/// Months count from the first one in which the rider may ride any bike, as in plans, or from an earlier one.
inline void count_months(RotaProblem& problem, RepeatableRandom& random) {
    problem.counted_from.assign(static_cast<std::size_t>(problem.riders), problem.months);
    for (const RotaRide& ride : problem.rides) {
        int& from = problem.counted_from[static_cast<std::size_t>(ride.rider)];
        from = std::min(from, ride.first);
    }
    for (int& from : problem.counted_from)
        from = below(random, 2) == 0 ? from : below(random, from + 1);
}

/// With a third of each limit where `limits` is set.
inline RotaProblem random_rota(RepeatableRandom& random, RotaSize size, bool limits) {
    RotaProblem problem;
    problem.riders = size.riders;
    problem.months = size.months;
    for (int bike = 0; bike < size.bikes; ++bike) {
        // Some that nobody can tell apart.
        if (bike > 0 && below(random, 8) == 0) {
            problem.bikes.push_back(problem.bikes.back());
            const auto rides = problem.rides;
            for (RotaRide ride : rides) {
                if (ride.bike + 1 != static_cast<std::uint32_t>(bike))
                    continue;
                ride.bike = static_cast<std::uint32_t>(bike);
                problem.rides.push_back(ride);
            }
            continue;
        }
        problem.bikes.push_back(random_rota_bike(random));
        add_rides(problem, static_cast<std::uint32_t>(bike), random);
    }
    count_months(problem, random);
    const int first_year = below(random, 4);
    for (int month = 0; month < problem.months; ++month)
        problem.year_of_month.push_back((first_year + month) / 4);
    if (limits && below(random, 3) == 0)
        problem.most_per_year = 10'000 * below(random, 25);
    if (limits && below(random, 3) == 0) {
        int always = 0;
        for (const RotaBike& bike : problem.bikes)
            always += bike.owned && bike.kept ? 1 : 0;
        problem.most_bikes = always + below(random, size.riders + 1);
    }
    return problem;
}

} // namespace saddlerule::testing
