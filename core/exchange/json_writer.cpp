#include "core/exchange/json_writer.h"

#include "core/base/json/json_text.h"

#include <cmath>

namespace saddlerule {
namespace {

constexpr double powers_of_ten[] = {1.0, 10.0, 100.0, 1e3, 1e4, 1e5, 1e6};
constexpr double too_large = 1e12;

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

JsonWriter& JsonWriter::any_key(std::string_view utf8) {
    text(utf8);
    text_ += ':';
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
    append_json_text(text_, utf8);
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
