// JsonWriter: writes JSON straight into a text. An answer about thousands of bikes is never in memory as
// a tree, and a figure costs no more than its digits.
#pragma once

#include "core/base/outcomes/problem.h"
#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/base/quantities/plane_point.h"

#include <concepts>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// Writes compact UTF-8 JSON (RFC 8259), commas included. Objects and arrays are written by a function that
/// writes their content, so that none is left open.
class JsonWriter {
public:
    JsonWriter() = default;
    /// With room for that many bytes: a long text that grows needs its memory twice.
    explicit JsonWriter(std::size_t expected_size) { text_.reserve(expected_size); }

    template <typename Content>
    void object(Content content) {
        open('{');
        content();
        close('}');
    }

    template <typename Content>
    void array(Content content) {
        open('[');
        content();
        close(']');
    }

    /// An array of what `write_item` writes for each item.
    template <typename Items, typename WriteItem>
    void array_of(const Items& items, WriteItem write_item) {
        array([&] {
            for (const auto& item : items)
                write_item(item);
        });
    }

    /// The name of the next value. Names are plain ASCII identifiers of the interface.
    JsonWriter& key(std::string_view name);
    /// The same for a name that comes from a file, of whatever characters.
    JsonWriter& any_key(std::string_view utf8);

    void null();
    void flag(bool value);
    void integer(long long value);
    /// To that many decimals (0 to 6), without trailing zeros, rounded half away from zero; never minus zero.
    /// Null where it is not finite, or 1e12 and more in size: no answer has such a figure.
    void number(double value, int decimals);
    void text(std::string_view utf8);
    /// JSON that was written before.
    void raw(std::string_view json);

    std::string take() { return std::move(text_); }

private:
    void open(char bracket);
    void close(char bracket);
    void separate();

    std::string text_;
    bool first_ = true; ///< nothing comes before the next value that wants a comma
};

// Values of the interface, each rounded as the interface gives it: lengths to a tenth of a millimetre, masses
// to a gram.
void write(JsonWriter& json, bool value);
void write(JsonWriter& json, std::string_view value);
void write(JsonWriter& json, const std::string& value);
void write(JsonWriter& json, const char* value);
void write(JsonWriter& json, Length length);
void write(JsonWriter& json, Mass mass);
void write(JsonWriter& json, CalendarDate date);
void write(JsonWriter& json, const PlanePoint& point);

template <std::integral Whole>
void write(JsonWriter& json, Whole value) {
    json.integer(static_cast<long long>(value));
}

/// What is not known is null.
template <typename Value>
void write(JsonWriter& json, const std::optional<Value>& value) {
    if (value)
        write(json, *value);
    else
        json.null();
}

template <typename Value>
void field(JsonWriter& json, std::string_view name, const Value& value) {
    write(json.key(name), value);
}

/// Empty text is null: not known.
void text_field(JsonWriter& json, std::string_view name, std::string_view value);

/// A number that may not be known, to that many decimals.
void number_field(JsonWriter& json, std::string_view name, const std::optional<double>& value, int decimals);

} // namespace saddlerule
