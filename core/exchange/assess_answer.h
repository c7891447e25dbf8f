// The answer to `assess`: an assessment as JSON.
#pragma once

#include "core/choice/assessment.h"
#include "core/exchange/answer_json.h"

#include <string>
#include <unordered_set>

namespace saddlerule {

/// Written piece by piece, since the answer for a list of 20,000 bikes is long. `taped` are those handed over
/// with the request; `set_aside` is the JSON text of those among them that could not be used.
std::string assess_answer(const Assessment& assessment, const Rider& rider,
                          const std::unordered_set<const Bike*>& taped, const Json& set_aside);

/// `fits_now` and so on.
std::string_view name_of(Verdict verdict);

} // namespace saddlerule
