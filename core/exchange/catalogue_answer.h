// The answers to `load` and `list`: what a catalogue holds, what was set aside and what was noticed.
#pragma once

#include "core/exchange/json_writer.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/keeping/list_slips.h"

#include <string>
#include <vector>

namespace saddlerule {

void write_set_aside(JsonWriter& json, const SetAside& entry);
void write(JsonWriter& json, const std::vector<SetAside>& set_aside);

std::string load_answer(const KeptList& list);

/// A file that was refused as a whole: the error, and what was set aside in it.
std::string load_refusal(const Problem& problem, const std::vector<SetAside>& set_aside);

/// With the facts of every bike; `list` may be null while none is loaded.
std::string list_answer(const KeptList* list, const std::vector<SlipMark>& slips);

} // namespace saddlerule
