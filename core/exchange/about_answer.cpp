#include "core/exchange/about_answer.h"

#include "core/choice/wheel_sizes.h"
#include "core/exchange/rider_request.h"
#include "core/fit/fit_verdict.h"
#include "core/fit/saddle_window.h"
#include "core/growth/inseam_forecast.h"
#include "core/outcomes/problem_texts.h"

namespace saddlerule {
namespace {

constexpr std::string_view version = SADDLERULE_VERSION;

Json constant(std::string_view name, Json value, std::string_view unit, std::string_view source,
              std::string_view why) {
    return {{"name", name}, {"value", std::move(value)}, {"unit", unit}, {"source", source}, {"why", why}};
}

void add_windows(Json& constants) {
    for (const auto& [stage_name, stage] : stage_names) {
        for (const auto& [confidence_name, confidence] : confidence_names) {
            if (stage != Stage::side_wheels && confidence != Confidence::usual)
                continue;
            const WindowOffsets offsets = window_offsets(stage, confidence);
            std::string name = "saddle_window." + std::string(stage_name);
            if (stage == Stage::side_wheels)
                name += '.' + std::string(confidence_name);
            constants.push_back(constant(name,
                                         {{"low", to_json(offsets.range.low())},
                                          {"target", to_json(offsets.target)},
                                          {"high", to_json(offsets.range.high())}},
                                         "mm above the inseam in shoes", offsets.basis,
                                         "where the saddle stands for the way this rider rides"));
        }
    }
}

void add_typical_spans(Json& constants) {
    for (const TypicalSpan& span : typical_spans()) {
        constants.push_back(constant("typical_span." + std::to_string(static_cast<int>(span.nominal_inches)),
                                     {{"lowest", to_json(span.lowest)}, {"highest", to_json(span.highest)}},
                                     "mm", "common practice, from memory",
                                     "names wheel sizes until a list is loaded"));
    }
}

Json constants() {
    const ReadingAccuracy accuracy;
    Json list = Json::array();
    list.push_back(constant("sole", to_json(accuracy.sole), "mm", "from memory",
                            "thickness of a child's sole, added to a reading without shoes"));
    list.push_back(constant("sole_sd", to_json(accuracy.sole_sd), "mm", "assumption", "soles differ"));
    list.push_back(
        constant("reading_sd", to_json(accuracy.reading_sd), "mm", "assumption",
                 "one home reading with book and tape; erring upward keeps forecast bands honest"));
    list.push_back(constant("bike_measurement_sd", to_json(bike_measurement_sd), "mm", "assumption",
                            "one figure taken on a bike with a tape"));
    list.push_back(constant("close_call.above", surely_not, "probability", "decision of this project",
                            "at this or less the bike does not fit"));
    list.push_back(constant("close_call.below", surely, "probability", "decision of this project",
                            "at this or more the bike fits"));
    list.push_back(constant("months_in_stage", usual_months_in_stage, "months", "assumption",
                            "when the stage moves on where the family sets no date"));
    list.push_back(constant("horizon", horizon_months, "months", "decision of this project",
                            "how far ahead dates and lengths of use are looked for"));
    add_windows(list);
    add_typical_spans(list);
    return list;
}

Json references() {
    return {
        "Leg length for age, LMS: Fredriks, van Buuren, van Heel, Dijkman-Neerincx, Verloove-Vanhorick, Wit. "
        "Arch Dis Child "
        "2005;90:807-812",
        "Stature and weight for age, LMS: Kuczmarski et al. 2002, CDC 2000 growth charts",
        "LMS method: Cole and Green, Stat Med 1992;11:1305-1319",
        "Wheel sizes: ISO 5775-1 (bead seat diameters from memory)",
        "Saddle-height classes: ISO 8098:2023, ISO 4210-1:2023, 16 CFR 1512.2",
        "Inch: 25.4 mm, international yard and pound agreement, 1959",
    };
}

Json problems() {
    Json list = Json::array();
    for (std::size_t i = 0; i < problem_code_count(); ++i) {
        const ProblemText& text = text_of(static_cast<ProblemCode>(i));
        list.push_back({{"code", text.name}, {"sentence", text.sentence}, {"expected", text.expected}});
    }
    return list;
}

} // namespace

Json about_answer() {
    return {{"version", version},
            {"constants", constants()},
            {"references", references()},
            {"requests", {"load", "list", "assess", "changes", "forecast", "side_view", "about"}},
            {"problems", problems()}};
}

} // namespace saddlerule
