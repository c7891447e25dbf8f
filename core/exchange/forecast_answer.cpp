#include "core/exchange/forecast_answer.h"

#include "core/exchange/json_writer.h"
#include "core/exchange/rider_request.h"
#include "core/fit/growth/inseam_forecast.h"
#include "core/fit/growth/inseams_of_age.h"
#include "core/fit/growth/rider_history.h"
#include "core/fit/lasting/life_of_fit.h"
#include "core/fit/verdict/saddle_window.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace saddlerule {
namespace {

/// One month of the forecast; `chance` that the bike fits in it, where the request names one.
struct MonthAhead {
    CalendarDate day;
    InseamDistribution inseam;
    std::optional<double> chance;
};

void write_month(JsonWriter& json, const MonthAhead& month, bool about_a_bike) {
    const InseamDistribution& inseam = month.inseam;
    json.object([&] {
        field(json, "on", month.day);
        field(json, "p10", inseam.quantile(0.1));
        field(json, "p50", inseam.quantile(0.5));
        field(json, "p90", inseam.quantile(0.9));
        field(json, "mean", inseam.mean());
        field(json, "sd", inseam.sd());
        if (about_a_bike)
            number_field(json, "fits_probability", month.chance, 6);
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

void quantiles_field(JsonWriter& json, std::string_view name, const InseamDistribution& inseam,
                     Length offset) {
    json.key(name).object([&] {
        field(json, "p10", inseam.quantile(0.1) + offset);
        field(json, "p50", inseam.quantile(0.5) + offset);
        field(json, "p90", inseam.quantile(0.9) + offset);
    });
}

/// The saddle heights that suit on one day: each edge of the window, and the target, with its doubt.
void write_window(JsonWriter& json, CalendarDate day, const InseamForecast& forecast,
                  const WindowOffsets& offsets) {
    const InseamDistribution inseam = forecast.at(day);
    json.object([&] {
        field(json, "on", day);
        quantiles_field(json, "low", inseam, offsets.range.low());
        quantiles_field(json, "target", inseam, offsets.target);
        quantiles_field(json, "high", inseam, offsets.range.high());
    });
}

/// Today, every month, and both sides of every day on which a stage ends and the next begins.
void write_windows(JsonWriter& json, const Rider& rider, CalendarDate today, int months,
                   const InseamForecast& forecast) {
    const std::vector<StageFrom> stages = stage_timeline(rider, today);
    const auto offsets_of = [&](std::size_t stage) {
        return window_offsets(stages[stage].stage, rider.confidence);
    };
    std::size_t stage = 0;
    for (int month = 0; month <= months; ++month) {
        const CalendarDate day = today.plus_months(month);
        while (stage + 1 < stages.size() && stages[stage + 1].from <= day) {
            const CalendarDate change = stages[stage + 1].from;
            write_window(json, change, forecast, offsets_of(stage));
            ++stage;
            if (change < day)
                write_window(json, change, forecast, offsets_of(stage));
        }
        write_window(json, day, forecast, offsets_of(stage));
    }
}

/// The shares of children that the lines of a centile chart leave below them.
constexpr double centile_lines[] = {0.1, 0.25, 0.5, 0.75, 0.9};
constexpr int rows_a_year = 4;

/// Whole years from before the first reading to beyond today, as far as there are children who ride.
struct YearsDrawn {
    int first;
    int last;
};

YearsDrawn years_drawn(Days youngest, Days today) {
    const int first = static_cast<int>(std::floor(youngest.in_years()));
    const int last = static_cast<int>(std::ceil(today.in_years()));
    return {.first = std::min(first, std::max(1, first - 1)), .last = std::max(last, std::min(18, last + 2))};
}

void write_centile_row(JsonWriter& json, const Rider& rider, double years) {
    const InseamsOfAge children(rider, Days::years(years));
    json.object([&] {
        number_field(json, "age_years", years, 2);
        json.key("inseams_mm").array_of(centile_lines, [&](double share) {
            write(json, children.centile(share));
        });
    });
}

/// The readings among the inseams of other children, by age. Null where the age or every reading is unknown.
void write_centiles(JsonWriter& json, const Rider& rider, CalendarDate today) {
    const RiderHistory history = rider_history(rider, today);
    if (!history.born || history.days.empty()) {
        json.null();
        return;
    }
    const CalendarDate born = *history.born;
    const YearsDrawn years = years_drawn(history.days.front().on - born, today - born);
    json.object([&] {
        json.key("shares").array_of(centile_lines, [&](double share) { json.number(share, 2); });
        json.key("rows").array([&] {
            for (int row = years.first * rows_a_year; row <= years.last * rows_a_year; ++row)
                write_centile_row(json, rider, static_cast<double>(row) / rows_a_year);
        });
        json.key("readings").array_of(history.days, [&](const DayReading& day) {
            const Days age = day.on - born;
            json.object([&] {
                field(json, "on", day.on);
                number_field(json, "age_years", age.in_years(), 2);
                field(json, "inseam_mm", day.inseam);
                number_field(json, "share_shorter", InseamsOfAge(rider, age).share_shorter(day.inseam), 3);
            });
        });
    });
}

} // namespace

std::string forecast_answer(const Rider& rider, CalendarDate today, const ForecastQuestion& question) {
    const int months = question.months;
    const Bike* bike = question.bike;
    const RiderGrowth growth = RiderGrowth::of(rider, today);
    const InseamForecast forecast(growth);
    std::optional<FitCurve> chances;
    if (bike != nullptr)
        chances = fit_curve(FitForecast(growth, rider), SaddleSpan::of(*bike));
    const auto month_ahead = [&](int month) {
        const CalendarDate day = today.plus_months(month);
        return MonthAhead{day, forecast.at(day),
                          chances ? std::optional((*chances)[static_cast<std::size_t>(month)])
                                  : std::nullopt};
    };
    JsonWriter json;
    json.object([&] {
        json.key("months").array([&] {
            for (int month = 1; month <= months; ++month)
                write_month(json, month_ahead(month), bike != nullptr);
        });
        json.key("today");
        write_month(json, month_ahead(0), bike != nullptr);
        json.key("windows").array([&] { write_windows(json, rider, today, months, forecast); });
        field(json, "basis", name_of(growth.basis()));
        field(json, "population", wire_name(population_names, rider.population));
        field(json, "less_certain_for_young_child", growth.less_certain_for_young_child());
        json.key("readings").array_of(pooled_by_day(rider), [&](const DayReading& day) {
            write_reading(json, day);
        });
        json.key("stages").array_of(stage_timeline(rider, today), [&](const StageFrom& stage) {
            write_stage(json, stage, rider.confidence);
        });
        json.key("centiles");
        if (question.centiles)
            write_centiles(json, rider, today);
        else
            json.null();
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
