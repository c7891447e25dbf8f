#include "core/exchange/engine.h"

#include "core/base/sorting/sorting.h"
#include "core/base/text/utf8_text.h"
#include "core/exchange/assess_answer.h"
#include "core/exchange/changes_answer.h"
#include "core/exchange/club_day_answer.h"
#include "core/exchange/club_day_request.h"
#include "core/exchange/forecast_answer.h"
#include "core/exchange/judged_question.h"
#include "core/exchange/list_desk.h"
#include "core/exchange/problem_answer.h"
#include "core/exchange/read_bike_answer.h"
#include "core/exchange/read_riders_answer.h"
#include "core/exchange/request_fields.h"
#include "core/exchange/rider_request.h"
#include "core/exchange/side_view_answer.h"
#include "core/exchange/suits_answer.h"
#include "core/exchange/taped_bikes.h"
#include "core/exchange/years_answer.h"
#include "core/fit/drawing/side_view.h"
#include "core/fit/growth/inseam_forecast.h"
#include "core/fit/growth/rider_growth.h"
#include "core/lists/catalogue/bike_reader.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace saddlerule {
namespace {

constexpr WireName<Detail> detail_names[] = {
    {"full", Detail::full},
    {"brief", Detail::brief},
    {"spans", Detail::spans},
};

/// Requests are not lists of bikes, but many may come in one array.
/// Entries of a list come as texts.
constexpr JsonLimits request_limits{.depth = 32, .text_length = 4 * largest_file, .values = 500'000};

const auto forecast_months = *ClosedRange<double>::between(1.0, horizon_months);

const Bike* bike_of(const std::string& id, std::span<const Bike> bikes) {
    const auto found =
        std::find_if(bikes.begin(), bikes.end(), [&](const Bike& bike) { return bike.id == id; });
    return found == bikes.end() ? nullptr : &*found;
}

/// A request on its way to its answer.
struct Asked {
    RequestFields& fields;
    std::string_view text;
    const GivenFile& file;
};

} // namespace

struct Engine::State {
    AboutAnswer about;
    ListDesk desk;
    std::unique_ptr<const JudgedQuestion> last; ///< about the list on the desk

    std::string answer_one(const JsonValue& request, std::string_view request_text, const GivenFile& file);
    std::string assess(RequestFields& fields, std::string_view request_text);
    std::string changes(RequestFields& fields, std::string_view request_text);
    std::string forecast(RequestFields& fields, std::string_view request_text);
    std::string side_view(RequestFields& fields, std::string_view request_text);
    std::string constants(RequestFields& fields);

    const Catalogue* loaded() const { return desk.catalogue(); }
    std::span<const Bike> listed() const { return desk.bikes(); }

