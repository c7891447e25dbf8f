// InseamsOfAge: how long the legs of other children of one age are, to see a child's own readings among them.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/fit/growth/drift_filter.h"
#include "core/fit/growth/growth_reference.h"
#include "core/fit/rider/rider.h"

#include <vector>

namespace saddlerule {

/// The inseams in shoes of a population's children of one age. Where the sex is unknown: as many girls as boys.
///
/// What an estimate from the age alone rests on: the doubts about crotch and sole are in the spread.
class InseamsOfAge {
public:
    /// Of the rider's population and sex, in soles like the rider's.
    InseamsOfAge(const Rider& rider, Days age);

    /// The share of children with a shorter inseam, 0 to 1.
    double share_shorter(Length inseam) const;
    /// The inseam that a share of the children (0 < share < 1) stays below, to a hundredth of a millimetre.
    Length centile(double share) const;

private:
    struct OneSex {
        Lms<Length> reference;
        ScoreEstimate legs;
    };

    std::vector<OneSex> sexes_; ///< one or two, equally likely
    Length sole_;
};

/// What is known of the legs of the rider's population before any reading, in shoes: with the doubts about crotch and sole.
ScoreEstimate inseam_before_reading(const Rider& rider, Sex sex, Days age);

} // namespace saddlerule
