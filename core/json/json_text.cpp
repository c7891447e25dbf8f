#include "core/json/json_text.h"

#include "core/text/utf8_text.h"

#include <charconv>
#include <optional>
#include <system_error>

namespace saddlerule {
namespace {

void append(std::string& text, std::string_view piece) {
    text += piece;
}

void append(TextBuffer& text, std::string_view piece) {
    text.append(piece);
}

template <typename Text>
void append_escaped(Text& text, char c) {
    constexpr std::string_view digits = "0123456789abcdef";
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
        append(text, digits.substr(static_cast<unsigned char>(c) >> 4, 1));
        append(text, digits.substr(static_cast<unsigned char>(c) & 15, 1));
    }
}

bool needs_escape(char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == '"' || c == '\\';
}

template <typename Text>
void append_quoted(Text& json, std::string_view utf8) {
    append(json, "\"");
    const char* plain = utf8.data();
    const char* const end = plain + utf8.size();
    for (const char* at = plain; at != end; ++at) {
        if (!needs_escape(*at))
            continue;
        append(json, {plain, static_cast<std::size_t>(at - plain)});
        append_escaped(json, *at);
        plain = at + 1;
    }
    append(json, {plain, static_cast<std::size_t>(end - plain)});
    append(json, "\"");
}

constexpr std::string_view short_escapes = "\"\\/bfnrt";
constexpr std::string_view what_they_say = "\"\\/\b\f\n\r\t";

constexpr std::size_t unit_length = 6; // \uXXXX

std::optional<char32_t> code_unit(std::string_view json) {
    unsigned unit = 0;
    const char* const end = json.data() + unit_length;
    if (json.size() < unit_length || !json.starts_with("\\u"))
        return std::nullopt;
    const auto [stop, error] = std::from_chars(json.data() + 2, end, unit, 16);
    if (error != std::errc() || stop != end)
        return std::nullopt;
    return unit;
}

/// The same for the escape at the front of `json`.
std::size_t read_escape(std::string_view json, std::string& utf8) {
    const std::size_t which = json.size() < 2 ? std::string_view::npos : short_escapes.find(json[1]);
    if (which != std::string_view::npos) {
        utf8 += what_they_say[which];
        return 2;
    }
    const auto unit = code_unit(json);
    if (!unit)
        return 0;
    if (*unit < 0xD800 || *unit > 0xDFFF) {
        append_utf8(utf8, *unit);
        return unit_length;
    }
    const char32_t low = code_unit(json.substr(unit_length)).value_or(0);
    if (*unit > 0xDBFF || low < 0xDC00 || low > 0xDFFF)
        return 0;
    append_utf8(utf8, 0x10000 + ((*unit - 0xD800) << 10U) + (low - 0xDC00));
    return 2 * unit_length;
}

} // namespace

void append_json_text(std::string& json, std::string_view utf8) {
    append_quoted(json, utf8);
}

void append_json_text(TextBuffer& json, std::string_view utf8) {
    append_quoted(json, utf8);
}

std::size_t read_json_text(std::string_view json, std::string& utf8) {
    utf8.clear();
    if (!json.starts_with('"'))
        return 0;
    for (std::size_t at = 1; at < json.size();) {
        std::size_t end = at;
        bool ascii = true;
        for (; end < json.size() && !needs_escape(json[end]); ++end)
            ascii = ascii && static_cast<unsigned char>(json[end]) < 0x80;
        const std::string_view plain = json.substr(at, end - at);
        if (end == json.size() || (!ascii && first_ill_formed(plain) < plain.size()))
            return 0;
        utf8 += plain;
        at = end;
        if (json[at] == '"')
            return at + 1;
        const std::size_t escape = json[at] == '\\' ? read_escape(json.substr(at), utf8) : 0;
        if (escape == 0)
            return 0;
        at += escape;
    }
    return 0;
}

} // namespace saddlerule
