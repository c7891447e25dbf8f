#include "core/exchange/forecast_answer.h"

#include "core/exchange/rider_request.h"
#include "core/fit/saddle_window.h"
#include "core/growth/inseam_forecast.h"
#include "core/growth/rider_growth.h"

namespace saddlerule {
namespace {

Json distribution_json(CalendarDate day, const InseamDistribution& inseam) {
    return {{"on", to_json(day)},
            {"p10", to_json(inseam.quantile(0.1))},
            {"p50", to_json(inseam.quantile(0.5))},
            {"p90", to_json(inseam.quantile(0.9))},
            {"mean", to_json(inseam.mean())},
            {"sd", to_json(inseam.sd())}};
}

Json stage_json(const StageFrom& stage, Confidence confidence) {
    const WindowOffsets offsets = window_offsets(stage.stage, confidence);
    return {{"from", to_json(stage.from)},
            {"stage", wire_name(stage_names, stage.stage)},
            {"low_mm", to_json(offsets.range.low())},
            {"target_mm", to_json(offsets.target)},
            {"high_mm", to_json(offsets.range.high())}};
}

Json readings_json(const Rider& rider) {
    Json readings = Json::array();
    for (const DayReading& day : pooled_by_day(rider))
        readings.push_back({{"on", to_json(day.on)},
                            {"inseam_mm", to_json(day.inseam)},
                            {"sd_mm", to_json(day.sd)},
                            {"count", day.count}});
    return readings;
}

} // namespace

std::string_view name_of(InseamBasis basis) {
    switch (basis) {
    case InseamBasis::measured:
        return "measured";
    case InseamBasis::estimated_from_stature:
        return "estimated_from_stature";
    case InseamBasis::estimated_from_age:
        break;
    }
    return "estimated_from_age";
}

Json forecast_answer(const Rider& rider, CalendarDate today, int months) {
    const RiderGrowth growth = RiderGrowth::of(rider, today);
    const InseamForecast forecast(growth);
    Json list = Json::array();
    for (int month = 1; month <= months; ++month) {
        const CalendarDate day = today.plus_months(month);
        list.push_back(distribution_json(day, forecast.at(day)));
    }
    Json stages = Json::array();
    for (const StageFrom& stage : stage_timeline(rider, today))
        stages.push_back(stage_json(stage, rider.confidence));
    return {{"months", std::move(list)},
            {"today", distribution_json(today, forecast.at(today))},
            {"basis", name_of(growth.basis())},
            {"less_certain_for_young_child", growth.less_certain_for_young_child()},
            {"readings", readings_json(rider)},
            {"stages", std::move(stages)}};
}

} // namespace saddlerule
