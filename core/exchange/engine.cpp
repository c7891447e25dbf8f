#include "core/exchange/engine.h"

#include "core/catalogue/bike_reader.h"
#include "core/catalogue/catalogue_reader.h"
#include "core/drawing/side_view.h"
#include "core/exchange/about_answer.h"
#include "core/exchange/assess_answer.h"
#include "core/exchange/catalogue_answer.h"
#include "core/exchange/changes_answer.h"
#include "core/exchange/forecast_answer.h"
#include "core/exchange/judged_question.h"
#include "core/exchange/problem_answer.h"
#include "core/exchange/request_fields.h"
#include "core/exchange/rider_request.h"
#include "core/exchange/side_view_answer.h"
#include "core/exchange/taped_bikes.h"
#include "core/growth/inseam_forecast.h"
#include "core/growth/rider_growth.h"
#include "core/text/utf8_text.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace saddlerule {
namespace {

enum class Task { load, list, assess, changes, forecast, side_view, about };

constexpr WireName<Task> task_names[] = {
    {"load", Task::load},       {"list", Task::list},         {"assess", Task::assess},
    {"changes", Task::changes}, {"forecast", Task::forecast}, {"side_view", Task::side_view},
    {"about", Task::about},
};

constexpr WireName<Detail> detail_names[] = {
    {"full", Detail::full},
    {"brief", Detail::brief},
};

/// Requests are not lists of bikes, but many may come in one array.
constexpr JsonLimits request_limits{.depth = 32, .text_length = 2000, .values = 500'000};

/// A file's bytes, which outlive their request as long as they are the loaded list's text.
using FileBytes = std::shared_ptr<const std::string>;

const auto possible_place = *ClosedRange<double>::between(0.0, 1e6);
const auto forecast_months = *ClosedRange<double>::between(1.0, horizon_months);

const Bike* bike_of(const std::string& id, std::span<const Bike> bikes) {
    const auto found =
        std::find_if(bikes.begin(), bikes.end(), [&](const Bike& bike) { return bike.id == id; });
    return found == bikes.end() ? nullptr : &*found;
}

/// `rows`: `{ "from": 0, "count": 60 }`.
std::optional<Rows> optional_rows(RequestFields& fields) {
    const JsonValue* value = fields.optional("rows");
    if (value == nullptr)
        return std::nullopt;
    RequestFields row_fields(*value, fields.path_of("rows"));
    const auto from = row_fields.optional_number("from", possible_place);
    const auto count = row_fields.optional_number("count", possible_place);
    row_fields.require(count.has_value(), "count", "a number of rows");
    if (auto problem = row_fields.finish())
        fields.report(*std::move(problem));
    return Rows{static_cast<std::size_t>(from.value_or(0.0)), static_cast<std::size_t>(count.value_or(0.0))};
}

} // namespace

struct Engine::State {
    std::optional<KeptList> list;
    std::unique_ptr<const JudgedQuestion> last; ///< about this list

    std::string answer_one(const JsonValue& request, std::string_view request_text, const FileBytes& file);
    std::string load(RequestFields& fields, const FileBytes& file);
    std::string assess(RequestFields& fields, std::string_view request_text);
    std::string changes(RequestFields& fields, std::string_view request_text);
    std::string forecast(RequestFields& fields);
    std::string side_view(RequestFields& fields, std::string_view request_text);

    const Catalogue* loaded() const { return list ? &list->catalogue : nullptr; }

