// Bikes to get: the fewest saddle ranges that would seat everybody who has no bike, in the words of an advert.
#pragma once

#include "core/base/quantities/length.h"
#include "core/fit/bike/bike.h"
#include "core/fit/verdict/fit_verdict.h"

#include <cstddef>
#include <span>
#include <vector>

namespace saddlerule {

/// A rider who needs a bike.
struct Unseated {
    std::size_t rider = 0;
    InseamEstimate inseam;
    WindowOffsets offsets;
    BikeKind kind = BikeKind::pedal;
};

/// Any bike whose lowest saddle is at most the one and whose highest is at least the other fits every rider named.
struct BikeToGet {
    BikeKind kind = BikeKind::pedal;
    Length lowest_at_most;
    Length highest_at_least;
    std::vector<std::size_t> seats; ///< riders
    std::size_t bikes = 0;          ///< how many such bikes it takes
};

/// How long a saddle range one may expect of a bike of that kind that goes down to `lowest`: what is usual on the wheel sizes that do (common
/// practice, see typical_spans), in between in proportion.
Length usual_range(BikeKind kind, Length lowest);

/// The fewest ranges, none longer than usual, that everybody has one of; those that seat most come first. Each end is such that it
/// alone suits with a chance of three quarters, so that both together come to one half, whatever else the bike is.
/// `rounds` riders share a bike.
std::vector<BikeToGet> bikes_to_get(std::span<const Unseated> riders, int rounds);

} // namespace saddlerule
