// RiderJudge: one rider made ready to be held against any number of bikes, today and over the years. What depends on the rider
// alone is worked out once.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/fit/bike/bike.h"
#include "core/fit/choice/rider_today.h"
#include "core/fit/choice/wants.h"
#include "core/fit/cost/cost_of_fit.h"
#include "core/fit/lasting/fit_forecast.h"
#include "core/fit/lasting/life_of_fit.h"
#include "core/fit/lasting/raise_list.h"
#include "core/fit/rider/rider.h"

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

    const InseamToday& inseam() const { return today_.inseam(); }
    InseamEstimate estimate() const { return today_.estimate(); }
    const WindowOffsets& offsets() const { return today_.offsets(); }
    const std::optional<Mass>& assumed_mass() const { return today_.assumed_mass(); }
    BikeKind kind() const { return today_.kind(); }
    bool suits_stage(const Bike& bike) const { return today_.suits_stage(bike); }
    Fit fit(const Bike& bike) const { return today_.fit(bike); }
    void check(const Bike& bike, const Fit& fit, std::vector<CheckResult>& results) const {
        today_.check(bike, fit, results);
    }
    LifeOfFit life(const Bike& bike) const;
    /// When the bike fits, more likely than not: never where it does not suit the stage, unknown where an end of its span is.
    std::optional<std::vector<MonthStretch>> likely_months(const Bike& bike) const;
    std::variant<CostPerMonth, CostGap> cost(const Bike& bike, const LifeOfFit& life) const;
    /// Empty for a bike whose saddle cannot be set.
    std::vector<SaddleRaise> raises(const Bike& bike, const Fit& fit) const;

private:
    double resale_share_;
    RiderToday today_;
    FitForecast forecast_;
};

} // namespace saddlerule
