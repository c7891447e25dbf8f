#include "core/base/json/json_fault.h"

#include "core/base/json/json_figure.h"
#include "core/base/outcomes/figure_text.h"
#include "core/base/text/ascii_case.h"
#include "core/base/text/text_position.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>
#include <string>
#include <system_error>
#include <utility>

namespace saddlerule {
namespace {

using After = JsonStop::After;

constexpr std::string_view blanks = " \t\r\n";
constexpr std::string_view digits = "0123456789";
constexpr std::array<std::string_view, 7> curly_quotes{
    "\xE2\x80\x9C", "\xE2\x80\x9D", "\xE2\x80\x9E", "\xE2\x80\x98", "\xE2\x80\x99", "\xC2\xAB", "\xC2\xBB"};

/// What makes up words and figures, so that "49.5.1" and "NaN" are quoted as a whole.
bool belongs_to_word(char c) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    return letter || (c >= '0' && c <= '9') || c == '.' || c == '+' || c == '-' || c == '_' || c == '$' ||
           static_cast<unsigned char>(c) >= 0x80;
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool starts_figure(char c) {
    return is_digit(c) || c == '-' || c == '+' || c == '.';
}

bool not_finite(std::string_view word) {
    const std::string lower = in_lower_case(word.substr(word.find_first_not_of("+-") % word.size()));
    return lower == "nan" || lower == "infinity" || lower == "inf";
}

std::string hexadecimal(char c) {
    constexpr std::string_view hex = "0123456789ABCDEF";
    const auto byte = static_cast<unsigned char>(c);
    return {hex[byte >> 4U], hex[byte & 0xFU]};
}

/// Looks at a text from the stop on.
class FaultFinder {
public:
    FaultFinder(std::string_view text, const JsonStop& stop)
        : text_(text), stop_(stop), offset_(stop.offset) {}

    Problem find() {
        skip_blanks();
        if (at_end())
            return end_of_text();
        switch (stop_.after) {
        case After::nothing:
            return at_value();
        case After::bracket:
            return in_object() ? at_name() : at_value();
        case After::name:
            return after_name();
        case After::value:
            break;
        }
        return after_value();
    }

private:
    bool at_end() const { return offset_ >= text_.size(); }
    char here() const { return text_[offset_]; }
    std::string_view rest() const { return text_.substr(offset_); }
    bool in_object() const { return !stop_.open.empty() && stop_.open.back().character == '{'; }
    bool at_top() const { return stop_.open.empty(); }

    void skip_blanks() { offset_ = std::min(text_.find_first_not_of(blanks, offset_), text_.size()); }

    Problem problem(ProblemCode code, std::size_t offset, Figures figures = {}) const {
        return {.code = code,
                .figures = std::move(figures),
                .where = {},
                .position = TextPositions(text_).at(offset)};
    }
    Problem problem_here(ProblemCode code, Figures figures = {}) const {
        return problem(code, offset_, std::move(figures));
    }

    /// The word or figure of which `offset` is part.
    std::pair<std::size_t, std::string_view> word_around(std::size_t offset) const {
        std::size_t begin = offset;
        while (begin > 0 && belongs_to_word(text_[begin - 1]))
            --begin;
        std::size_t end = offset;
        while (end < text_.size() && belongs_to_word(text_[end]))
            ++end;
        return {begin, text_.substr(begin, end - begin)};
    }

    Problem end_of_text() const {
        const std::size_t open = stop_.open.size();
        if (open == 0)
            return problem(ProblemCode::json_empty, text_.size());
        return problem(ProblemCode::json_cut_off, text_.size(), {{"open", open}});
    }

    Problem unexpected(ProblemWord wanted) const {
        return problem_here(
            ProblemCode::json_character_unexpected,
            {{"text", '"' + std::string(first_characters(rest(), 1)) + '"'}, {"expected", wanted}});
    }

    Problem not_json() const {
        const std::string_view line = rest().substr(0, rest().find_first_of("\r\n"));
        return problem_here(ProblemCode::json_not_json, {{"text", '"' + excerpt(line, 20) + '"'}});
    }

    /// A closing bracket that is not the one due. Only where one is open.
    Problem mismatched() const {
        const OpenBracket& open = stop_.open.back();
        const std::size_t line = TextPositions(text_).at(open.offset).line;
        return problem_here(ProblemCode::json_bracket_mismatched,
                            {{"found", std::string(1, here())},
                             {"open", std::string(1, open.character)},
                             {"line", line},
                             {"close", open.character == '{' ? "}" : "]"}});
    }

