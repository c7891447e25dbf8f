// JSON catalogue reader: the JSON form of a list, from text to a catalogue.
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outcomes/result.h"

#include <string_view>
#include <vector>

namespace saddlerule {

/// Reads a list from valid UTF-8. Bikes that cannot be used are set aside and the rest is read; a file of
/// which nothing can be used is refused. What was set aside in a file that is refused goes to `refused`,
/// where that is given.
///
/// Problems: the codes json_* and file_*, with their position.
Result<Catalogue> read_json_catalogue(std::string_view utf8, std::vector<SetAside>* refused = nullptr);

} // namespace saddlerule
