// RiderToday: one rider as of today, made ready to be held against any number of bikes: verdict and checks, without the forecast,
// which costs far more and which plans for one morning do not need.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/fit/bike/bike.h"
#include "core/fit/checks/check.h"
#include "core/fit/growth/rider_growth.h"
#include "core/fit/rider/rider.h"
#include "core/fit/verdict/fit_verdict.h"

#include <optional>
#include <vector>

namespace saddlerule {

class RiderToday {
public:
    RiderToday(const Rider& rider, CalendarDate today, bool off_road = false);

    const RiderGrowth& growth() const { return growth_; }
    const InseamToday& inseam() const { return inseam_; }
    InseamEstimate estimate() const { return {inseam_.mean, inseam_.sd}; }
    const WindowOffsets& offsets() const { return offsets_; }
    SaddleWindow window() const {
        return {offsets_.range.shifted_by(inseam_.mean), inseam_.mean + offsets_.target};
    }
    /// Of a rider who was not weighed: the reference median, used by the checks, and said so.
    const std::optional<Mass>& assumed_mass() const { return assumed_mass_; }

    /// What the rider would ride as it is: pedals where the rider pedals, none where the rider glides.
    BikeKind kind() const { return stage_ == Stage::gliding ? BikeKind::balance : BikeKind::pedal; }
    bool suits_stage(const Bike& bike) const { return bike.kind == kind(); }
    Fit fit(const Bike& bike) const { return fit_of(SaddleSpan::of(bike), estimate(), offsets_); }
    /// Into a vector that is used again: findings are large, and a list has many bikes.
    void check(const Bike& bike, const Fit& fit, std::vector<CheckResult>& results) const;

private:
    Stage stage_;
    WindowOffsets offsets_;
    RiderGrowth growth_;
    InseamToday inseam_;
    std::optional<Mass> assumed_mass_;
    CheckedRider checked_;
};

/// How many checks beyond the saddle say so.
struct CheckCounts {
    int stops = 0;
    int looks = 0;
};

CheckCounts counts_of(const std::vector<CheckResult>& checks);

} // namespace saddlerule
