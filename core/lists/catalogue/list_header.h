// List header: what a list says of itself beside its bikes, in whichever form it came.
#pragma once

#include "core/base/json/located_json.h"
#include "core/lists/catalogue/kept_list.h"

#include <optional>
#include <string>
#include <string_view>

namespace saddlerule {

/// As far as they can be read. `header` is the top-level object, with or without its bikes.
ReadingFacts reading_facts(const JsonValue& header);

/// What makes a list useless as a whole: another format or version, a field said twice, an unknown unit.
///
/// Problems: the codes file_*, placed by `places` where that is given. `text` is what `header` was read from.
std::optional<Problem> header_fault(const JsonValue& header, std::string_view text, EntryPlaces* places);

/// Puts title, day, units, currency and the rest of the header into the list, in place of those that it had.
/// What cannot be read is kept and noted: no list is refused for it.
void take_header(const JsonValue& header, std::string_view text, KeptList& list);

/// The value of that name, or nullptr where it is absent or null.
const JsonValue* given(const JsonValue& object, std::string_view name);

/// "bikes[3]" for the entry of that number.
std::string entry_path(std::size_t number);

} // namespace saddlerule
