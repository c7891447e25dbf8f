// JSON list writer: a kept list as the text of a file in JSON. What nobody touched is written as it was.
#pragma once

#include "core/lists/catalogue/kept_list.h"

#include <cstddef>
#include <string>
#include <vector>

namespace saddlerule {

/// What a list says of itself as one object in JSON, without bikes: format and version, the known fields in
/// the order in which they are written, then those that are not known.
std::string header_json(const std::vector<UnknownField>& header);

/// The whole file, an entry a line as long as it can be opened again that way. `numbers` are those of the entries
/// that it is to hold.
std::string json_list(const KeptList& list, const std::vector<std::size_t>& numbers);

/// How many bytes a file with all these entries has at the least.
std::size_t least_json_size(const std::vector<ListEntry>& entries, const std::vector<UnknownField>& header);

} // namespace saddlerule
