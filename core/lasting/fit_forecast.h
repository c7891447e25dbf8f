// FitForecast: one rider's growth and stages made ready, so that the dates of any number of bikes are cheap.
#pragma once

#include "core/fit/fit_verdict.h"
#include "core/fit/saddle_window.h"
#include "core/growth/inseam_forecast.h"
#include "core/growth/rider_growth.h"
#include "core/rider/rider.h"

namespace saddlerule {

/// Built once per rider; read by life_of_fit and raise_list.
class FitForecast {
public:
    /// The rider's stages move on as stage_timeline says.
    FitForecast(const RiderGrowth& growth, const Rider& rider);
};

} // namespace saddlerule
