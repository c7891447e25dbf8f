// Table catalogue reader: the CSV form of a list, from text to a kept list.
#pragma once

#include "core/base/outcomes/result.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/catalogue/reading_options.h"

#include <string_view>
#include <vector>

namespace saddlerule {

/// Reads a list from valid UTF-8: lines of `# key: value`, a header, and a bike in each row. The separator is
/// the comma, semicolon or tab that makes most known names of the header, or the one that a first line `sep=`
/// names. Each row is kept as the JSON entry that says the same.
///
/// Where nothing names the units, those of the header's lengths are the list's if all of them agree, and else
/// the unit that the options name; where nothing names the currency, the one that prices name is, if they agree.
/// What was set aside in a table that is refused goes to `refused`, where that is given.
///
/// Problems: the codes table_* and file_*, with row and column name.
Result<KeptList> read_table_catalogue(std::string_view utf8, std::vector<SetAside>* refused = nullptr,
                                      const ReadingOptions& options = {});

} // namespace saddlerule
