// The answers to `load` and `list`: what a catalogue holds, what was set aside and what was noticed.
#pragma once

#include "core/exchange/json_writer.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/catalogue/table_head.h"
#include "core/lists/keeping/list_slips.h"

#include <string>
#include <vector>

namespace saddlerule {

void write_set_aside(JsonWriter& json, const SetAside& entry);
void write(JsonWriter& json, const std::vector<SetAside>& set_aside);

/// What is seen of a table whose columns need a word of whoever opens it; no field where it is null.
void table_field(JsonWriter& json, const TableSketch* table);

std::string load_answer(const KeptList& list, const TableSketch* table);

/// A file that was refused as a whole: the error, and what was set aside in it.
std::string load_refusal(const Problem& problem, const std::vector<SetAside>& set_aside,
                         const TableSketch* table);

/// With the facts of every bike; `list` may be null while none is loaded.
std::string list_answer(const KeptList* list, const std::vector<SlipMark>& slips);

} // namespace saddlerule
