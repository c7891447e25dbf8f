// Future rider: one child over the months of a plan: stage, size and weight in each, and which bikes fit when.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/fit/bike/bike.h"
#include "core/fit/checks/check.h"
#include "core/fit/growth/rider_growth.h"
#include "core/fit/lasting/fit_forecast.h"
#include "core/fit/lasting/life_of_fit.h"
#include "core/fit/rider/rider.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace saddlerule {

/// When a child that glides gets pedals where the family has set no date (assumption).
constexpr int usual_months_gliding = 12;

/// Months in a row in which a bike fits, with the chance of each in millionths.
struct FitRun {
    int first = 0;
    std::vector<std::uint32_t> chances;
};

class FutureRider {
public:
    /// Month 0 is that of `today`; months are looked at on the day of the month that today is.
    FutureRider(const Rider& rider, CalendarDate today, int months);

    int months() const { return static_cast<int>(moments_.size()); }
    /// Whether the child pedals in that month: otherwise it needs a balance bike.
    bool pedals(int month) const { return moments_[static_cast<std::size_t>(month)].stage != Stage::gliding; }
    const Rider& rider() const { return rider_; }
    const FitForecast& forecast() const { return forecast_; }

    /// What each month asks of the child on that bike; nothing where an end of its span is unknown.
    std::optional<std::vector<FitLimits>> limits(const Bike& bike) const;
    /// The first month in which it fits with at least that chance, whatever the checks say.
    std::optional<int> first_fit(const Bike& bike, double least_chance) const;
    /// The months in which it fits with at least that chance, suits the stage, and no check says stop.
    std::vector<FitRun> runs(const Bike& bike, double least_chance) const;

    /// The saddle, above the floor, that month: the target where the bike can have it, its nearer end otherwise.
    Length saddle(const Bike& bike, int month) const;
    /// The checks of that month, for a child of median growth and, where it was weighed, of the weight that keeps its place.
    std::vector<CheckResult> checks(const Bike& bike, int month) const;

    /// The saddle that all but that share of children like this one can get over, from `from` to before `to`.
    Length lowest_at_most(int from, int to, double share) const;
    /// The saddle that all but that share have not outgrown before `to`.
    Length highest_at_least(int to, double share) const;

private:
    struct Moment {
        Stage stage = Stage::riding;
        std::size_t day = 0; ///< in the forecast
        Length inseam;
        Mass median_mass = Mass::kilograms(0.0);
    };

    CheckedRider checked(int month) const;
    bool stops(const Check& check, const Bike& bike, int month) const;
    /// The part of a run in which no check stops: growing clears some checks and trips others, each once.
    void leave_out_stops(const Bike& bike, int& first, int& last) const;

    Rider rider_;
    RiderGrowth growth_;
    FitForecast forecast_;
    std::vector<Moment> moments_;
};

} // namespace saddlerule
