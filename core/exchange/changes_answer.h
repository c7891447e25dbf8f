// The answer to `changes`: the smallest changes of the question that put another bike first.
#pragma once

#include "core/choice/what_would_change.h"
#include "core/exchange/answer_json.h"

namespace saddlerule {

Json changes_answer(const AnswerChanges& changes, const Rider& rider);

} // namespace saddlerule
