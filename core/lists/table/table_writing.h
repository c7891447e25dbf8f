// Table writing: cells into a text of separated values (RFC 4180).
#pragma once

#include <string>
#include <string_view>

namespace saddlerule {

/// Appends one cell, in quotes where a reader would need them: around separators, quotes, line breaks, and
/// blanks at either end.
void append_table_cell(std::string& table, std::string_view cell, char separator);

/// What RFC 4180 ends a line with.
constexpr std::string_view table_line_end = "\r\n";

} // namespace saddlerule
