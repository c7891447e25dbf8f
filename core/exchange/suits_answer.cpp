#include "core/exchange/suits_answer.h"

#include "core/base/sorting/sorting.h"
#include "core/exchange/bike_json.h"
#include "core/exchange/json_writer.h"
#include "core/exchange/problem_answer.h"
#include "core/exchange/rider_request.h"
#include "core/exchange/rows_request.h"
#include "core/exchange/suits_table.h"
#include "core/planning/suits/suits.h"
#include "core/planning/suits/typical_years.h"

#include <algorithm>

namespace saddlerule {
namespace {

enum class SuitsForm { json, csv };
constexpr WireName<SuitsForm> suits_form_names[] = {{"json", SuitsForm::json}, {"csv", SuitsForm::csv}};

const auto possible_reading_sd_mm = *ClosedRange<double>::between(0.1, 500.0);

class SuitsWriter {
public:
    SuitsWriter(const Suits& suits, std::size_t rows) : suits_(suits), json_(rows * usual_row_size) {}

    template <typename Wanted>
    std::string write(std::size_t from, std::size_t count, Wanted wanted) {
        json_.object([&] {
            json_.key("bikes").array([&] {
                for (std::size_t i = from; i < from + count; ++i) {
                    if (wanted(*suits_.bikes[i].bike))
                        write_bike(suits_.bikes[i]);
                }
            });
            json_.key("wheels").array_of(suits_.wheels, [&](const WheelSuits& wheel) { write_wheel(wheel); });
            field(json_, "count", suits_.bikes.size());
        });
        return json_.take();
    }

private:
    static constexpr std::size_t usual_row_size = 400;

    void ends(std::string_view name, const std::optional<Length>& from, const std::optional<Length>& to) {
        json_.key(name).array([&] {
            saddlerule::write(json_, from);
            saddlerule::write(json_, to);
        });
    }

    void years_field(const std::optional<Length>& from, const std::optional<Length>& to) {
        const YearRange years = years_.of(from, to);
        json_.key("typical_years");
        if (!years.from && !years.to) {
            json_.null();
            return;
        }
        json_.array([&] {
            saddlerule::write(json_, years.from);
            saddlerule::write(json_, years.to);
        });
    }

    void write_range(const InseamRange& range) {
        json_.object([&] {
            ends("inseam_mm", range.from, range.to);
            if (!range.from || !range.to)
                ends("surely_mm", range.from ? range.from : range.surely_from,
                     range.to ? range.to : range.surely_to);
            years_field(range.from, range.to);
        });
    }

    void write_bike(const BikeSuits& one) {
        const Bike& bike = *one.bike;
        json_.object([&] {
            field(json_, "id", bike.id);
            field(json_, "name", bike.name);
            field(json_, "kind", kind_name(bike.kind));
            nominal_field(json_, "wheel_nominal_in", nominal_inches(bike.wheel));
            json_.key("span_mm").object([&] {
                field(json_, "lowest", bike.saddle_lowest);
                field(json_, "highest", bike.saddle_highest);
            });
            json_.key("stages").object([&] {
                for (std::size_t i = 0; i < every_stage.size(); ++i) {
                    if (one.stages[i]) {
                        json_.key(wire_name(stage_names, every_stage[i]));
                        write_range(*one.stages[i]);
                    }
                }
            });
        });
    }

    void shared_field(std::string_view name, const std::optional<SharedRange>& range) {
        json_.key(name);
        if (!range) {
            json_.null();
            return;
        }
        json_.object([&] {
            ends("inseam_mm", range->from, range->to);
            json_.key("gaps_mm").array_of(range->gaps, [&](const auto& gap) {
                json_.array([&] {
                    saddlerule::write(json_, gap.first);
                    saddlerule::write(json_, gap.second);
                });
            });
            years_field(range->from, range->to);
        });
    }

    void write_wheel(const WheelSuits& wheel) {
        json_.object([&] {
            nominal_field(json_, "nominal_in", wheel.nominal_inches);
            json_.key("stages").object([&] {
                for (std::size_t i = 0; i < every_stage.size(); ++i) {
                    const WheelStage& stage = wheel.stages[i];
                    if (stage.bikes == 0)
                        continue;
                    json_.key(wire_name(stage_names, every_stage[i])).object([&] {
                        field(json_, "bikes", stage.bikes);
                        field(json_, "measured", stage.measured);
                        shared_field("any", stage.any);
                        shared_field("half", stage.half);
                    });
                }
            });
        });
    }

    const Suits& suits_;
    TypicalYears years_;
    JsonWriter json_;
};

} // namespace

std::string suits(RequestFields& fields, std::span<const Bike> bikes) {
    const auto rows = optional_rows(fields);
    auto only = fields.optional_texts("only");
    const auto sd = fields.optional_number("reading_sd_mm", possible_reading_sd_mm);
    const auto form = fields.optional_choice("form", suits_form_names).value_or(SuitsForm::json);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    if (only)
        heap_sort(*only);
    const Suits turned = whom_they_suit(bikes, sd ? Length::millimetres(*sd) : usual_reading_sd());
    if (form == SuitsForm::csv) {
        JsonWriter json;
        json.object([&] { field(json, "text", suits_table(turned.bikes)); });
        return json.take();
    }
    const std::size_t size = turned.bikes.size();
    const std::size_t from = rows ? std::min(rows->from, size) : 0;
    const std::size_t count = rows ? std::min(rows->count, size - from) : size;
    return SuitsWriter(turned, only ? 0 : count).write(from, count, [&](const Bike& bike) {
        return !only || std::binary_search(only->begin(), only->end(), bike.id);
    });
}

} // namespace saddlerule
