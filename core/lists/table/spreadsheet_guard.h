// Spreadsheet guard: keeps a cell from being run as a formula by a spreadsheet that opens the table, and takes
// the guard off again.
#pragma once

#include <string>
#include <string_view>

namespace saddlerule {

/// The cell with an apostrophe in front where a spreadsheet may run it: where it begins with = + - @, a tab or a
/// line break, or one of the first four in full width, with or without apostrophes before that. A plain number
/// below zero stays one. Source: what the OWASP page on CSV injection names, from memory.
std::string with_guard(std::string_view cell);

/// The cell without the apostrophe that with_guard() puts in front.
std::string_view without_guard(std::string_view cell);

} // namespace saddlerule
