// Club day: who rides which bike this morning, who is left and why, and which bikes would have been needed.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/fit/bike/bike.h"
#include "core/fit/choice/rider_today.h"
#include "core/fit/rider/rider.h"
#include "core/planning/club/bikes_to_get.h"
#include "core/planning/club/riders_left.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace saddlerule {

/// A rider and a bike by their places in the question. Rounds count from 0.
struct ClubPair {
    std::size_t rider = 0;
    std::size_t bike = 0;
    std::optional<int> round;
};

struct ClubQuestion {
    CalendarDate today;
    std::span<const std::optional<Rider>> riders; ///< nothing for a rider of whom no size is known
    std::span<const Bike> bikes;
    std::vector<bool> absent; ///< one a bike
    std::vector<ClubPair>
        locked; ///< stay as they are, whether they fit or not; no rider twice, no bike more often than there are rounds
    std::vector<ClubPair> never;  ///< not to be made
    std::vector<ClubPair> before; ///< the pairs of last time: kept where that costs nothing
    int rounds = 1;               ///< how many groups ride one after another
    bool off_road = false;
};

/// A rider on a bike, with the fit that was judged.
struct SeatedRider {
    std::size_t rider = 0;
    std::size_t bike = 0;
    int round = 0;
    bool locked = false;
    Fit fit; ///< not measured where nothing is known of the rider
    CheckCounts checks;
};

/// A bike that nobody rides, and the riders it would fit.
struct SpareBike {
    std::size_t bike = 0;
    std::vector<std::size_t> would_fit;
};

struct ClubDay {
    std::vector<std::optional<RiderToday>> riders; ///< as in the question
    std::vector<SeatedRider> seated;               ///< in the order of the riders
    std::vector<RiderLeft> left;                   ///< the waiting list: youngest first
    std::vector<SpareBike> spare;  ///< in the order of the bikes; without those that are absent
    std::vector<BikeToGet> to_get; ///< for all who are left and whose size is known
};

/// The best pairs, in this order: more riders on a bike that fits; a larger sum of chances, in the millionths that answers give;
/// saddles nearer to their targets, in tenths of a millimetre; heavier bikes to heavier riders; pairs of last time.
///
/// Heavier to heavier: the sum of products of both weights, each as its difference from the mean, is largest. A bike whose weight
/// is not known counts as an average one; a rider's is the reference median where it is not known.
ClubDay plan_club_day(const ClubQuestion& question);

} // namespace saddlerule
