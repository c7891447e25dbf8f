// Assignment: gives each of many askers at most one place, at the least cost of all.
#pragma once

#include "core/planning/assignment/layered_cost.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace saddlerule {

/// A place that an asker may have, and what that costs. Costs may be below zero.
struct Choice {
    std::uint32_t place = 0;
    std::int32_t first = 0; ///< layers 1 to 4; layer 0 is the solver's own: askers who go without
    std::int32_t second = 0;
    std::int64_t third = 0;
    std::int32_t fourth = 0;

    LayeredCost cost() const { return LayeredCost({0, first, second, third, fourth}); }
};

/// Who may have what: choices of one asker after another.
class ChoiceTable {
public:
    void next_asker() { ends_.push_back(choices_.size()); }
    /// Of the asker that the next next_asker() ends.
    void add(const Choice& choice) { choices_.push_back(choice); }

    std::size_t askers() const { return ends_.size(); }
    std::span<const Choice> of(std::size_t asker) const {
        const std::size_t begin = asker == 0 ? 0 : ends_[asker - 1];
        return std::span(choices_).subspan(begin, ends_[asker] - begin);
    }

private:
    std::vector<Choice> choices_;
    std::vector<std::size_t> ends_;
};

/// The place of each asker, or nothing for one who goes without. As few as possible go without; among all such assignments the sum
/// of costs is least. `room` says how many askers each place takes.
///
/// Successive shortest augmenting paths with node potentials (Edmonds and Karp 1972; Tomizawa 1971): exact, because LayeredCost is.
/// At most askers x choices x log(choices) steps; far fewer where places are not short.
std::vector<std::optional<std::uint32_t>> cheapest_assignment(const ChoiceTable& table,
                                                              std::span<const std::uint32_t> room);

} // namespace saddlerule
