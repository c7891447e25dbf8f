#include "core/exchange/forecast_answer.h"

#include "core/exchange/json_writer.h"
#include "core/exchange/rider_request.h"
#include "core/fit/saddle_window.h"
#include "core/growth/inseam_forecast.h"

namespace saddlerule {
namespace {

void write_distribution(JsonWriter& json, CalendarDate day, const InseamDistribution& inseam) {
    json.object([&] {
        field(json, "on", day);
        field(json, "p10", inseam.quantile(0.1));
        field(json, "p50", inseam.quantile(0.5));
        field(json, "p90", inseam.quantile(0.9));
        field(json, "mean", inseam.mean());
        field(json, "sd", inseam.sd());
    });
}

void write_reading(JsonWriter& json, const DayReading& day) {
    json.object([&] {
        field(json, "on", day.on);
        field(json, "inseam_mm", day.inseam);
        field(json, "sd_mm", day.sd);
        field(json, "count", day.count);
    });
}

void write_stage(JsonWriter& json, const StageFrom& stage, Confidence confidence) {
    const WindowOffsets offsets = window_offsets(stage.stage, confidence);
    json.object([&] {
        field(json, "from", stage.from);
        field(json, "stage", wire_name(stage_names, stage.stage));
        field(json, "low_mm", offsets.range.low());
        field(json, "target_mm", offsets.target);
        field(json, "high_mm", offsets.range.high());
    });
}

} // namespace

std::string forecast_answer(const Rider& rider, CalendarDate today, int months) {
    const RiderGrowth growth = RiderGrowth::of(rider, today);
    const InseamForecast forecast(growth);
    JsonWriter json;
    json.object([&] {
        json.key("months").array([&] {
            for (int month = 1; month <= months; ++month) {
                const CalendarDate day = today.plus_months(month);
                write_distribution(json, day, forecast.at(day));
            }
        });
        json.key("today");
        write_distribution(json, today, forecast.at(today));
        field(json, "basis", name_of(growth.basis()));
        field(json, "less_certain_for_young_child", growth.less_certain_for_young_child());
        json.key("readings").array_of(pooled_by_day(rider), [&](const DayReading& day) {
            write_reading(json, day);
        });
        json.key("stages").array_of(stage_timeline(rider, today), [&](const StageFrom& stage) {
            write_stage(json, stage, rider.confidence);
        });
    });
    return json.take();
}

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

} // namespace saddlerule
