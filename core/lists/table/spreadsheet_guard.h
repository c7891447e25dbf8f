// Spreadsheet guard: keeps a cell from being run as a formula by a spreadsheet that opens the table, and takes
// the guard off again.
#pragma once

#include <string>
#include <string_view>

namespace saddlerule {

/// The cell with an apostrophe wherever a spreadsheet may see a formula begin: at its start and behind each character that
/// parts cells in some country, before = + - @, a tab or a line break, or one of the first four in full width, with or
/// without apostrophes before that. A plain number below zero stays one. Source: what the OWASP page on CSV injection names,
/// from memory.
std::string with_guard(std::string_view cell);

/// The cell without the apostrophes that with_guard() puts in. A view of `storage` where there were any, else of `cell`.
std::string_view without_guard(std::string_view cell, std::string& storage);

} // namespace saddlerule
