#include "core/exchange/about_answer.h"

#include "core/base/outcomes/problem.h"
#include "core/exchange/assess_answer.h"
#include "core/exchange/json_writer.h"
#include "core/exchange/rider_request.h"
#include "core/fit/checks/check_limits.h"
#include "core/fit/choice/wheel_sizes.h"
#include "core/fit/cost/cost_of_fit.h"
#include "core/fit/gears/hill_constants.h"
#include "core/fit/growth/growth_constants.h"
#include "core/fit/growth/inseam_forecast.h"
#include "core/fit/leg/leg_constants.h"
#include "core/fit/verdict/fit_verdict.h"
#include "core/fit/verdict/saddle_window.h"
#include "core/lists/keeping/slip_constants.h"

namespace saddlerule {
namespace {

constexpr std::string_view version = SADDLERULE_VERSION;

/// One constant of the table; the value is written by whoever has it.
template <typename WriteValue>
void write_constant(JsonWriter& json, std::string_view name, WriteValue write_value, std::string_view unit,
                    std::string_view source, std::string_view why) {
    json.object([&] {
        field(json, "name", name);
        json.key("value");
        write_value();
        field(json, "unit", unit);
        field(json, "source", source);
        field(json, "why", why);
    });
}

void write_windows(JsonWriter& json) {
    for (const auto& [stage_name, stage] : stage_names) {
        for (const auto& [confidence_name, confidence] : confidence_names) {
            if (stage != Stage::side_wheels && confidence != Confidence::usual)
                continue;
            const WindowOffsets offsets = window_offsets(stage, confidence);
            std::string name = "saddle_window." + std::string(stage_name);
            if (stage == Stage::side_wheels)
                name += '.' + std::string(confidence_name);
            write_constant(
                json, name,
                [&] {
                    write(json, SaddleWindow{offsets.range, offsets.target});
                },
                "mm above the inside leg in shoes", offsets.basis,
                "where the saddle goes for this way of riding");
        }
    }
}

void write_typical_spans(JsonWriter& json) {
    for (const BikeKind kind : {BikeKind::balance, BikeKind::pedal}) {
        const std::string_view kind_prefix = kind == BikeKind::balance ? "balance." : "";
        for (const TypicalSpan& span : typical_spans(kind)) {
            const auto write_span = [&] {
                json.object([&] {
                    field(json, "lowest", span.lowest);
                    field(json, "highest", span.highest);
                });
            };
            write_constant(json,
                           "typical_span." + std::string(kind_prefix) +
                               std::to_string(static_cast<int>(span.nominal_inches)),
                           write_span, "mm", "common practice, from memory",
                           "names wheel sizes until a list is loaded");
        }
    }
}

void write_check_limits(JsonWriter& json) {
    for (const StatedFigure& limit : stated_limits()) {
        const std::string_view unit = field_suffix(limit.value.unit());
        write_constant(
            json, "check." + std::string(limit.name), [&] { json.number(limit.value.value(), 3); }, unit,
            limit.source, limit.reason);
    }
}

/// A single figure, or a column of a table.
void write_stated(JsonWriter& json, const StatedConstant& constant) {
    const auto number = [&](double value) { json.number(value, 5); };
    const auto values = [&] {
        if (constant.values.size() == 1)
            number(constant.values.front());
        else
            json.array_of(constant.values, number);
    };
    write_constant(json, constant.name, values, constant.unit, constant.source, constant.reason);
}

void write_constants(JsonWriter& json) {
    const ReadingAccuracy accuracy;
    const auto length = [&](std::string_view name, Length value, std::string_view source,
                            std::string_view why) {
        write_constant(
            json, name, [&] { write(json, value); }, "mm", source, why);
    };
    const auto share = [&](std::string_view name, double value, std::string_view source,
                           std::string_view why) {
        write_constant(
            json, name, [&] { json.number(value, 3); }, "share of 1", source, why);
    };
    const auto months = [&](std::string_view name, int value, std::string_view source, std::string_view why) {
        write_constant(
            json, name, [&] { json.integer(value); }, "months", source, why);
    };
    length("sole", accuracy.sole, "from memory",
           "thickness of a child's sole, added to a measurement without shoes");
    length("sole_sd", accuracy.sole_sd, "assumption", "soles differ");
    length("reading_sd", accuracy.reading_sd, "assumption",
           "one measurement at home with a book and a tape measure; rather too high than too low, which "
           "keeps forecast bands honest");
    length("bike_measurement_sd", bike_measurement_sd, "assumption",
           "one length measured on a bike with a tape measure");
    share("close_call.above", surely_not, "decision of this project",
          "at this probability or less the bike does not fit");
    share("close_call.below", surely, "decision of this project",
          "at this probability or more the bike fits");
    share("resale_share", usual_resale_share, "assumption",
          "share of the price that comes back when the bike is sold; the user can change it");
    months("months_in_stage", usual_months_in_stage, "assumption",
           "when the way of riding changes where the family sets no date");
    months("horizon", horizon_months, "decision of this project",
           "how far ahead dates and lengths of use are looked for");
    write_windows(json);
    write_typical_spans(json);
    write_check_limits(json);
    for (const auto& constants : {growth_constants(), leg_constants(), hill_constants(), slip_constants()}) {
        for (const StatedConstant& constant : constants)
            write_stated(json, constant);
    }
}

constexpr std::string_view references[] = {
    "Leg length and its share of height, LMS: Fredriks and others, Arch Dis Child 2005;90:807-812",
    "Legs of US children: Snyder and others 1977, UM-HSRI-77-17",
    "Legs of British children: Freeman and others 1995, Cole and others 1998, Dangour and others 2002",
    "Height and weight for age, LMS: Kuczmarski and others 2002, CDC 2000 growth charts",
    "LMS method: Cole and Green, Stat Med 1992;11:1305-1319",
    "Segment shares of height: Drillis and Contini 1966, from memory",
    "Saddle height of adults: Hamley and Thomas 1967, from memory",
    "Knee flexion of adults: Holmes, Pruitt and Whalen 1994, from memory",
    "Wheel sizes: ISO 5775-1, bead seat diameters from memory",
    "Saddle-height classes and brakes: ISO 8098:2023, ISO 4210-1:2023, 16 CFR 1512",
    "Inch and pound: international yard and pound agreement, 1959",
};

constexpr std::string_view requests[] = {
    "load",        "new_list",     "list",     "entry",   "check_entry", "edit",      "compare",
    "merge",       "save",         "assess",   "changes", "forecast",    "side_view", "read_bike",
    "read_riders", "write_riders", "club_day", "suits",   "years_ahead", "about"};

void write_problems(JsonWriter& json) {
    for (std::size_t i = 0; i < problem_code_count(); ++i)
        json.object([&] { field(json, "code", code_name(static_cast<ProblemCode>(i))); });
}

void write_problem_words(JsonWriter& json) {
    for (std::size_t i = 0; i < problem_word_count(); ++i)
        json.text(word_name(static_cast<ProblemWord>(i)));
}

} // namespace

std::string about_answer() {
    JsonWriter json;
    const auto write_text = [&](std::string_view text) { json.text(text); };
    json.object([&] {
        field(json, "version", version);
        json.key("constants").array([&] { write_constants(json); });
        json.key("references").array_of(references, write_text);
        json.key("requests").array_of(requests, write_text);
        json.key("problems").array([&] { write_problems(json); });
        json.key("problem_words").array([&] { write_problem_words(json); });
    });
    return json.take();
}

} // namespace saddlerule
