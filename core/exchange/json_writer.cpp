#include "core/exchange/json_writer.h"

#include <cmath>

namespace saddlerule {
namespace {

constexpr double powers_of_ten[] = {1.0, 10.0, 100.0, 1e3, 1e4, 1e5, 1e6};
constexpr double too_large = 1e12;

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

void JsonWriter::separate() {
    if (!first_)
        text_ += ',';
    first_ = false;
}

void JsonWriter::open(char bracket) {
    separate();
    text_ += bracket;
    first_ = true;
}

void JsonWriter::close(char bracket) {
    text_ += bracket;
    first_ = false;
}

JsonWriter& JsonWriter::key(std::string_view name) {
    separate();
    text_ += '"';
    text_ += name;
    text_ += "\":";
    first_ = true;
    return *this;
}

void JsonWriter::null() {
    raw("null");
}

void JsonWriter::flag(bool value) {
    raw(value ? "true" : "false");
}

void JsonWriter::integer(long long value) {
    raw(std::to_string(value));
}

void JsonWriter::number(double value, int decimals) {
    if (!(std::abs(value) < too_large)) {
        null();
        return;
    }
    separate();
    long long scaled = std::llround(value * powers_of_ten[decimals]);
    if (scaled < 0) {
        text_ += '-';
        scaled = -scaled;
    }
    int places = decimals;
    while (places > 0 && scaled % 10 == 0) {
        scaled /= 10;
        --places;
    }
    std::string digits = std::to_string(scaled);
    const auto after_point = static_cast<std::size_t>(places);
    if (digits.size() <= after_point)
        digits.insert(0, after_point + 1 - digits.size(), '0');
    if (places > 0)
        digits.insert(digits.size() - after_point, 1, '.');
    text_ += digits;
}

void JsonWriter::text(std::string_view utf8) {
    separate();
    text_ += '"';
    for (std::size_t done = 0; done < utf8.size();) {
        std::size_t plain = done;
        while (plain < utf8.size() && !needs_escape(utf8[plain]))
            ++plain;
        text_ += utf8.substr(done, plain - done);
        if (plain < utf8.size())
            append_escaped(text_, utf8[plain++]);
        done = plain;
    }
    text_ += '"';
}

void JsonWriter::raw(std::string_view json) {
    separate();
    text_ += json;
}

void write(JsonWriter& json, bool value) {
    json.flag(value);
}

void write(JsonWriter& json, std::string_view value) {
    json.text(value);
}

void write(JsonWriter& json, const std::string& value) {
    json.text(value);
}

void write(JsonWriter& json, const char* value) {
    json.text(value);
}

void write(JsonWriter& json, Length length) {
    json.number(length.in_millimetres(), 1);
}

void write(JsonWriter& json, Mass mass) {
    json.number(mass.in_kilograms(), 3);
}

void write(JsonWriter& json, CalendarDate date) {
    json.text(date.to_iso());
}

void write(JsonWriter& json, const PlanePoint& point) {
    json.object([&] {
        field(json, "x", point.x);
        field(json, "y", point.y);
    });
}

void text_field(JsonWriter& json, std::string_view name, std::string_view value) {
    json.key(name);
    if (value.empty())
        json.null();
    else
        json.text(value);
}

void number_field(JsonWriter& json, std::string_view name, const std::optional<double>& value, int decimals) {
    json.key(name);
    if (value)
        json.number(*value, decimals);
    else
        json.null();
}

} // namespace saddlerule
