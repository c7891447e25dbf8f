// RiderJudge: one rider made ready to be held against any number of bikes. What depends on the rider alone is worked out once.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/fit/bike/bike.h"
#include "core/fit/checks/check.h"
#include "core/fit/choice/wants.h"
#include "core/fit/cost/cost_of_fit.h"
#include "core/fit/growth/rider_growth.h"
#include "core/fit/lasting/fit_forecast.h"
#include "core/fit/lasting/life_of_fit.h"
#include "core/fit/lasting/raise_list.h"
#include "core/fit/rider/rider.h"
#include "core/fit/verdict/fit_verdict.h"

#include <optional>
#include <variant>
#include <vector>

namespace saddlerule {

/// What is asked: whose bike, when, and what matters beside the fit.
struct FitQuestion {
    Rider rider;
    CalendarDate today;
    Wants wants;
    double resale_share = usual_resale_share;
};

class RiderJudge {
public:
    explicit RiderJudge(const FitQuestion& question);

    const InseamToday& inseam() const { return inseam_; }
    InseamEstimate estimate() const { return {inseam_.mean, inseam_.sd}; }
    const WindowOffsets& offsets() const { return offsets_; }
    /// Of a rider who was not weighed: the reference median, used by the checks, and said so.
    const std::optional<Mass>& assumed_mass() const { return assumed_mass_; }

    /// What the rider would ride as it is: pedals where the rider pedals, none where the rider glides.
    BikeKind kind() const;
    bool suits_stage(const Bike& bike) const;
    Fit fit(const Bike& bike) const;
    LifeOfFit life(const Bike& bike) const;
    std::variant<CostPerMonth, CostGap> cost(const Bike& bike, const LifeOfFit& life) const;
    /// Into a vector that is used again: findings are large, and a list has many bikes.
    void check(const Bike& bike, const Fit& fit, std::vector<CheckResult>& results) const;
    /// Empty for a bike whose saddle cannot be set.
    std::vector<SaddleRaise> raises(const Bike& bike, const Fit& fit) const;

private:
    Stage stage_;
    double resale_share_;
    WindowOffsets offsets_;
    RiderGrowth growth_;
    InseamToday inseam_;
    FitForecast forecast_;
    std::optional<Mass> assumed_mass_;
    CheckedRider checked_;
};

} // namespace saddlerule
