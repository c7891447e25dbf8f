#include "core/base/json/located_json.h"

#include "core/base/json/json_fault.h"
#include "core/base/json/json_figure.h"
#include "core/base/text/text_position.h"
#include "core/base/text/utf8_text.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <optional>
#include <utility>

namespace saddlerule {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF"; // which the parser skips

/// Hands the text's bytes to the parser and tells how far it has got: the parser reports no positions of
/// values.
class ReportingIterator {
public:
    using iterator_category = std::forward_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    ReportingIterator(const char* at, const char*& reached) : at_(at), reached_(&reached) {}

    reference operator*() const { return *at_; }
    ReportingIterator& operator++() {
        *reached_ = ++at_;
        return *this;
    }
    ReportingIterator operator++(int) {
        ReportingIterator before = *this;
        ++*this;
        return before;
    }
    friend bool operator==(const ReportingIterator& a, const ReportingIterator& b) { return a.at_ == b.at_; }
    friend bool operator!=(const ReportingIterator& a, const ReportingIterator& b) { return !(a == b); }

private:
    const char* at_;
    const char** reached_;
};

bool stands_between_tokens(char c) {
    return c == ' ' || c == ',' || c == ':' || c == '\n' || c == '\r' || c == '\t';
}

/// Takes the parser's events and builds the tree. The parser does not recurse, and neither does this; the
/// depth of the tree, and so of its destruction, is limited before anything is built.
///
/// When an event fires, the parser has read exactly the token, except for a number, which it has to look
/// beyond.
class TreeBuilder {
public:
    using After = JsonStop::After;

    TreeBuilder(std::string_view text, const JsonLimits& limits, const ElementSink* sink)
        : text_(text), limits_(limits), sink_(sink), reached_(text.data()),
          last_end_(text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0) {}

    Result<JsonValue> build() {
        const ReportingIterator begin(text_.data(), reached_);
        const ReportingIterator end(text_.data() + text_.size(), reached_);
        const bool complete = nlohmann::json::sax_parse(begin, end, this);
        if (problem_)
            return *std::move(problem_);
        if (!complete)
            return explain_fault(text_, stop());
        return std::move(root_);
    }

    // What the parser calls. False stops it.
    bool null() { return finish_scalar(add(JsonValue::Kind::null), offset_reached()); }
    bool boolean(bool flag) {
        JsonValue* value = add(JsonValue::Kind::boolean);
        if (value)
            value->boolean = flag;
        return finish_scalar(value, offset_reached());
    }
    bool number_integer(std::int64_t number) { return add_number(static_cast<double>(number)); }
    bool number_unsigned(std::uint64_t number) { return add_number(static_cast<double>(number)); }
    bool number_float(double number, const std::string& /*as_written*/) { return add_number(number); }
    bool string(const std::string& text) {
        if (!short_enough(text))
            return false;
        JsonValue* value = add(JsonValue::Kind::text);
        if (value)
            value->text = text;
        return finish_scalar(value, offset_reached());
    }
    bool binary(const std::vector<std::uint8_t>& /*bytes*/) { return false; } // JSON has none
    bool start_object(std::size_t /*size*/) { return open(JsonValue::Kind::object); }
    bool start_array(std::size_t /*size*/) { return open(JsonValue::Kind::array); }
    bool end_object() { return close(); }
    bool end_array() { return close(); }
    bool key(const std::string& name) {
        name_begin_ = next_token();
        name_ = name;
        return short_enough(name) && passed(After::name, offset_reached());
    }
    bool parse_error(std::size_t /*position*/, const std::string& /*token*/,
                     const nlohmann::detail::exception& /*error*/) {
        return false;
    }

private:
    static constexpr std::size_t most_usual_members = 32;

    std::size_t offset_reached() const { return static_cast<std::size_t>(reached_ - text_.data()); }

    /// Where the token after the last one begins: commas and colons are passed without an event.
    std::size_t next_token() const {
        std::size_t offset = last_end_;
        while (offset < text_.size() && stands_between_tokens(text_[offset]))
            ++offset;
        return offset;
    }

    bool passed(After what, std::size_t end) {
        last_ = what;
        last_end_ = end;
        return true;
    }

    bool refuse(ProblemCode code, std::size_t offset, std::size_t limit, std::size_t length = 0) {
        problem_ = Problem{.code = code,
                           .figures = {{"limit", limit}},
                           .where = {},
                           .position = TextPositions(text_).at(offset)};
        if (length > 0)
            problem_->figures.add("length", length);
        return false;
    }

    bool short_enough(std::string_view value) {
        if (value.size() <= limits_.text_length || sink_array_)
            return true;
        const std::size_t length = character_count(value);
        return length <= limits_.text_length ||
               refuse(ProblemCode::json_text_too_long, next_token(), limits_.text_length, length);
    }

