// Assessment: one rider against a list of bikes. Verdict, setting, length of use, cost and place of each, and what was left
// out.
#pragma once

#include "core/fit/bike/bike.h"
#include "core/fit/choice/bike_order.h"
#include "core/fit/choice/filter_counts.h"
#include "core/fit/choice/not_offered.h"
#include "core/fit/choice/rider_judge.h"
#include "core/fit/choice/unbeaten_bikes.h"
#include "core/fit/choice/wants.h"
#include "core/fit/choice/wheel_sizes.h"

#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace saddlerule {

/// One bike as this rider sees it. `bike` points into the list that was assessed.
struct JudgedBike {
    const Bike* bike = nullptr;
    bool suits_stage = true;
    Fit fit;
    LifeOfFit life;
    std::variant<CostPerMonth, CostGap> cost;
    CheckCounts checks;
    /// Among the bikes that fit now or come close and suit the stage; absent for others.
    std::optional<ChoiceStanding> standing;
    /// The bike that beats it, where one does.
    const Bike* beaten_by = nullptr;
    /// Why it is not among those put forward: the unbeaten ones that fit now, can be had, and that no check stops.
    std::optional<NotOffered> not_offered;
};

struct LeftOutBike {
    const Bike* bike = nullptr;
    std::vector<Unwanted> because;
};

struct Assessment {
    RiderJudge judge;
    SaddleWindow window;
    std::vector<SuitableWheelSize> wheel_sizes;
    std::vector<JudgedBike> bikes; ///< best first
    std::vector<LeftOutBike> left_out;
    FilterCounts filters; ///< of the bikes of the list and those taped
};

CheckCounts check_counts(const std::vector<CheckResult>& checks);

/// What the order of the bikes looks at.
OrderFacts order_facts(const JudgedBike& judged);

/// Judges the bikes of a list and those taped beside it; both must outlive the result. The wheel sizes that suit are those
/// of the list.
Assessment assess(const FitQuestion& question, std::span<const Bike> list, std::span<const Bike> taped);

} // namespace saddlerule
