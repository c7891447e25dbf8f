#include "core/json/json_text.h"

#include <cstddef>

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

} // namespace saddlerule
