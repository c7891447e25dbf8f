// JSON text: a text as JSON writes it (RFC 8259, section 7), and read back.
#pragma once

#include "core/text/text_buffer.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace saddlerule {

/// Appends valid UTF-8 in double quotes, with the escapes that JSON asks for and no others.
void append_json_text(std::string& json, std::string_view utf8);
void append_json_text(TextBuffer& json, std::string_view utf8);

/// The length of the text in quotes at the front of `json`, and into `utf8` what it says; 0 where none stands that is
/// closed and well-formed, in UTF-8 too, and then `utf8` means nothing.
std::size_t read_json_text(std::string_view json, std::string& utf8);

} // namespace saddlerule