    /// What is wrong in the same way wherever it is.
    std::optional<Problem> foreign_habit() const {
        if (here() == '\'')
            return problem_here(ProblemCode::json_quotes_single);
        for (const std::string_view quote : curly_quotes) {
            if (rest().starts_with(quote))
                return problem_here(ProblemCode::json_quotes_curly);
        }
        if (rest().starts_with("//") || rest().starts_with("/*") || here() == '#')
            return problem_here(ProblemCode::json_comment);
        return std::nullopt;
    }

    Problem at_value(std::optional<std::size_t> comma = std::nullopt) {
        const bool after_colon = stop_.after == After::name;
        if (auto habit = foreign_habit())
            return *std::move(habit);
        const char c = here();
        if (c == '"')
            return in_text();
        if (starts_figure(c) || belongs_to_word(c))
            return in_word();
        if (at_top())
            return not_json();
        const char due = in_object() ? '}' : ']';
        if (after_colon && (c == ',' || c == due))
            return problem_here(ProblemCode::json_value_missing);
        if (c == ',')
            return problem_here(ProblemCode::json_comma_extra);
        if (comma && c == due)
            return problem(ProblemCode::json_comma_extra, *comma);
        if (c == '}' || c == ']')
            return mismatched();
        return unexpected(ProblemWord::a_value);
    }

    Problem in_word() const {
        const std::string_view word = word_around(offset_).second;
        if (at_top() && !starts_figure(here()))
            return not_json();
        if (!at_top() && offset_ + word.size() == text_.size())
            return end_of_text(); // half a word says nothing about the other half
        const Figures figures{{"text", excerpt(word)}};
        if (not_finite(word))
            return problem_here(ProblemCode::json_figure_not_finite, figures);
        if (!starts_figure(here()))
            return problem_here(ProblemCode::json_word_unknown, figures);
        return problem_here(json_figure_length(word) == word.size() ? ProblemCode::json_figure_too_large
                                                                    : ProblemCode::json_figure_malformed,
                            figures);
    }

    Problem at_name(std::optional<std::size_t> comma = std::nullopt) const {
        if (auto habit = foreign_habit())
            return *std::move(habit);
        const char c = here();
        if (c == '"')
            return in_text();
        if (c == '}' && comma)
            return problem(ProblemCode::json_comma_extra, *comma);
        if (c == ',')
            return problem_here(ProblemCode::json_comma_extra);
        if (c == ']')
            return mismatched();
        if (belongs_to_word(c)) {
            return problem_here(ProblemCode::json_name_without_quotes,
                                {{"text", excerpt(word_around(offset_).second)}});
        }
        return unexpected(ProblemWord::a_name_in_quotes);
    }

    Problem after_name() {
        const char c = here();
        if (c == ':') {
            ++offset_;
            skip_blanks();
            return at_end() ? end_of_text() : at_value();
        }
        if (c == ',' || c == '}')
            return problem_here(ProblemCode::json_value_missing);
        return problem_here(ProblemCode::json_colon_missing);
    }

    Problem after_value() {
        const char c = here();
        const char before = text_[stop_.offset - 1];
        const bool adjacent = offset_ == stop_.offset;
        if (adjacent && belongs_to_word(before) && belongs_to_word(c))
            return continued_word();
        if (at_top())
            return problem_here(ProblemCode::json_more_after_end);
        if (adjacent && before == '"' && (c == '"' || belongs_to_word(c)))
            return problem_here(ProblemCode::json_quote_inside_text);
        if (auto habit = foreign_habit())
            return *std::move(habit);
        if (c == ',')
            return after_comma();
        if (c == '}' || c == ']')
            return mismatched();
        if (is_digit(before) && is_digit(c) && word_with_slash(offset_)) {
            // 19 1/2 without quotes
            const std::size_t begin = word_around(stop_.offset - 1).first;
            const std::size_t end = std::min(text_.find_first_of(",]}\r\n", begin), text_.size());
            return problem(ProblemCode::json_figure_malformed, begin,
                           {{"text", excerpt(text_.substr(begin, end - begin))}});
        }
        if (c == '"' || c == '{' || c == '[' || belongs_to_word(c))
            return problem_here(ProblemCode::json_comma_missing);
        return unexpected(ProblemWord::a_comma_or_bracket);
    }

