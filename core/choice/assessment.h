// Assessment: one rider against a list of bikes. Verdict, setting, length of use and place of each, and what
// was left out.
#pragma once

#include "core/bike/bike.h"
#include "core/choice/wants.h"
#include "core/choice/wheel_sizes.h"
#include "core/fit/fit_verdict.h"
#include "core/growth/rider_growth.h"
#include "core/lasting/life_of_fit.h"
#include "core/lasting/raise_list.h"
#include "core/quantities/calendar_date.h"
#include "core/rider/rider.h"

#include <span>
#include <vector>

namespace saddlerule {

/// One bike as this rider sees it. `bike` points into the list that was assessed.
struct JudgedBike {
    const Bike* bike = nullptr;
    bool suits_stage = true;
    Fit fit;
    LifeOfFit life;
    std::vector<SaddleRaise> raises; ///< for bikes that fit now or come close
};

struct LeftOutBike {
    const Bike* bike = nullptr;
    std::vector<Unwanted> because;
};

struct Assessment {
    InseamToday inseam;
    SaddleWindow window;
    std::vector<SuitableWheelSize> wheel_sizes;
    std::vector<Problem> notes;    ///< questions about the rider's figures
    std::vector<JudgedBike> bikes; ///< best first
    std::vector<LeftOutBike> left_out;
};

/// `bikes` must outlive the result.
Assessment assess(const Rider& rider, CalendarDate today, std::span<const Bike* const> bikes,
                  const Wants& wants);

/// Whether the rider would ride it as it is: pedals where the rider pedals, none where the rider glides.
bool suits_stage(const Bike& bike, Stage stage);

} // namespace saddlerule