    std::span<const Bike> listed() const {
        return list ? std::span<const Bike>(list->catalogue.bikes) : std::span<const Bike>();
    }
};

std::string Engine::State::answer_one(const JsonValue& request, std::string_view request_text,
                                      const FileBytes& file) {
    RequestFields fields(request, "");
    const auto task = fields.optional_choice("do", task_names);
    fields.require(task.has_value(), "do", "one of load, list, assess, changes, forecast, side_view, about");
    if (!task)
        return error_answer(*fields.finish());
    switch (*task) {
    case Task::load:
        return load(fields, file);
    case Task::assess:
        return assess(fields, request_text);
    case Task::changes:
        return changes(fields, request_text);
    case Task::forecast:
        return forecast(fields);
    case Task::side_view:
        return side_view(fields, request_text);
    case Task::list:
    case Task::about:
        break;
    }
    if (auto problem = fields.finish())
        return error_answer(*problem);
    return *task == Task::list ? list_answer(loaded()) : about_answer();
}

std::string Engine::State::load(RequestFields& fields, const FileBytes& file) {
    if (auto problem = fields.finish())
        return error_answer(*problem);
    last.reset(); // makes room; the list itself stays until the new one is read
    std::vector<SetAside> refused;
    auto read = read_catalogue(file, &refused);
    if (!read)
        return load_refusal(read.problem(), refused);
    list = std::move(read).value();
    return load_answer(list->catalogue);
}

std::string Engine::State::assess(RequestFields& fields, std::string_view request_text) {
    FitQuestion question = fit_question(fields);
    TapedBikes taped = taped_bikes(fields, request_text, loaded());
    const Detail detail = fields.optional_choice("detail", detail_names).value_or(Detail::full);
    const auto only = fields.optional_texts("only");
    const auto rows = optional_rows(fields);
    std::string key = question_key(fields, request_text);
    if (auto problem = fields.finish())
        return error_answer(*problem);

    if (!last || last->key != key)
        last = judge_question(std::move(question), std::move(taped), std::move(key), listed());
    AssessAnswerParts parts{.detail = detail,
                            .rows = rows,
                            .only = {},
                            .taped = {},
                            .taped_set_aside = last->taped.set_aside,
                            .notes = last->notes};
    if (only)
        parts.only.emplace(only->begin(), only->end());
    for (const Bike& bike : last->taped.bikes)
        parts.taped.insert(&bike);
    return assess_answer(last->assessment, last->question.rider, parts);
}

std::string Engine::State::changes(RequestFields& fields, std::string_view request_text) {
    const FitQuestion question = fit_question(fields);
    const TapedBikes taped = taped_bikes(fields, request_text, loaded());
    if (auto problem = fields.finish())
        return error_answer(*problem);
    return changes_answer(what_would_change(question, listed(), taped.bikes), question.rider);
}

std::string Engine::State::forecast(RequestFields& fields) {
    const CalendarDate today = fields.required_day("today");
    const Rider rider = required_rider(fields);
    const auto months = fields.optional_number("months", forecast_months);
    fields.require(months.has_value(), "months", "a number of months, 1 to 96");
    if (auto problem = fields.finish())
        return error_answer(*problem);
    return forecast_answer(rider, today, static_cast<int>(*months));
}

std::string Engine::State::side_view(RequestFields& fields, std::string_view request_text) {
    const CalendarDate today = fields.required_day("today");
    const Rider rider = required_rider(fields);
    const TapedBikes taped = taped_bikes(fields, request_text, loaded());
    const auto id = fields.optional_text("bike");
    fields.require(id.has_value(), "bike", "the id of a bike");
    const Bike* bike = id ? bike_of(*id, listed()) : nullptr;
    if (id && bike == nullptr)
        bike = bike_of(*id, taped.bikes);
    if (id && bike == nullptr)
        fields.report("bike", ProblemCode::request_bike_unknown, {{"id", *id}});
    if (auto problem = fields.finish())
        return error_answer(*problem);

    const InseamToday inseam = RiderGrowth::of(rider, today).today();
    const Fit fit = fit_of(SaddleSpan::of(*bike), {inseam.mean, inseam.sd},
                           window_offsets(rider.stage, rider.confidence));
    return side_view_answer(saddlerule::side_view(*bike, fit, inseam.mean), rider, inseam.mean);
}

Engine::Engine() : state_(std::make_unique<State>()) {}
Engine::~Engine() = default;

std::string Engine::answer(std::string_view request, std::string file) {
    if (const std::size_t ill_formed = first_ill_formed(request); ill_formed < request.size())
        return error_answer({.code = ProblemCode::request_not_utf8,
                             .figures = {{"byte", std::to_string(ill_formed + 1)}},
                             .where = {},
                             .position = {}});
    const auto read = read_json(request, request_limits);
    if (!read)
        return error_answer(read.problem());
    const auto bytes = std::make_shared<const std::string>(std::move(file));
    if (read->kind != JsonValue::Kind::array)
        return state_->answer_one(*read, request, bytes);
    std::string answers = "[";
    for (const JsonValue& one : read->items) {
        if (answers.size() > 1)
            answers += ',';
        answers += state_->answer_one(one, request, bytes);
    }
    return answers + ']';
}

} // namespace saddlerule