    /// The bike that the request names, of the list or measured by hand; null, with a report where it names one, if there is none.
    const Bike* named_bike(RequestFields& fields, const std::optional<std::string>& id,
                           const TapedBikes& taped) const;
};

const Bike* Engine::State::named_bike(RequestFields& fields, const std::optional<std::string>& id,
                                      const TapedBikes& taped) const {
    if (!id)
        return nullptr;
    const Bike* bike = bike_of(*id, listed());
    if (bike == nullptr)
        bike = bike_of(*id, taped.bikes);
    if (bike == nullptr)
        fields.report("bike", ProblemCode::request_bike_unknown, {{"id", *id}});
    return bike;
}

std::string Engine::State::answer_one(const JsonValue& request, std::string_view request_text,
                                      const GivenFile& file) {
    // Called through pointers: a compiler that knew each of them called once would make one function of them all, which browsers
    // compile as a whole at the first request.
    using Answer = std::string (*)(State&, const Asked&);
    static constexpr WireName<Answer> answers[] = {
        {"load",
         [](State& state, const Asked& asked) {
             state.last.reset(); // makes room; the list itself stays until the new one is read
             return state.desk.load(asked.fields, asked.file);
         }},
        {"new_list",
         [](State& state, const Asked& asked) {
             state.last.reset();
             return state.desk.new_list(asked.fields, asked.text);
         }},
        {"list", [](State& state, const Asked& asked) { return state.desk.list(asked.fields); }},
        {"entry", [](State& state, const Asked& asked) { return state.desk.entry(asked.fields); }},
        {"check_entry",
         [](State& state, const Asked& asked) { return state.desk.check_entry(asked.fields); }},
        {"edit",
         [](State& state, const Asked& asked) {
             state.last.reset();
             return state.desk.edit(asked.fields, asked.text);
         }},
        {"compare",
         [](State& state, const Asked& asked) { return state.desk.compare(asked.fields, asked.file); }},
        {"merge",
         [](State& state, const Asked& asked) {
             state.last.reset();
             return state.desk.merge(asked.fields, asked.file);
         }},
        {"save", [](State& state, const Asked& asked) { return state.desk.save(asked.fields); }},
        {"assess", [](State& state, const Asked& asked) { return state.assess(asked.fields, asked.text); }},
        {"changes", [](State& state, const Asked& asked) { return state.changes(asked.fields, asked.text); }},
        {"forecast",
         [](State& state, const Asked& asked) { return state.forecast(asked.fields, asked.text); }},
        {"side_view",
         [](State& state, const Asked& asked) { return state.side_view(asked.fields, asked.text); }},
        {"read_bike", [](State&, const Asked& asked) { return read_bike(asked.fields); }},
        {"read_riders", [](State&, const Asked& asked) { return read_riders(asked.fields); }},
        {"write_riders", [](State&, const Asked& asked) { return write_riders(asked.fields); }},
        {"club_day", [](State& state, const Asked& asked) { return club_day(asked.fields, state.listed()); }},
        {"suits", [](State& state, const Asked& asked) { return suits(asked.fields, state.listed()); }},
        {"years_ahead",
         [](State& state, const Asked& asked) {
             return years_answer(asked.fields, asked.text, state.loaded(), state.listed(),
                                 asked.file.may_go_on);
         }},
        {"about", [](State& state, const Asked& asked) { return state.constants(asked.fields); }},
    };
    RequestFields fields(request, "");
    const auto answer = fields.optional_choice("do", answers);
    fields.require(answer.has_value(), "do", all_names(answers));
    return answer ? (*answer)(*this, {fields, request_text, file}) : error_answer(*fields.finish());
}

std::string Engine::State::constants(RequestFields& fields) {
    if (about == nullptr)
        fields.report({.code = ProblemCode::request_value_unknown,
                       .figures = {{"value", "about"}, {"known", ProblemWord::other_requests}},
                       .where = "do",
                       .position = {}});
    if (auto problem = fields.finish())
        return error_answer(*problem);
    return about();
}

std::string Engine::State::assess(RequestFields& fields, std::string_view request_text) {
    FitQuestion question = fit_question(fields);
    TapedBikes taped = taped_bikes(fields, request_text, loaded());
    const Detail detail = fields.optional_choice("detail", detail_names).value_or(Detail::full);
    auto only = fields.optional_texts("only");
    const auto rows = optional_rows(fields);
    std::string key = question_key(fields, request_text);
    if (auto problem = fields.finish())
        return error_answer(*problem);

    if (!last || last->key != key)
        last = judge_question(std::move(question), std::move(taped), std::move(key), listed());
    if (only)
        heap_sort(*only);
    const AssessAnswerParts parts{.detail = detail,
                                  .rows = rows,
                                  .only = std::move(only),
                                  .taped = last->taped.bikes,
                                  .taped_notes = last->taped.notes,
                                  .list_set_aside =
                                      loaded() && !rows ? loaded()->set_aside : std::span<const SetAside>(),
                                  .taped_set_aside = last->taped.set_aside,
                                  .notes = last->notes};
    return assess_answer(last->assessment, last->question.rider, parts);
}

std::string Engine::State::changes(RequestFields& fields, std::string_view request_text) {
    const FitQuestion question = fit_question(fields);
    const TapedBikes taped = taped_bikes(fields, request_text, loaded());
    if (auto problem = fields.finish())
        return error_answer(*problem);
    return changes_answer(what_would_change(question, listed(), taped.bikes), question.rider);
}

std::string Engine::State::forecast(RequestFields& fields, std::string_view request_text) {
    const CalendarDate today = fields.required_day("today");
    const Rider rider = required_rider(fields, today);
    const TapedBikes taped = taped_bikes(fields, request_text, loaded());
    const Bike* bike = named_bike(fields, fields.optional_text("bike"), taped);
    const auto months = fields.optional_number("months", forecast_months);
    fields.require(months && std::floor(*months) == *months, "months", ProblemWord::whole_months);
    const bool centiles = fields.optional_flag("centiles").value_or(false);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    return forecast_answer(rider, today,
                           {.months = static_cast<int>(*months), .bike = bike, .centiles = centiles});
}

std::string Engine::State::side_view(RequestFields& fields, std::string_view request_text) {
    const CalendarDate today = fields.required_day("today");
    const Rider rider = required_rider(fields, today);
    const TapedBikes taped = taped_bikes(fields, request_text, loaded());
    const auto id = fields.optional_text("bike");
    fields.require(id.has_value(), "bike", ProblemWord::id_of_bike);
    const Bike* bike = named_bike(fields, id, taped);
    if (auto problem = fields.finish())
        return error_answer(*problem);

    const InseamToday inseam = RiderGrowth::of(rider, today).today();
    const Fit fit = fit_of(SaddleSpan::of(*bike), {inseam.mean, inseam.sd},
                           window_offsets(rider.stage, rider.confidence));
    return side_view_answer(saddlerule::side_view(*bike, fit, inseam.mean), rider, inseam.mean);
}

Engine::Engine(AboutAnswer about) : state_(new State{.about = about, .desk = {}, .last = {}}) {}
Engine::~Engine() = default;

std::string Engine::answer(std::string_view request, std::string file, const ReadingProgress& progress,
                           const MayGoOn& may_go_on) {
    if (const std::size_t ill_formed = first_ill_formed(request); ill_formed < request.size())
        return error_answer({.code = ProblemCode::request_not_utf8,
                             .figures = {{"byte", ill_formed + 1}},
                             .where = {},
                             .position = {}});
    const auto read = read_json(request, request_limits);
    if (!read)
        return error_answer(read.problem());
    const GivenFile given{.bytes = std::make_shared<const std::string>(std::move(file)),
                          .progress = progress,
                          .may_go_on = may_go_on};
    if (read->kind != JsonValue::Kind::array)
        return state_->answer_one(*read, request, given);
    std::string answers = "[";
    for (const JsonValue& one : read->items) {
        if (answers.size() > 1)
            answers += ',';
        answers += state_->answer_one(one, request, given);
    }
    return answers + ']';
}

} // namespace saddlerule
