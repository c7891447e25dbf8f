// JSON text: a text as JSON writes it (RFC 8259, section 7).
#pragma once

#include "core/base/text/text_buffer.h"

#include <string>
#include <string_view>

namespace saddlerule {

/// Appends valid UTF-8 in double quotes, with the escapes that JSON asks for and no others.
void append_json_text(std::string& json, std::string_view utf8);
void append_json_text(TextBuffer& json, std::string_view utf8);

} // namespace saddlerule
