#include "core/json/located_json.h"

#include "core/json/json_fault.h"
#include "core/json/json_figure.h"
#include "core/json/json_text.h"
#include "core/text/text_position.h"
#include "core/text/utf8_text.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace saddlerule {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::string_view blanks = " \t\r\n";

/// Reads token after token and builds the tree. It does not recurse; the depth of the tree, and so of its
/// destruction, is limited before anything is built.
class TreeBuilder {
public:
    using After = JsonStop::After;

    TreeBuilder(std::string_view text, const JsonLimits& limits, const ElementSink* sink)
        : text_(text), limits_(limits), sink_(sink),
          at_(text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0), last_end_(at_) {}

    Result<JsonValue> build() {
        skip_blanks();
        bool going = read_value();
        while (going && !open_.empty())
            going = read_next_in_bracket();
        skip_blanks();
        if (problem_)
            return *std::move(problem_);
        if (!going || at_ < text_.size())
            return explain_fault(text_, stop());
        return std::move(root_);
    }

private:
    static constexpr std::size_t most_usual_members = 32;

    // Each reads what stands at `at_`, and tells whether the text can go on.

    bool read_next_in_bracket() {
        skip_blanks();
        const bool in_object = open_.back()->kind == JsonValue::Kind::object;
        if (took(in_object ? '}' : ']'))
            return close();
        if (last_ == After::value) {
            if (!took(','))
                return false;
            skip_blanks();
        }
        return (!in_object || read_name()) && read_value();
    }

    bool read_name() {
        name_begin_ = at_;
        const std::size_t length = read_json_text(rest(), name_);
        if (length == 0 || !short_enough(name_))
            return false;
        at_ += length;
        passed(After::name);
        skip_blanks();
        if (!took(':'))
            return false;
        skip_blanks();
        return true;
    }

    bool read_value() {
        if (at_ == text_.size())
            return false;
        switch (text_[at_]) {
        case '{':
            return open(JsonValue::Kind::object);
        case '[':
            return open(JsonValue::Kind::array);
        case '"':
            return read_text();
        case 'n':
            return read_word("null", JsonValue::Kind::null);
        case 'f':
            return read_word("false", JsonValue::Kind::boolean);
        case 't':
            return read_word("true", JsonValue::Kind::boolean);
        default:
            return read_number();
        }
    }

    bool read_text() {
        const std::size_t length = read_json_text(rest(), unescaped_);
        if (length == 0 || !short_enough(unescaped_))
            return false;
        JsonValue* value = add(JsonValue::Kind::text);
        if (value)
            value->text = unescaped_;
        return value && finish(*value, length);
    }

    bool read_word(std::string_view word, JsonValue::Kind kind) {
        JsonValue* value = rest().starts_with(word) ? add(kind) : nullptr;
        if (value)
            value->boolean = word == "true";
        return value && finish(*value, word.size());
    }

    bool read_number() {
        const std::size_t length = json_figure_length(rest());
        const std::string_view behind = rest().substr(length, 1);
        if (length == 0 || behind == "." || behind == "e" || behind == "E")
            return false; // 1. and 1e say that something was left out
        const double number = json_figure_value(rest().substr(0, length));
        JsonValue* value = std::isfinite(number) ? add(JsonValue::Kind::number) : nullptr;
        if (value)
            value->number = number;
        return value && finish(*value, length);
    }

    std::string_view rest() const { return text_.substr(at_); }

    void skip_blanks() { at_ = std::min(text_.find_first_not_of(blanks, at_), text_.size()); }

    bool took(char wanted) {
        const bool there = at_ < text_.size() && text_[at_] == wanted;
        at_ += there ? 1 : 0;
        return there;
    }

    /// That was read up to here.
    void passed(After what) {
        last_ = what;
        last_end_ = at_;
    }

    bool refuse(ProblemCode code, std::size_t offset, std::size_t limit, std::size_t length = 0) {
        problem_ = Problem{.code = code,
                           .figures = {{"limit", std::to_string(limit)}},
                           .where = {},
                           .position = TextPositions(text_).at(offset)};
        if (length > 0)
            problem_->figures.emplace_back("length", std::to_string(length));
        return false;
    }

    bool short_enough(std::string_view value) {
        if (value.size() <= limits_.text_length || sink_array_)
            return true;
        const std::size_t length = character_count(value);
        return length <= limits_.text_length ||
               refuse(ProblemCode::json_text_too_long, at_, limits_.text_length, length);
    }

    bool open(JsonValue::Kind kind) {
        if (open_.size() == limits_.depth)
            return refuse(ProblemCode::json_too_deep, at_, limits_.depth);
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
        ++at_;
        passed(After::bracket);
        return true;
    }

    bool close() {
        JsonValue& closed = *open_.back();
        open_.pop_back();
        if (&closed == sink_array_)
            sink_array_ = nullptr;
        return finish(closed, 0);
    }

    /// Makes a value in its place: what it is part of stays where it is as long as it is open.
    JsonValue* add(JsonValue::Kind kind) {
        if (++values_ > limits_.values) {
            refuse(ProblemCode::json_too_many_values, at_, limits_.values);
            return nullptr;
        }
        JsonValue& value = place();
        value.kind = kind;
        value.begin = at_;
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

    /// The value ends that many bytes further on.
    bool finish(JsonValue& value, std::size_t length) {
        at_ += length;
        value.end = at_;
        if (&value == &element_) {
            usual_members_ = std::min(element_.members.size(), most_usual_members);
            sink_->take(std::move(element_), root_);
            values_ = values_outside_sink_;
        }
        passed(After::value);
        return true;
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

    std::size_t at_;
    After last_ = After::nothing;
    std::size_t last_end_;

    JsonValue root_;
    std::vector<JsonValue*> open_;
    std::string unescaped_;
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

std::string_view JsonValue::kind_name() const {
    switch (kind) {
    case Kind::null:
        return "null";
    case Kind::boolean:
        return boolean ? "true" : "false";
    case Kind::number:
        return "a number";
    case Kind::text:
        return "a text";
    case Kind::array:
        return "a list";
    case Kind::object:
        break;
    }
    return "a group of fields";
}

Result<JsonValue> read_json(std::string_view utf8, const JsonLimits& limits, const ElementSink* sink) {
    // It stands nowhere in JSON and cannot be seen, so it is named before anything else.
    const std::size_t nul = utf8.find('\0');
    if (nul != std::string_view::npos) {
        return Problem{.code = ProblemCode::json_character_unexpected,
                       .figures = {{"text", "a NUL character"}, {"expected", "text"}},
                       .where = {},
                       .position = TextPositions(utf8).at(nul)};
    }
    return TreeBuilder(utf8, limits, sink).build();
}

} // namespace saddlerule
