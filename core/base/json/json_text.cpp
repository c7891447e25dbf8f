#include "core/base/json/json_text.h"

#include <cstddef>

namespace saddlerule {
namespace {

void append(std::string& text, std::string_view piece) {
    text += piece;
}

void append(std::string& text, char c) {
    text += c;
}

template <typename Piece>
void append(TextBuffer& text, Piece piece) {
    text.append(piece);
}

template <typename Text>
void append_escaped(Text& text, char c) {
    constexpr std::string_view hex_digits = "0123456789abcdef";
    switch (c) {
    case '"':
        return append(text, "\\\"");
    case '\\':
        return append(text, "\\\\");
    case '\n':
        return append(text, "\\n");
    case '\r':
        return append(text, "\\r");
    case '\t':
        return append(text, "\\t");
    default:
        append(text, "\\u00");
        append(text, hex_digits[static_cast<unsigned char>(c) >> 4]);
        append(text, hex_digits[static_cast<unsigned char>(c) & 15]);
    }
}

bool needs_escape(char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == '"' || c == '\\';
}

template <typename Text>
void append_quoted(Text& json, std::string_view utf8) {
    append(json, '"');
    const char* plain = utf8.data();
    const char* const end = plain + utf8.size();
    for (const char* at = plain; at != end; ++at) {
        if (!needs_escape(*at))
            continue;
        append(json, std::string_view(plain, static_cast<std::size_t>(at - plain)));
        append_escaped(json, *at);
        plain = at + 1;
    }
    append(json, std::string_view(plain, static_cast<std::size_t>(end - plain)));
    append(json, '"');
}

} // namespace

void append_json_text(std::string& json, std::string_view utf8) {
    append_quoted(json, utf8);
}

void append_json_text(TextBuffer& json, std::string_view utf8) {
    append_quoted(json, utf8);
}

} // namespace saddlerule
