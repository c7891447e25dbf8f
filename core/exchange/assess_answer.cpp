#include "core/exchange/assess_answer.h"

#include "core/exchange/bike_json.h"
#include "core/exchange/catalogue_answer.h"
#include "core/exchange/check_json.h"
#include "core/exchange/forecast_answer.h"
#include "core/exchange/rider_request.h"

#include <algorithm>
#include <array>

namespace saddlerule {
namespace {

std::string_view name_of(WheelSizeReason reason) {
    switch (reason) {
    case WheelSizeReason::only_one:
        return "only_one";
    case WheelSizeReason::room_to_grow:
        return "room_to_grow";
    case WheelSizeReason::smaller_also:
        break;
    }
    return "smaller_also";
}

std::string_view sentence_of(WheelSizeReason reason) {
    switch (reason) {
    case WheelSizeReason::only_one:
        return "no other wheel size suits this reading";
    case WheelSizeReason::room_to_grow:
        return "the largest that suits: it leaves room to grow (common practice)";
    case WheelSizeReason::smaller_also:
        break;
    }
    return "suits too, with less room to grow";
}

Json wheel_size_json(const SuitableWheelSize& size) {
    const bool from_list = size.basis == WheelSizeBasis::list;
    return {{"nominal_in", rounded(size.nominal_inches, 1)},
            {"from", from_list ? "list" : "common_practice"},
            {"bikes", from_list ? Json(size.bikes) : Json()},
            {"fit_now", from_list ? Json(size.fit_now) : Json()},
            {"close_calls", from_list ? Json(size.close_calls) : Json()},
            {"reason", name_of(size.reason)},
            {"why", sentence_of(size.reason)}};
}

Json rider_json(const Assessment& assessment, const Rider& rider, const std::vector<Problem>& notes) {
    Json sizes = Json::array();
    for (const SuitableWheelSize& size : assessment.wheel_sizes)
        sizes.push_back(wheel_size_json(size));
    return {{"inseam_mm", {{"mean", to_json(assessment.inseam.mean)}, {"sd", to_json(assessment.inseam.sd)}}},
            {"basis", name_of(assessment.inseam.basis)},
            {"stage", wire_name(stage_names, rider.stage)},
            {"window_mm",
             {{"low", to_json(assessment.window.range.low())},
              {"target", to_json(assessment.window.target)},
              {"high", to_json(assessment.window.range.high())}}},
            {"wheel_sizes", std::move(sizes)},
            {"notes", problem_list(notes)},
            {"assumed_mass_kg", to_json(assessment.assumed_mass)}};
}

Json quantiles_json(const std::optional<DateQuantiles>& dates) {
    if (!dates)
        return {};
    return {{"p10", to_json(dates->p10)}, {"p50", to_json(dates->p50)}, {"p90", to_json(dates->p90)}};
}

Json months_json(const std::optional<MonthsOfFit>& months) {
    if (!months)
        return {};
    return {{"mean", rounded(months->mean, 1)},
            {"p10", rounded(months->p10, 1)},
            {"p50", rounded(months->p50, 1)},
            {"p90", rounded(months->p90, 1)}};
}

Json raises_json(const std::vector<SaddleRaise>& raises) {
    Json list = Json::array();
    for (const SaddleRaise& raise : raises)
        list.push_back({{"on", to_json(raise.on)}, {"saddle_mm", to_json(raise.saddle)}});
    return list;
}

Json to_measure_json(const Bike& bike) {
    Json fields = Json::array();
    if (!bike.saddle_lowest)
        fields.push_back("saddle_lowest");
    if (!bike.saddle_highest)
        fields.push_back("saddle_highest");
    return fields;
}

void put_cost(Json& json, const std::variant<CostPerMonth, CostGap>& cost) {
    const auto amount = [](const Money& money) { return rounded(money.in_main_units(), 2); };
    const auto* known = std::get_if<CostPerMonth>(&cost);
    json["cost_per_month"] = known ? amount(known->expected) : Json();
    if (known)
        json["cost_per_month_range"] = {{"low", amount(known->low)},
                                        {"high", known->high ? amount(*known->high) : Json()}};
    else
        json["cost_gap"] = name_of(std::get<CostGap>(cost));
}

void put_standing(Json& json, const JudgedBike& judged) {
    if (judged.standing) {
        Json worth = Json::array();
        for (const Worth reason : judged.standing->worth)
            worth.push_back({{"code", name_of(reason)}, {"why", sentence_of(reason)}});
        json["standing"] = {{"code", name_of(judged.standing->standing)}, {"worth", std::move(worth)}};
        if (judged.beaten_by)
            json["standing"]["beaten_by"] = judged.beaten_by->id;
    } else {
        json["standing"] = nullptr;
    }
    json["not_offered"] = nullptr;
    if (judged.not_offered)
        json["not_offered"] = {{"code", name_of(*judged.not_offered)},
                               {"why", sentence_of(*judged.not_offered)}};
}

std::size_t checks_in(const JudgedBike& judged, CheckState state) {
    return static_cast<std::size_t>(
        std::count_if(judged.checks.begin(), judged.checks.end(),
                      [&](const CheckResult& result) { return result.finding.state == state; }));
}

Json judged_json(const JudgedBike& judged, bool taped, Detail detail) {
    const Bike& bike = *judged.bike;
    const Fit& fit = judged.fit;
    const SaddleSetting* setting = fit.setting ? &*fit.setting : nullptr;
    Json json = {
        {"id", bike.id},
        {"name", bike.name},
        {"taped", taped},
        {"kind", kind_name(bike.kind)},
        {"suits_stage", judged.suits_stage},
        {"wheel_nominal_in", nominal_json(bike.wheel)},
        {"span_mm", {{"lowest", to_json(bike.saddle_lowest)}, {"highest", to_json(bike.saddle_highest)}}},
        {"price", price_json(bike.price)},
        {"currency", currency_json(bike.price)},
        {"mass_kg", to_json(bike.mass)},
        {"verdict", name_of(fit.verdict)},
        {"fits_probability", fit.probability ? share_to_json(*fit.probability) : Json()},
        {"margin_mm", to_json(fit.margin)},
        {"saddle_mm", setting ? to_json(setting->above_floor) : Json()},
        {"above_lowest_mm", setting ? to_json(setting->above_lowest) : Json()},
        {"below_highest_mm", setting ? to_json(setting->below_highest) : Json()},
        {"to_measure", to_measure_json(bike)},
        {"fits_from", quantiles_json(judged.life.fits_from)},
        {"outgrown", quantiles_json(judged.life.outgrown)},
        {"months_of_fit", months_json(judged.life.months_of_fit)},
    };
    put_cost(json, judged.cost);
    put_standing(json, judged);
    json["stops"] = checks_in(judged, CheckState::stop);
    json["looks"] = checks_in(judged, CheckState::look);
    if (detail == Detail::full) {
        json["raise"] = raises_json(judged.raises);
        json["checks"] = check_list(judged.checks);
    }
    return json;
}

Json left_out_json(const LeftOutBike& left_out) {
    Json because = Json::array();
    for (const Unwanted reason : left_out.because)
        because.push_back(name_of(reason));
    return {{"id", left_out.bike->id}, {"name", left_out.bike->name}, {"because", std::move(because)}};
}

} // namespace

std::string_view name_of(Verdict verdict) {
    constexpr std::array<std::string_view, 5> names{"fits_now", "close_call", "too_tall", "outgrown",
                                                    "not_measured"};
    return names[static_cast<std::size_t>(verdict)];
}

std::string assess_answer(const Assessment& assessment, const Rider& rider, const AssessAnswerParts& parts) {
    std::vector<const JudgedBike*> written;
    for (const JudgedBike& judged : assessment.bikes) {
        if (!parts.only || parts.only->contains(judged.bike->id))
            written.push_back(&judged);
    }
    std::string text = R"({"rider":)" + to_text(rider_json(assessment, rider, parts.notes)) + R"(,"bikes":)";
    append_list(text, written, [&](const JudgedBike* judged) {
        return judged_json(*judged, parts.taped.contains(judged->bike), parts.detail);
    });
    text += R"(,"left_out":)";
    append_list(text, assessment.left_out, left_out_json);
    text += R"(,"set_aside":)" + to_text(set_aside_json(parts.taped_set_aside)) + '}';
    return text;
}

} // namespace saddlerule