    bool add_number(double number) {
        JsonValue* value = add(JsonValue::Kind::number);
        if (!value)
            return false;
        value->number = number;
        return finish(*value, value->begin + json_figure_length(text_.substr(value->begin)));
    }

    bool finish_scalar(JsonValue* value, std::size_t end) { return value && finish(*value, end); }

    bool open(JsonValue::Kind kind) {
        if (open_.size() == limits_.depth)
            return refuse(ProblemCode::json_too_deep, next_token(), limits_.depth);
        JsonValue* added = add(kind);
        if (!added)
            return false;
        if (kind == JsonValue::Kind::object)
            added->members.reserve(usual_members_);
        open_.push_back(added);
        const bool member_of_top = open_.size() == 2 && root_.kind == JsonValue::Kind::object;
        if (sink_ && member_of_top && kind == JsonValue::Kind::array &&
            root_.members.back().name == sink_->member) {
            sink_array_ = added;
            values_outside_sink_ = values_;
        }
        return passed(After::bracket, offset_reached());
    }

    bool close() {
        JsonValue& closed = *open_.back();
        open_.pop_back();
        if (&closed == sink_array_)
            sink_array_ = nullptr;
        return finish(closed, offset_reached());
    }

    /// Makes a value in its place: what it is part of stays where it is as long as it is open.
    JsonValue* add(JsonValue::Kind kind) {
        const std::size_t begin = next_token();
        if (++values_ > limits_.values) {
            refuse(ProblemCode::json_too_many_values, begin, limits_.values);
            return nullptr;
        }
        JsonValue& value = place();
        value.kind = kind;
        value.begin = begin;
        return &value;
    }

    JsonValue& place() {
        if (open_.empty())
            return root_;
        JsonValue& parent = *open_.back();
        if (&parent == sink_array_)
            return element_ = JsonValue();
        if (parent.kind == JsonValue::Kind::array)
            return parent.items.emplace_back();
        JsonMember& member = parent.members.emplace_back();
        member.name = std::move(name_);
        member.name_begin = name_begin_;
        return member.value;
    }

    bool finish(JsonValue& value, std::size_t end) {
        value.end = end;
        if (&value == &element_) {
            usual_members_ = std::min(element_.members.size(), most_usual_members);
            sink_->take(std::move(element_), root_);
            values_ = values_outside_sink_;
        }
        return passed(After::value, end);
    }

    JsonStop stop() const {
        JsonStop stop{.open = {}, .after = last_, .offset = last_end_};
        for (const JsonValue* value : open_) {
            stop.open.push_back(
                {.character = value->kind == JsonValue::Kind::object ? '{' : '[', .offset = value->begin});
        }
        return stop;
    }

    std::string_view text_;
    const JsonLimits& limits_;
    const ElementSink* sink_;

    const char* reached_;
    After last_ = After::nothing;
    std::size_t last_end_;

    JsonValue root_;
    std::vector<JsonValue*> open_;
    std::string name_; ///< of the member whose value comes next
    std::size_t name_begin_ = 0;
    std::size_t values_ = 0;

    JsonValue* sink_array_ = nullptr; ///< while its elements are read
    JsonValue element_;
    std::size_t values_outside_sink_ = 0;
    /// As many as the last element had: the next one is likely to have about as many.
    std::size_t usual_members_ = 0;

    std::optional<Problem> problem_;
};

} // namespace

const JsonMember* JsonValue::find(std::string_view name) const {
    const auto member =
        std::find_if(members.begin(), members.end(), [&](const JsonMember& m) { return m.name == name; });
    return member == members.end() ? nullptr : &*member;
}

ProblemFigure JsonValue::kind_name() const {
    switch (kind) {
    case Kind::null:
        return "null";
    case Kind::boolean:
        return boolean ? "true" : "false";
    case Kind::number:
        return ProblemWord::a_number;
    case Kind::text:
        return ProblemWord::a_text;
    case Kind::array:
        return ProblemWord::a_list;
    case Kind::object:
        break;
    }
    return ProblemWord::a_group_of_fields;
}

Result<JsonValue> read_json(std::string_view utf8, const JsonLimits& limits, const ElementSink* sink) {
    // The parser takes a NUL for the end of the text; what follows it would be lost without a word.
    const std::size_t nul = utf8.find('\0');
    if (nul != std::string_view::npos) {
        return Problem{
            .code = ProblemCode::json_character_unexpected,
            .figures = {{"text", ProblemWord::a_nul_character}, {"expected", ProblemWord::plain_text}},
            .where = {},
            .position = TextPositions(utf8).at(nul)};
    }
    return TreeBuilder(utf8, limits, sink).build();
}

} // namespace saddlerule
