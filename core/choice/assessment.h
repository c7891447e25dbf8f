// Assessment: one rider against a list of bikes. Verdict, setting, length of use, cost, checks and place of
// each, and what was left out.
#pragma once

#include "core/bike/bike.h"
#include "core/checks/check.h"
#include "core/choice/not_offered.h"
#include "core/choice/unbeaten_bikes.h"
#include "core/choice/wants.h"
#include "core/choice/wheel_sizes.h"
#include "core/cost/cost_of_fit.h"
#include "core/fit/fit_verdict.h"
#include "core/growth/rider_growth.h"
#include "core/lasting/life_of_fit.h"
#include "core/lasting/raise_list.h"
#include "core/quantities/calendar_date.h"
#include "core/rider/rider.h"

#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace saddlerule {

/// What is asked: whose bike, when, and what matters beside the fit.
struct FitQuestion {
    Rider rider;
    CalendarDate today;
    Wants wants;
    double resale_share = usual_resale_share;
    bool with_raises = true; ///< raise lists are long, and seldom wanted for a whole rack
};

/// One bike as this rider sees it. `bike` points into the list that was assessed.
struct JudgedBike {
    const Bike* bike = nullptr;
    bool suits_stage = true;
    Fit fit;
    LifeOfFit life;
    std::variant<CostPerMonth, CostGap> cost;
    std::vector<CheckResult> checks;
    std::vector<SaddleRaise> raises; ///< of bikes whose saddle can be set
    /// Among the bikes that fit now or come close and suit the stage; absent for others.
    std::optional<ChoiceStanding> standing;
    /// The bike that beats it, where one does.
    const Bike* beaten_by = nullptr;
    /// Why it is not among those put forward: the unbeaten ones that fit now and that no check stops.
    std::optional<NotOffered> not_offered;
};

struct LeftOutBike {
    const Bike* bike = nullptr;
    std::vector<Unwanted> because;
};

struct Assessment {
    InseamToday inseam;
    SaddleWindow window;
    std::vector<SuitableWheelSize> wheel_sizes;
    std::vector<JudgedBike> bikes; ///< best first
    std::vector<LeftOutBike> left_out;
    std::optional<Mass> assumed_mass; ///< of a rider who was not weighed: used by the checks, and said so
};

/// Judges the bikes of a list and those taped beside it; both must outlive the result. The wheel sizes that suit are those
/// of the list.
Assessment assess(const FitQuestion& question, std::span<const Bike> list, std::span<const Bike> taped);

/// Whether the rider would ride it as it is: pedals where the rider pedals, none where the rider glides.
bool suits_stage(const Bike& bike, Stage stage);

} // namespace saddlerule
