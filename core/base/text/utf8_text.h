// UTF-8 text: from the bytes of a file, in whatever encoding it came, to text that the readers can rely on.
#pragma once

#include "core/base/outcomes/result.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace saddlerule {

/// The most that one file may hold.
constexpr std::size_t largest_file_mib = 8;
constexpr std::size_t largest_file = largest_file_mib * 1024 * 1024;

/// What bytes without a byte order mark are taken for. Windows-1252 is for files that their owner says are in
/// it: every file can be read so, and most would be read wrong.
enum class TextEncoding { told_by_file, windows_1252 };

/// The text of a file as valid UTF-8 without NUL characters and without a byte order mark.
///
/// UTF-8 (with or without a byte order mark) is returned as a view of `bytes`; UTF-16 with one, and on demand
/// Windows-1252, is converted into `converted`, which then holds the text. Nothing is guessed: other encodings are refused with what
/// they look like.
///
/// Problems: the codes file_*. Positions are those in the text.
Result<std::string_view> utf8_text(std::string_view bytes, std::string& converted,
                                   TextEncoding encoding = TextEncoding::told_by_file);

/// The offset of the first byte that is not well-formed UTF-8, or the size where all of it is.
std::size_t first_ill_formed(std::string_view bytes);

/// The number of Unicode characters in valid UTF-8.
std::size_t character_count(std::string_view utf8);

/// Appends one Unicode character, which must not be a surrogate.
void append_utf8(std::string& text, char32_t character);

} // namespace saddlerule
