// The answer to `changes`: the smallest changes of the question that put another bike first.
#pragma once

#include "core/fit/choice/what_would_change.h"

#include <string>

namespace saddlerule {

std::string changes_answer(const AnswerChanges& changes, const Rider& rider);

} // namespace saddlerule
