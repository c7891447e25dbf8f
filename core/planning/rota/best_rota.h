// Best rota: the plan for all riders, proven best, or the best so far with what is proven of it.
#pragma once

#include "core/planning/rota/rota_problem.h"
#include "core/planning/rota/rota_search.h"

#include <cstddef>

namespace saddlerule {

/// How much may be spent on it. There is no clock here: whoever has one says when it is enough.
struct RotaEffort {
    KeepGoing keep_going; ///< asked every few thousand steps; absent: as long as `most_width` allows
    /// States of a month that are looked at, at most. Memory is in proportion to it.
    std::size_t most_width = 2048;
};

struct BestRota {
    Rota rota;
    RotaValue value;
    /// What is proven: no plan has fewer months without a bike, and none with as few costs less than `least.net`.
    RotaValue least;
    bool exact = false; ///< proven best in months, money, changes and chances
};

BestRota best_rota(const RotaProblem& problem, const RotaEffort& effort);

} // namespace saddlerule
