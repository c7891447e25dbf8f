// The first choice of a list, for questions that ask for no more than that, and ask many times: what would change it.
#pragma once

#include "core/fit/bike/bike.h"
#include "core/fit/choice/rider_judge.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace saddlerule {

class FirstChoice {
public:
    /// The bikes of a list and those taped beside it, numbered in that order. They must outlive this.
    FirstChoice(std::span<const Bike> list, std::span<const Bike> taped);

    std::span<const Bike* const> bikes() const { return bikes_; }

    /// The number of the first bike in the order of assess() that may be the first choice (bike_order.h); nothing where
    /// there is none.
    ///
    /// Bikes of one span fit alike and last alike, so a span is judged once; and a bike is looked at no closer than it takes
    /// to know that another one comes before it.
    std::optional<std::size_t> of(const FitQuestion& question) const;

private:
    std::vector<const Bike*> bikes_;
    /// Numbers of the bikes of one kind and span, ascending.
    std::vector<std::vector<std::size_t>> alike_;
};

} // namespace saddlerule
