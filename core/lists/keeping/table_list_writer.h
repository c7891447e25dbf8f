// Table list writer: a kept list as the text of a file of separated values, which reads back as the same list.
#pragma once

#include "core/lists/catalogue/kept_list.h"

#include <cstddef>
#include <string>
#include <vector>

namespace saddlerule {

struct TableForm {
    char separator = ','; ///< comma, semicolon or tab
    char decimal_mark = '.';
};

struct TableText {
    std::string text;
    /// Entries that no row can hold, each with the reason: what is no group of fields, has no fields or one
    /// of them twice, or would take the table beyond its columns.
    std::vector<SetAside> left_out;
};

/// Lines of `# key: value`, the names of the columns, and a row for each entry of those numbers. Columns are
/// the fields that these entries have, in the order of the table of fields, then those that are not known in
/// the order in which they come up. Cells that a spreadsheet would run as formulas are guarded.
TableText table_list(const KeptList& list, const std::vector<std::size_t>& numbers, const TableForm& form);

} // namespace saddlerule
