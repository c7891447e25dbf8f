// JudgedQuestion: a question with its answer, kept so that rows and details of the answer can be asked for one after
// another without judging the list again.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/exchange/taped_bikes.h"
#include "core/fit/choice/assessment.h"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// Reads what `assess` and `changes` have in common: `today`, `rider`, `wants`, `resale_share`.
FitQuestion fit_question(RequestFields& fields);

/// The questions that a rider's figures raise, with their place in the request.
std::vector<Problem> notes_on(const Rider& rider, CalendarDate today);

struct JudgedQuestion {
    std::string key; ///< the question's own text: equal keys ask the same of the same list
    FitQuestion question;
    TapedBikes taped;
    std::vector<Problem> notes;
    Assessment assessment; ///< points into `taped` and into the list
};

/// What the answer depends on beside the list, as it is in the request.
std::string question_key(RequestFields& fields, std::string_view request_text);

/// Judges anew. Problems are reported to `fields`, and the result is only good where there are none.
std::unique_ptr<const JudgedQuestion> judge_question(FitQuestion question, TapedBikes taped, std::string key,
                                                     std::span<const Bike> list);

} // namespace saddlerule
