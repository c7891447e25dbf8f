// RiderGrowth: everything the growth model knows about one rider: the ages and sexes the child may have, each
// with its filtered leg length, and the estimate of today's inseam.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/fit/growth/drift_filter.h"
#include "core/fit/rider/rider.h"

#include <vector>

namespace saddlerule {

/// What an inseam rests on.
enum class InseamBasis { measured, estimated_from_stature, estimated_from_age };

/// The inseam in shoes on the day of the question: a normal distribution.
struct InseamToday {
    Length mean;
    Length sd;
    InseamBasis basis = InseamBasis::measured;
};

/// One child the rider may be: a sex and an age, how likely it is, and what the readings say about its legs.
struct GrowthHypothesis {
    Sex sex = Sex::girl;
    Days age_today;
    double weight = 1.0; ///< all together: 1
    LegGrowth legs;      ///< with the published prior; the forecast rests on it
    LegGrowth unpulled;  ///< without a prior on the size; today's estimate rests on it
};

/// Built once per rider and question; everything else is computed from it.
///
/// Sex unknown: both, weighted by the likelihood of the readings. Age unknown: 1.25 (gliding: 1) to 16 at the newest
/// reading, evenly likely before the readings are seen. No reading: from the stature and the leg's share of it, or
/// else from the age alone, among children of the rider's population. A date of birth in the future, or one that no
/// reading can belong to, counts as unknown. Readings that contradict each other beyond chance count as less exact, all of
/// them, so that the estimate is as unsure as they show.
class RiderGrowth {
public:
    static RiderGrowth of(const Rider& rider, CalendarDate today);

    CalendarDate asked_on() const { return asked_on_; }
    InseamBasis basis() const { return basis_; }

    /// The inseam today for the verdict today. A reading is not pulled towards the average child: one reading
    /// made today is returned as it is, with its own sd. Several combine, and growth since the newest is
    /// added.
    InseamToday today() const;

    /// The day from which the legs are known not to have shrunk: that of the newest reading, today without
    /// one.
    CalendarDate known_since() const { return known_since_; }

    /// Thickness of the sole: the difference between leg length and inseam in shoes.
    Length sole() const { return sole_; }

    /// Negligible ones are left out; never empty.
    const std::vector<GrowthHypothesis>& hypotheses() const { return hypotheses_; }

    /// Under 8 the spread of growth rests on stature as a proxy: "less certain for young children".
    bool less_certain_for_young_child() const;

private:
    RiderGrowth(CalendarDate asked_on, CalendarDate known_since, Length sole)
        : asked_on_(asked_on), known_since_(known_since), sole_(sole) {}

    CalendarDate asked_on_;
    CalendarDate known_since_;
    Length sole_;
    Length unscored_; ///< by how much the newest leg is shorter than can be scored
    InseamBasis basis_ = InseamBasis::measured;
    std::vector<GrowthHypothesis> hypotheses_;
};

} // namespace saddlerule
