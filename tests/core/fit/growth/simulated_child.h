// SimulatedChild: a child drawn from the stated growth model, who grows month by month.
#pragma once

#include "core/fit/growth/drift_constants.h"
#include "core/fit/growth/drift_filter.h"
#include "core/fit/growth/growth_reference.h"
#include "core/fit/growth/population.h"
#include "core/fit/rider/rider.h"
#include "tests/repeatable_random.h"

#include <cmath>

namespace saddlerule::testing {

/// In shoes with a sole of 20 mm.
class SimulatedChild {
public:
    SimulatedChild(RepeatableRandom& random, Sex sex, double age) : random_(random), sex_(sex), age_(age) {
        const ScoreEstimate legs = legs_before_reading(Population::any, sex, Days::years(age));
        u_ = legs.mean + std::sqrt(legs.variance) * random.normal();
        tau_ = (sex == Sex::boy ? drift::boys_spread : drift::girls_spread) * random.normal();
    }

    double inseam_mm() const {
        const Days age = Days::years(age_);
        const double score = u_ + tau_ * maturing_curve(sex_, age);
        return leg_length_reference(sex_, age).value(score).in_millimetres() + 20.0;
    }
    /// Read at home, with an sd of 8 mm.
    Length home_reading() { return Length::millimetres(inseam_mm() + 8.0 * random_.normal()); }
    void grow_by_months(int months) {
        const double later = age_ + months / 12.0;
        u_ += std::sqrt(drift_variance(sex_, Days::years(age_), Days::years(later))) * random_.normal();
        age_ = later;
    }

private:
    RepeatableRandom& random_;
    Sex sex_;
    double age_;
    double u_ = 0.0;
    double tau_ = 0.0;
};

} // namespace saddlerule::testing
