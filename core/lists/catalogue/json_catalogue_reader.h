// JSON catalogue reader: the JSON form of a list, from text to a kept list.
#pragma once

#include "core/base/outcomes/result.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/catalogue/reading_options.h"

#include <string_view>
#include <vector>

namespace saddlerule {

/// Reads a list from valid UTF-8, which has to last as long as the list. Bikes that cannot be used are set aside
/// and the rest is read; a file of which nothing can be used is refused, unless it is to be mended. What was set aside in a file that is refused goes to `refused`,
/// where that is given.
///
/// Problems: the codes json_* and file_*, with their position.
Result<KeptList> read_json_catalogue(std::string_view utf8, std::vector<SetAside>* refused = nullptr,
                                     const ReadingOptions& options = {});

} // namespace saddlerule
