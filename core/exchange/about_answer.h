// The answer to `about`: version, every constant the engine judges with and where it comes from, published
// references, the requests it knows and the problems it can name.
#pragma once

#include "core/exchange/answer_json.h"

namespace saddlerule {

Json about_answer();

} // namespace saddlerule
