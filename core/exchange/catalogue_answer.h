// The answers to `load` and `list`: what a catalogue holds, what was set aside and what was noticed.
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/exchange/answer_json.h"

#include <string>
#include <vector>

namespace saddlerule {

Json load_answer(const Catalogue& catalogue);

/// With the facts of every bike; `catalogue` may be null while none is loaded. Written piece by piece: it may
/// be long.
std::string list_answer(const Catalogue* catalogue);

Json set_aside_json(const std::vector<SetAside>& set_aside);

} // namespace saddlerule
