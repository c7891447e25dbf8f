// The answers to `entry` and `check_entry`: one entry as cells, and what there is to say about it.
#pragma once

#include "core/exchange/json_writer.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/keeping/entry_text.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace saddlerule {

/// @param with_next_id with the id for one more bike as well, which counts on from this one's
std::string entry_answer(const KeptList& list, std::size_t number, bool with_next_id);

/// About an entry with those cells, in place of the one of that number, or behind all others where it is 0.
std::string check_entry_answer(const KeptList& list, std::size_t number, std::span<const FieldCell> cells);

/// The number of the entry of that id, or 0.
std::size_t number_of_id(const Catalogue& catalogue, const std::string& id);

/// `cells`: the fields of an entry as cells.
void cells_field(JsonWriter& json, const KeptList& list, std::string_view source);

} // namespace saddlerule
