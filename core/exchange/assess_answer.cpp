#include "core/exchange/assess_answer.h"

#include "core/exchange/bike_json.h"
#include "core/exchange/catalogue_answer.h"
#include "core/exchange/check_json.h"
#include "core/exchange/filter_counts_json.h"
#include "core/exchange/forecast_answer.h"
#include "core/exchange/problem_answer.h"
#include "core/exchange/rider_request.h"
#include "core/fit/verdict/likely_heights.h"

#include <algorithm>
#include <array>

namespace saddlerule {
namespace {

std::string_view name_of(WheelSizeReason reason) {
    constexpr std::array<std::string_view, 4> names{"only_one", "most_fit", "largest_that_suits", "also"};
    return names[static_cast<std::size_t>(reason)];
}

void write_wheel_size(JsonWriter& json, const SuitableWheelSize& size) {
    const auto of_list = [&](int count) {
        return size.basis == WheelSizeBasis::list ? std::optional(count) : std::nullopt;
    };
    json.object([&] {
        nominal_field(json, "nominal_in", size.nominal_inches);
        field(json, "from", size.basis == WheelSizeBasis::list ? "list" : "common_practice");
        field(json, "bikes", of_list(size.bikes));
        field(json, "fit_now", of_list(size.fit_now));
        field(json, "close_calls", of_list(size.close_calls));
        field(json, "reason", name_of(size.reason));
    });
}

void range_field(JsonWriter& json, std::string_view name, const ClosedRange<Length>& range) {
    json.key(name).object([&] {
        field(json, "low", range.low());
        field(json, "high", range.high());
    });
}

void rider_field(JsonWriter& json, const Assessment& assessment, const Rider& rider,
                 const std::vector<Problem>& notes) {
    json.key("rider").object([&] {
        json.key("inseam_mm").object([&] {
            field(json, "mean", assessment.judge.inseam().mean);
            field(json, "sd", assessment.judge.inseam().sd);
        });
        field(json, "basis", name_of(assessment.judge.inseam().basis));
        field(json, "population", wire_name(population_names, rider.population));
        field(json, "stage", wire_name(stage_names, rider.stage));
        field(json, "window_mm", assessment.window);
        range_field(json, "window_likely_mm",
                    likely_window(assessment.judge.estimate(), assessment.judge.offsets()));
        json.key("wheel_sizes").array_of(assessment.wheel_sizes, [&](const SuitableWheelSize& size) {
            write_wheel_size(json, size);
        });
        field(json, "notes", notes);
        field(json, "assumed_mass_kg", assessment.judge.assumed_mass());
    });
}

void dates_field(JsonWriter& json, std::string_view name, const std::optional<DateQuantiles>& dates) {
    json.key(name);
    if (!dates) {
        json.null();
        return;
    }
    json.object([&] {
        field(json, "p10", dates->p10);
        field(json, "p50", dates->p50);
        field(json, "p90", dates->p90);
    });
}

std::string_view name_of(PauseCause cause) {
    return name_of(cause == PauseCause::too_tall ? Verdict::too_tall : Verdict::outgrown);
}

void pauses_field(JsonWriter& json, const std::vector<PauseInFit>& pauses) {
    json.key("pauses").array_of(pauses, [&](const PauseInFit& pause) {
        json.object([&] {
            field(json, "from", pause.from);
            field(json, "to", pause.to);
            field(json, "code", name_of(pause.cause));
        });
    });
}

void months_field(JsonWriter& json, const std::optional<MonthsOfFit>& months) {
    json.key("months_of_fit");
    if (!months) {
        json.null();
        return;
    }
    json.object([&] {
        json.key("mean").number(months->mean, 1);
        json.key("p10").number(months->p10, 1);
        json.key("p50").number(months->p50, 1);
        json.key("p90").number(months->p90, 1);
    });
}

void setting_fields(JsonWriter& json, const std::optional<SaddleSetting>& setting) {
    const SaddleSetting none{};
    const SaddleSetting& known = setting ? *setting : none;
    field(json, "saddle_mm", setting ? std::optional(known.above_floor) : std::nullopt);
    field(json, "above_lowest_mm", known.above_lowest);
    field(json, "below_highest_mm", known.below_highest);
}

void to_measure_field(JsonWriter& json, const Bike& bike) {
    json.key("to_measure").array([&] {
        if (!bike.saddle_lowest)
            json.text("saddle_lowest");
        if (!bike.saddle_highest)
            json.text("saddle_highest");
    });
}

void cost_fields(JsonWriter& json, const std::variant<CostPerMonth, CostGap>& cost) {
    const auto* known = std::get_if<CostPerMonth>(&cost);
    json.key("cost_per_month");
    if (!known) {
        json.null();
        field(json, "cost_gap", name_of(*std::get_if<CostGap>(&cost)));
        return;
    }
    const auto amount = [&](const Money& money) { json.number(money.in_main_units(), 2); };
    amount(known->expected);
    json.key("cost_per_month_range").object([&] {
        json.key("low");
        amount(known->low);
        json.key("high");
        if (known->high)
            amount(*known->high);
        else
            json.null();
    });
}

template <typename Reason>
void write_reason(JsonWriter& json, Reason reason) {
    json.object([&] { field(json, "code", name_of(reason)); });
}

void standing_fields(JsonWriter& json, const JudgedBike& judged) {
    json.key("standing");
    if (judged.standing) {
        json.object([&] {
            field(json, "code", name_of(judged.standing->standing));
            json.key("worth").array_of(judged.standing->worth,
                                       [&](Worth worth) { write_reason(json, worth); });
            if (judged.beaten_by) {
                field(json, "beaten_by", judged.beaten_by->id);
                field(json, "beaten_by_name", judged.beaten_by->name);
            }
        });
    } else {
        json.null();
    }
    json.key("not_offered");
    if (judged.not_offered)
        write_reason(json, *judged.not_offered);
    else
        json.null();
}

void detail_fields(JsonWriter& json, const RiderJudge& judge, const JudgedBike& judged) {
    json.key("raise").array_of(judge.raises(*judged.bike, judged.fit), [&](const SaddleRaise& raise) {
        json.object([&] {
            field(json, "on", raise.on);
            field(json, "saddle_mm", raise.saddle);
            if (raise.stage)
                field(json, "stage", wire_name(stage_names, *raise.stage));
        });
    });
    std::vector<CheckResult> checks;
    judge.check(*judged.bike, judged.fit, checks);
    json.key("checks").array_of(checks, [&](const CheckResult& result) { write(json, result); });
}

void span_field(JsonWriter& json, const Bike& bike) {
    json.key("span_mm").object([&] {
        field(json, "lowest", bike.saddle_lowest);
        field(json, "highest", bike.saddle_highest);
    });
}

void write_judged(JsonWriter& json, const RiderJudge& judge, const JudgedBike& judged,
                  const AssessAnswerParts& parts) {
    const Bike& bike = *judged.bike;
    const Fit& fit = judged.fit;
    json.object([&] {
        field(json, "id", bike.id);
        field(json, "name", bike.name);
        const auto taped = std::find_if(parts.taped.begin(), parts.taped.end(),
                                        [&](const Bike& other) { return &other == &bike; });
        field(json, "taped", taped != parts.taped.end());
        if (taped != parts.taped.end())
            field(json, "notes", parts.taped_notes[static_cast<std::size_t>(taped - parts.taped.begin())]);
        field(json, "kind", kind_name(bike.kind));
        field(json, "suits_stage", judged.suits_stage);
        nominal_field(json, "wheel_nominal_in", nominal_inches(bike.wheel));
        span_field(json, bike);
        price_fields(json, bike.price);
        field(json, "mass_kg", bike.mass);
        field(json, "verdict", name_of(fit.verdict));
        number_field(json, "fits_probability", fit.probability, 6); // a millionth: 0.8 decides
        field(json, "margin_mm", fit.margin);
        setting_fields(json, fit.setting);
        // A setting to the millimetre would be read as one, whoever guessed the leg.
        if (fit.setting && judge.inseam().basis != InseamBasis::measured)
            range_field(json, "saddle_likely_mm",
                        likely_setting(SaddleSpan::of(bike), judge.estimate(), judge.offsets()));
        to_measure_field(json, bike);
        dates_field(json, "fits_from", judged.life.fits_from);
        dates_field(json, "outgrown", judged.life.outgrown);
        pauses_field(json, judged.life.pauses);
        months_field(json, judged.life.months_of_fit);
        cost_fields(json, judged.cost);
        standing_fields(json, judged);
        field(json, "stops", judged.checks.stops);
        field(json, "looks", judged.checks.looks);
        if (parts.detail == Detail::full)
            detail_fields(json, judge, judged);
    });
}

void write_left_out(JsonWriter& json, const LeftOutBike& left_out) {
    json.object([&] {
        field(json, "id", left_out.bike->id);
        field(json, "name", left_out.bike->name);
        json.key("because").array_of(left_out.because, [&](Unwanted reason) { json.text(name_of(reason)); });
    });
}

/// How many bikes have each verdict.
void counts_field(JsonWriter& json, const std::vector<JudgedBike>& bikes) {
    json.key("counts").object([&] {
        for (const Verdict verdict : {Verdict::fits_now, Verdict::close_call, Verdict::too_tall,
                                      Verdict::outgrown, Verdict::not_measured}) {
            field(json, name_of(verdict),
                  std::count_if(bikes.begin(), bikes.end(),
                                [&](const JudgedBike& judged) { return judged.fit.verdict == verdict; }));
        }
    });
}

/// The bikes as they follow each other, by verdict and by whether they suit the stage: where headings go in a long list that
/// is told about in parts.
void groups_field(JsonWriter& json, const std::vector<JudgedBike>& bikes) {
    json.key("groups").array([&] {
        for (auto first = bikes.begin(); first != bikes.end();) {
            const auto end = std::find_if(first, bikes.end(), [&](const JudgedBike& judged) {
                return judged.fit.verdict != first->fit.verdict || judged.suits_stage != first->suits_stage;
            });
            json.object([&] {
                field(json, "verdict", name_of(first->fit.verdict));
                field(json, "suits_stage", first->suits_stage);
                field(json, "bikes", end - first);
            });
            first = end;
        }
    });
}

/// From the lowest to the highest saddle of all, for one scale; null where there are no bikes.
void heights_field(JsonWriter& json, const std::vector<JudgedBike>& bikes) {
    std::optional<Length> low;
    std::optional<Length> high;
    for (const JudgedBike& judged : bikes) {
        for (const auto& end : {judged.bike->saddle_lowest, judged.bike->saddle_highest}) {
            if (end) {
                low = low ? std::min(*low, *end) : *end;
                high = high ? std::max(*high, *end) : *end;
            }
        }
    }
    json.key("heights_mm").object([&] {
        field(json, "lowest", low);
        field(json, "highest", high);
    });
}

/// How many bikes are left out, and for how many each reason holds.
void left_out_counts_field(JsonWriter& json, const std::vector<LeftOutBike>& left_out) {
    std::array<int, unwanted_count> counts{};
    for (const LeftOutBike& bike : left_out) {
        for (const Unwanted reason : bike.because)
            ++counts[static_cast<std::size_t>(reason)];
    }
    json.key("left_out_counts").object([&] {
        field(json, "bikes", left_out.size());
        json.key("because").object([&] {
            for (std::size_t i = 0; i < counts.size(); ++i) {
                if (counts[i] > 0)
                    field(json, name_of(static_cast<Unwanted>(i)), counts[i]);
            }
        });
    });
}

void fits_months_field(JsonWriter& json, const std::optional<std::vector<MonthStretch>>& stretches) {
    json.key("fits_months");
    if (!stretches)
        return json.null();
    json.array_of(*stretches, [&](const MonthStretch& stretch) {
        json.array([&] {
            json.integer(stretch.from);
            json.integer(stretch.to);
        });
    });
}

void write_bikes(JsonWriter& json, const Assessment& assessment, const AssessAnswerParts& parts) {
    const std::size_t size = assessment.bikes.size();
    const std::size_t from = parts.rows ? std::min(parts.rows->from, size) : 0;
    const std::size_t count = parts.rows ? std::min(parts.rows->count, size - from) : size;
    for (std::size_t place = from; place < from + count; ++place) {
        const JudgedBike& judged = assessment.bikes[place];
        if (parts.detail == Detail::spans)
            json.object([&] {
                span_field(json, *judged.bike);
                fits_months_field(json, assessment.judge.likely_months(*judged.bike));
            });
        else if (!parts.only || std::binary_search(parts.only->begin(), parts.only->end(), judged.bike->id))
            write_judged(json, assessment.judge, judged, parts);
    }
}

} // namespace

void write(JsonWriter& json, const SaddleWindow& window) {
    json.object([&] {
        field(json, "low", window.range.low());
        field(json, "target", window.target);
        field(json, "high", window.range.high());
    });
}

std::string_view name_of(Verdict verdict) {
    constexpr std::array<std::string_view, 5> names{"fits_now", "close_call", "too_tall", "outgrown",
                                                    "not_measured"};
    return names[static_cast<std::size_t>(verdict)];
}

std::string assess_answer(const Assessment& assessment, const Rider& rider, const AssessAnswerParts& parts) {
    constexpr std::size_t usual_brief_size = 800;
    const bool all_in_brief = parts.detail == Detail::brief && !parts.rows && !parts.only;
    JsonWriter json(all_in_brief ? assessment.bikes.size() * usual_brief_size : 0);
    json.object([&] {
        rider_field(json, assessment, rider, parts.notes);
        counts_field(json, assessment.bikes);
        groups_field(json, assessment.bikes);
        heights_field(json, assessment.bikes);
        json.key("bikes").array([&] { write_bikes(json, assessment, parts); });
        if (!parts.rows)
            json.key("left_out").array_of(assessment.left_out, [&](const LeftOutBike& left_out) {
                write_left_out(json, left_out);
            });
        left_out_counts_field(json, assessment.left_out);
        filter_counts_field(json, assessment.filters);
        json.key("set_aside").array([&] {
            for (const auto& entries : {parts.list_set_aside, parts.taped_set_aside}) {
                for (const SetAside& entry : entries)
                    write_set_aside(json, entry);
            }
        });
    });
    return json.take();
}

} // namespace saddlerule
