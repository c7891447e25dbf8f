#include "core/exchange/judged_question.h"

#include "core/exchange/rider_request.h"
#include "core/exchange/wants_request.h"
#include "core/fit/growth/reading_plausibility.h"

#include <utility>

namespace saddlerule {
namespace {

const auto possible_share = *ClosedRange<double>::between(0.0, 1.0);

Wants optional_wants(RequestFields& fields) {
    const JsonValue* value = fields.optional("wants");
    if (value == nullptr)
        return {};
    auto wants = wants_from_request(*value, fields.path_of("wants"));
    if (wants)
        return std::move(wants).value();
    fields.report(std::move(wants).problem());
    return {};
}

} // namespace

FitQuestion fit_question(RequestFields& fields) {
    FitQuestion question{.rider = {}, .today = fields.required_day("today"), .wants = {}};
    question.rider = required_rider(fields, question.today);
    question.wants = optional_wants(fields);
    question.resale_share =
        fields.optional_number("resale_share", possible_share).value_or(usual_resale_share);
    return question;
}

std::vector<Problem> notes_on(const Rider& rider, CalendarDate today) {
    std::vector<Problem> notes = rider_notes(rider, today);
    for (Problem& note : notes)
        note = std::move(note).within("rider");
    return notes;
}

std::string question_key(RequestFields& fields, std::string_view request_text) {
    std::string key;
    for (const char* name : {"today", "rider", "wants", "resale_share", "taped", "taped_units"}) {
        if (const JsonValue* value = fields.optional(name))
            key += value->written_in(request_text);
        key += '\n';
    }
    return key;
}

std::unique_ptr<const JudgedQuestion> judge_question(FitQuestion question, TapedBikes taped, std::string key,
                                                     std::span<const Bike> list) {
    Assessment assessment = assess(question, list, taped.bikes);
    std::vector<Problem> notes = notes_on(question.rider, question.today);
    // The taped bikes stay where they are when their vector moves, so the assessment goes on pointing at them.
    return std::unique_ptr<const JudgedQuestion>(new JudgedQuestion{.key = std::move(key),
                                                                    .question = std::move(question),
                                                                    .taped = std::move(taped),
                                                                    .notes = std::move(notes),
                                                                    .assessment = std::move(assessment)});
}

} // namespace saddlerule