    /// Something like 012, 49.5.1 or truely: its front was taken for a value.
    Problem continued_word() const {
        const auto [begin, word] = word_around(offset_);
        return problem(starts_figure(word.front()) ? ProblemCode::json_figure_malformed
                                                   : ProblemCode::json_word_unknown,
                       begin, {{"text", excerpt(word)}});
    }

    bool word_with_slash(std::size_t offset) const {
        const std::size_t slash = text_.find_first_not_of(digits, offset);
        return slash != std::string_view::npos && text_[slash] == '/';
    }

    Problem after_comma() {
        const std::size_t comma = offset_++;
        const bool digits_around = is_digit(text_[comma - 1]) && !at_end() && is_digit(here());
        if (in_object() && digits_around) {
            const auto [begin, whole] = word_around(comma - 1);
            const std::string_view decimals = word_around(offset_).second;
            return problem(ProblemCode::json_figure_decimal_comma, begin,
                           {{"text", excerpt(text_.substr(begin, whole.size() + 1 + decimals.size()))},
                            {"repaired", excerpt(std::string(whole) + '.' + std::string(decimals))}});
        }
        skip_blanks();
        if (at_end())
            return end_of_text();
        return in_object() ? at_name(comma) : at_value(comma);
    }

    /// A name or text that starts here and is not well-formed.
    Problem in_text() const {
        for (std::size_t i = offset_ + 1; i < text_.size(); ++i) {
            const char c = text_[i];
            if (c == '\n' || c == '\r')
                return problem_here(ProblemCode::json_text_not_closed);
            if (static_cast<unsigned char>(c) < 0x20)
                return problem(ProblemCode::json_text_control_character, i, {{"character", hexadecimal(c)}});
            if (c == '"') {
                return problem_here(
                    ProblemCode::json_character_unexpected,
                    {{"text", ProblemWord::a_byte_not_utf_8}, {"expected", ProblemWord::utf_8}});
            }
            if (c != '\\')
                continue;
            if (auto fault = pass_escape(i))
                return *std::move(fault);
        }
        return at_top() ? problem_here(ProblemCode::json_text_not_closed) : end_of_text();
    }

    /// Moves `i` from a backslash to the last byte of its escape, or says what is wrong with it.
    std::optional<Problem> pass_escape(std::size_t& i) const {
        const std::size_t backslash = i;
        if (backslash + 1 == text_.size())
            return end_of_text();
        const auto fault = [&](ProblemCode code, std::size_t characters) {
            const std::string_view escape = first_characters(text_.substr(backslash), characters);
            return problem(code, backslash, {{"text", escape.substr(0, escape.find_first_of("\r\n\"", 2))}});
        };
        if (text_[backslash + 1] != 'u') {
            if (std::string_view("\"\\/bfnrt").find(text_[backslash + 1]) == std::string_view::npos)
                return fault(ProblemCode::json_escape_unknown, 2);
            i = backslash + 1;
            return std::nullopt;
        }
        const auto unit = code_unit_at(backslash);
        const auto ends_within = [&](std::size_t length) {
            return text_.size() - backslash < length && text_.find('"', backslash) == std::string_view::npos;
        };
        if (!unit && ends_within(6))
            return end_of_text();
        if (!unit)
            return fault(ProblemCode::json_escape_unknown, 6);
        i = backslash + 5;
        if (*unit < 0xD800 || *unit > 0xDFFF)
            return std::nullopt;
        if (ends_within(12))
            return end_of_text();
        const auto low = code_unit_at(backslash + 6).value_or(0);
        if (*unit > 0xDBFF || low < 0xDC00 || low > 0xDFFF)
            return fault(ProblemCode::json_surrogate_alone, 6);
        i = backslash + 11;
        return std::nullopt;
    }

    /// The value of a \u escape at `offset`, or nothing where there is none.
    std::optional<unsigned> code_unit_at(std::size_t offset) const {
        const std::string_view escape = text_.substr(std::min(offset, text_.size())).substr(0, 6);
        if (escape.size() < 6 || !escape.starts_with("\\u"))
            return std::nullopt;
        unsigned unit = 0;
        const auto [stop, error] = std::from_chars(escape.data() + 2, escape.data() + 6, unit, 16);
        if (error != std::errc() || stop != escape.data() + 6)
            return std::nullopt;
        return unit;
    }

    std::string_view text_;
    const JsonStop& stop_;
    std::size_t offset_;
};

} // namespace

Problem explain_fault(std::string_view text, const JsonStop& stop) {
    return FaultFinder(text, stop).find();
}

} // namespace saddlerule
