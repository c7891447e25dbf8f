// Rota search: all riders together, month by month, through the states that can still lead to something better.
#pragma once

#include "core/planning/rota/rota_bound.h"
#include "core/planning/rota/rota_prices.h"
#include "core/planning/rota/rota_problem.h"
#include "core/planning/rota/worth.h"

#include <cstddef>
#include <functional>
#include <optional>

namespace saddlerule {

/// Asked now and then whether to go on.
using KeepGoing = std::function<bool()>;

struct RotaSearchResult {
    /// A rota better than the one to beat, where one was found, and what it is worth.
    std::optional<Rota> rota;
    RotaWorth worth;
    /// No rota better than the one to beat is worth less than this, among those that were left out; `worst` where none was.
    RotaWorth left_out = worst;
    bool stopped = false;
};

/// Goes through the states of each month: who is on which bike, which bikes were bought, who rode them, and what the year's
/// money still is. A state is left where even its bound does not beat `to_beat`, and, the worst first, where there are more
/// than `width`. Exact where nothing was left out for that.
RotaSearchResult search_rota(const RotaIndex& index, const RotaBound& bound, RotaWorth to_beat,
                             std::size_t width, const KeepGoing& keep_going);

} // namespace saddlerule
