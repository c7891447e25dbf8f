// The words for what is not JSON: likely cause and exact place.
#include "core/base/json/located_json.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

using namespace saddlerule;

namespace {

struct Fault {
    std::string_view text;
    ProblemCode code;
    std::string_view sentence;
};

} // namespace

TEST_CASE("what stopped being JSON is told with its place and likely cause", "[json]") {
    using enum ProblemCode;
    const auto fault = GENERATE(values<Fault>({
        {"", json_empty, "line 1, column 1: there is nothing to read"},
        {"Saddle list\n1", json_not_json,
         "line 1, column 1: this is not JSON: it starts with \"Saddle list\""},
        {"\n <html>", json_not_json, "line 2, column 2: this is not JSON: it starts with \"<html>\""},
        {"]", json_not_json, "line 1, column 1: this is not JSON: it starts with \"]\""},

        {"[1, {\"a\": [", json_cut_off,
         "line 1, column 12: the text stops in the middle: 3 brackets are still open"},
        {"[\n1,\n", json_cut_off, "line 3, column 1: the text stops in the middle: 1 bracket is still open"},
        {"{\"a", json_cut_off, "line 1, column 4: the text stops in the middle: 1 bracket is still open"},
        {"{\"a\": \"b\\", json_cut_off,
         "line 1, column 10: the text stops in the middle: 1 bracket is still open"},
        {"{\"a\"", json_cut_off, "line 1, column 5: the text stops in the middle: 1 bracket is still open"},
        {"{\"a\":", json_cut_off, "line 1, column 6: the text stops in the middle: 1 bracket is still open"},
        {"{\"a\": tr", json_cut_off,
         "line 1, column 9: the text stops in the middle: 1 bracket is still open"},
        {"{\"a\": -", json_cut_off,
         "line 1, column 8: the text stops in the middle: 1 bracket is still open"},
        {"{\"a\": 4", json_cut_off,
         "line 1, column 8: the text stops in the middle: 1 bracket is still open"},

        {"{\"a\": 1 \"b\": 2}", json_comma_missing, "line 1, column 9: a comma is missing before this"},
        {"{\"\xC3\xBC\": \"\xC3\xBC\" \"b\": 2}", json_comma_missing,
         "line 1, column 11: a comma is missing before this"},
        {"[{\"a\": 1}\n {\"a\": 2}]", json_comma_missing, "line 2, column 2: a comma is missing before this"},
        {"[1 2]", json_comma_missing, "line 1, column 4: a comma is missing before this"},
        {"[[1] [2]]", json_comma_missing, "line 1, column 6: a comma is missing before this"},
        {"[1 true]", json_comma_missing, "line 1, column 4: a comma is missing before this"},

        {"[1, 2,\n]", json_comma_extra, "line 1, column 6: there is a comma too many"},
        {"{\"a\": 1, }", json_comma_extra, "line 1, column 8: there is a comma too many"},
        {"[1,,2]", json_comma_extra, "line 1, column 4: there is a comma too many"},
        {"[,1]", json_comma_extra, "line 1, column 2: there is a comma too many"},
        {"{,\"a\": 1}", json_comma_extra, "line 1, column 2: there is a comma too many"},
        {"{\"a\": 1,,\"b\": 2}", json_comma_extra, "line 1, column 9: there is a comma too many"},

        {"{\"a\" 1}", json_colon_missing, "line 1, column 6: a colon is missing before this"},
        {"{\"a\" = 1}", json_colon_missing, "line 1, column 6: a colon is missing before this"},
        {"{\"a\": , \"b\": 1}", json_value_missing, "line 1, column 7: the field before this has no value"},
        {"{\"a\":}", json_value_missing, "line 1, column 6: the field before this has no value"},
        {"{\"a\"}", json_value_missing, "line 1, column 5: the field before this has no value"},

        {"[\n{\"a\": 1]", json_bracket_mismatched,
         "line 2, column 8: ] does not match: the last one open is {, from line 2"},
        {"{\"a\":\n[1}", json_bracket_mismatched,
         "line 2, column 3: } does not match: the last one open is [, from line 2"},
        {"[}", json_bracket_mismatched,
         "line 1, column 2: } does not match: the last one open is [, from line 1"},
        {"{]", json_bracket_mismatched,
         "line 1, column 2: ] does not match: the last one open is {, from line 1"},
        {"[1,}", json_bracket_mismatched,
         "line 1, column 4: } does not match: the last one open is [, from line 1"},

        {"{} {}", json_more_after_end, "line 1, column 4: the JSON has ended before this"},
        {"{}}", json_more_after_end, "line 1, column 3: the JSON has ended before this"},
        {"[1],", json_more_after_end, "line 1, column 4: the JSON has ended before this"},

        {"{\"a\": 49.5.1}", json_figure_malformed, "line 1, column 7: 49.5.1 is not a number in JSON"},
        {"[012]", json_figure_malformed, "line 1, column 2: 012 is not a number in JSON"},
        {"01", json_figure_malformed, "line 1, column 1: 01 is not a number in JSON"},
        {"[.5]", json_figure_malformed, "line 1, column 2: .5 is not a number in JSON"},
        {"[5.]", json_figure_malformed, "line 1, column 2: 5. is not a number in JSON"},
        {"[+5]", json_figure_malformed, "line 1, column 2: +5 is not a number in JSON"},
        {"[0x1F]", json_figure_malformed, "line 1, column 2: 0x1F is not a number in JSON"},
        {"[49.5cm]", json_figure_malformed, "line 1, column 2: 49.5cm is not a number in JSON"},
        {"[1e]", json_figure_malformed, "line 1, column 2: 1e is not a number in JSON"},
        {"[- 5]", json_figure_malformed, "line 1, column 2: - is not a number in JSON"},
        {"{\"a\": 19 1/2, \"b\": 1}", json_figure_malformed,
         "line 1, column 7: 19 1/2 is not a number in JSON"},
        {"{\"a\": 49,5}", json_figure_decimal_comma, "line 1, column 7: 49,5 has a decimal comma"},
        {"[1e999]", json_figure_too_large, "line 1, column 2: 1e999 is too large for a number"},
        {"[1, -1e999]", json_figure_too_large, "line 1, column 5: -1e999 is too large for a number"},
        {"{\"a\": NaN}", json_figure_not_finite, "line 1, column 7: NaN is not a number in JSON"},
        {"{\"a\": -Infinity}", json_figure_not_finite, "line 1, column 7: -Infinity is not a number in JSON"},
        {"[True]", json_word_unknown, "line 1, column 2: the word True means nothing in JSON"},
        {"[truely]", json_word_unknown, "line 1, column 2: the word truely means nothing in JSON"},
        {"[None, 1]", json_word_unknown, "line 1, column 2: the word None means nothing in JSON"},

        {"{'a': 1}", json_quotes_single, "line 1, column 2: there is a single quote here"},
        {"{\"a\": 'b'}", json_quotes_single, "line 1, column 7: there is a single quote here"},
        {"{\"a\": \xE2\x80\x9C"
         "b\xE2\x80\x9D}",
         json_quotes_curly, "line 1, column 7: there is a curly quote here"},
        {"{a: 1}", json_name_without_quotes, "line 1, column 2: the name a has no quotes"},
        {"{\"a\": 1, saddle_lowest: 2}", json_name_without_quotes,
         "line 1, column 10: the name saddle_lowest has no quotes"},
        {"[1, // one\n2]", json_comment, "line 1, column 5: there is a comment here, and JSON has none"},
        {"[1 /* one */]", json_comment, "line 1, column 4: there is a comment here, and JSON has none"},
        {"{# one\n}", json_comment, "line 1, column 2: there is a comment here, and JSON has none"},

        {"{\"a\": \"one\n\"}", json_text_not_closed,
         "line 1, column 7: the text that starts here has no closing quote on its line"},
        {"\"one", json_text_not_closed,
         "line 1, column 1: the text that starts here has no closing quote on its line"},
        {"[\"one\ttwo\"]", json_text_control_character,
         "line 1, column 6: there is a control character (code 09) in a text"},
        {"{\"wheel\": \"16\"\"}", json_quote_inside_text,
         "line 1, column 15: the text ended at the double quote before this"},
        {"{\"a\": \"the \"red\" one\"}", json_quote_inside_text,
         "line 1, column 13: the text ended at the double quote before this"},
        {"[\"C:\\bikes\\shed\"]", json_escape_unknown, "line 1, column 11: \\s means nothing in a text"},
        {"[\"\\u12G4\"]", json_escape_unknown, "line 1, column 3: \\u12G4 means nothing in a text"},
        {"[\"\\uD83D\\uDEB2\\uD83D!\"]", json_surrogate_alone,
         "line 1, column 15: \\uD83D is half a character"},
        {"[\"\\uDEB2\"]", json_surrogate_alone, "line 1, column 3: \\uDEB2 is half a character"},

        {"[1:2]", json_character_unexpected, "line 1, column 3: \":\" does not belong here"},
        {"{{}}", json_character_unexpected, "line 1, column 2: \"{\" does not belong here"},
        {"{\"a\": @}", json_character_unexpected, "line 1, column 7: \"@\" does not belong here"},
    }));
    CAPTURE(fault.text);
    const auto value = read_json(fault.text, JsonLimits());
    REQUIRE_FALSE(value.ok());
    CHECK(code_name(value.problem().code) == code_name(fault.code));
    CHECK(sentence(value.problem()) == fault.sentence);
}

TEST_CASE("a decimal comma is repaired in what is expected", "[json]") {
    const auto value = read_json("{\"a\": 49,5}", JsonLimits());
    REQUIRE_FALSE(value.ok());
    CHECK(expected(value.problem()) == "49.5");
}

TEST_CASE("a well-formed text that is cut off anywhere gets a place and never a tree", "[json]") {
    const std::string_view whole =
        R"({"units":"cm","bikes":[{"id":"L\u0030\uD83D\uDEB27","saddle_lowest":49.5,"brakes":["a",null,true],"x":{}}],"n":-1e2})";
    REQUIRE(read_json(whole, JsonLimits()).ok());
    for (std::size_t size = 0; size < whole.size(); ++size) {
        const std::string_view cut = whole.substr(0, size);
        CAPTURE(cut);
        const auto value = read_json(cut, JsonLimits());
        REQUIRE_FALSE(value.ok());
        CHECK(value.problem().position.has_value());
        const ProblemCode code = size == 0 ? ProblemCode::json_empty : ProblemCode::json_cut_off;
        CHECK(code_name(value.problem().code) == code_name(code));
    }
}
