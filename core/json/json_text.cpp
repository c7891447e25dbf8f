#include "core/json/json_text.h"

#include "core/text/utf8_text.h"

#include <charconv>
#include <optional>
#include <system_error>

namespace saddlerule {
namespace {

void append_escaped(std::string& text, char c) {
    constexpr std::string_view digits = "0123456789abcdef";
    switch (c) {
    case '"':
        text += "\\\"";
        return;
    case '\\':
        text += "\\\\";
        return;
    case '\n':
        text += "\\n";
        return;
    case '\r':
        text += "\\r";
        return;
    case '\t':
        text += "\\t";
        return;
    default:
        text += "\\u00";
        text += digits[static_cast<unsigned char>(c) >> 4];
        text += digits[static_cast<unsigned char>(c) & 15];
    }
}

bool needs_escape(char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == '"' || c == '\\';
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
    json += '"';
    for (std::size_t done = 0; done < utf8.size();) {
        std::size_t plain = done;
        while (plain < utf8.size() && !needs_escape(utf8[plain]))
            ++plain;
        json += utf8.substr(done, plain - done);
        if (plain < utf8.size())
            append_escaped(json, utf8[plain++]);
        done = plain;
    }
    json += '"';
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
