// JSON texts as located trees. Accepted and refused classes: RFC 8259; the cases are our own.
#include "core/base/json/located_json.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>
#include <vector>

using namespace saddlerule;
using namespace std::string_view_literals;

namespace {

using Kind = JsonValue::Kind;

JsonValue read(std::string_view text) {
    CAPTURE(text);
    auto value = read_json(text, JsonLimits());
    if (!value)
        FAIL(sentence(value.problem()));
    return std::move(value).value();
}

std::string_view slice(std::string_view text, const JsonValue& value) {
    return text.substr(value.begin, value.end - value.begin);
}

/// Every value of the tree must be the whole text of its own slice: reading the slice alone gives the same
/// kind.
void check_slices(std::string_view text, const JsonValue& value) {
    const std::string_view own = slice(text, value);
    CAPTURE(own);
    const JsonValue alone = read(own);
    CHECK(alone.kind == value.kind);
    CHECK(alone.begin == 0);
    CHECK(alone.end == own.size());
    CHECK(alone.number == value.number);
    CHECK(alone.text == value.text);
    for (const JsonValue& item : value.items)
        check_slices(text, item);
    for (const JsonMember& member : value.members) {
        CHECK(text[member.name_begin] == '"');
        CHECK(text.substr(member.name_begin + 1).starts_with(member.name));
        check_slices(text, member.value);
    }
}

} // namespace

TEST_CASE("what RFC 8259 allows is read", "[json]") {
    const auto text = GENERATE(values<std::string_view>({
        // Any value may be at the top (section 2).
        "null",
        "true",
        "false",
        "0",
        "-0",
        "7",
        "-7.25",
        "\"\"",
        "\"text\"",
        "[]",
        "{}",
        " \t\r\n7 \t\r\n",
        // Numbers (section 6).
        "1e5",
        "1E+5",
        "1e-5",
        "0.5e01",
        "123456789012345678901234567890",
        "1e-400",
        "-0.0",
        // Texts (section 7).
        R"("\" \\ \/ \b \f \n \r \t \u00fc \uD83D\uDEB2 \u0000")",
        "\"\x7F\"",
        "\"gr\xC3\xBCn \xF0\x9F\x9A\xB2\"",
        // Structures (sections 4 and 5), blanks anywhere between tokens.
        R"([ 1 , "two" , [ ] , { } , null ])",
        R"({"":0})",
        R"({ "a" : { "b" : [ { "c" : 1 } ] } })",
        // Names may come twice as far as the grammar goes; readers refuse them.
        R"({"a":1,"a":2})",
        // A byte order mark may be ignored (section 8.1).
        "\xEF\xBB\xBF{}",
    }));
    read(text);
}

TEST_CASE("what RFC 8259 does not allow is refused", "[json]") {
    const auto text = GENERATE(values<std::string_view>({
        "",
        " ",
        "[",
        "]",
        "{",
        "}",
        "[1,]",
        "[,1]",
        "[1,,2]",
        "[1 2]",
        "[1:2]",
        "{\"a\"}",
        "{\"a\":}",
        "{:1}",
        "{\"a\":1,}",
        "{,}",
        "{\"a\" 1}",
        "{1:2}",
        "{a:1}",
        "{'a':1}",
        "['a']",
        "{\"a\":1]",
        "[1}",
        "{} {}",
        "1 2",
        "nul",
        "True",
        "NULL",
        "NaN",
        "Infinity",
        "-Infinity",
        "+1",
        "-",
        ".5",
        "5.",
        "1.e3",
        "1e",
        "1e+",
        "01",
        "-01",
        "0x1F",
        "1_000",
        "49.5.1",
        "49,5",
        "1e999",
        "-1e999",
        "\"",
        "\"a",
        "\"\\\"",
        "\"\\x\"",
        "\"\\u12\"",
        "\"\\u12G4\"",
        "\"\\uD83D\"",
        "\"\\uDEB2\"",
        "\"\\uD83D\\u0041\"",
        "\"a\tb\"",
        "\"a\nb\"",
        "// c\n1",
        "/* c */ 1",
        "1 # c",
        "<html>",
        "\xE2\x80\x9C"
        "a\xE2\x80\x9D",
        "[1]x",
        "\x0B"
        "1",
        "\xC2\xA0"
        "1",
        "\"\x80\"",
        "\"\xED\xA0\x80\"",
        "{}\0{}"sv,
        "\"\0\""sv,
        "[1\f]",
    }));
    CAPTURE(text);
    const auto value = read_json(text, JsonLimits());
    REQUIRE_FALSE(value.ok());
    CHECK(value.problem().position.has_value());
    CHECK(code_name(value.problem().code).substr(0, 5) == "json_");
}

TEST_CASE("values arrive with kind, content and order", "[json]") {
    const JsonValue value =
        read(R"({"n":-2.5e1,"t":"a\u00fc\uD83D\uDEB2\n","b":true,"z":null,"l":[1,[2]],"n":2})");
    REQUIRE(value.kind == Kind::object);
    REQUIRE(value.members.size() == 6);
    CHECK(value.find("n")->value.number == -25.0);
    CHECK(value.find("t")->value.text == "a\xC3\xBC\xF0\x9F\x9A\xB2\n");
    CHECK(value.find("b")->value.boolean);
    CHECK(value.find("z")->value.kind == Kind::null);
    CHECK(value.find("l")->value.items[1].items[0].number == 2.0);
    CHECK(value.members[5].value.number == 2.0);
    CHECK(value.find("m") == nullptr);
}

TEST_CASE("every value knows its own characters", "[json]") {
    const auto text = GENERATE(values<std::string_view>({
        "7",
        " -7.5e2 ",
        "7\n",
        "null",
        "\"gr\xC3\xBCn\"",
        "[1,2,3]",
        "[ 1 , 2.5 ,3e2]",
        "[true,false,null]",
        R"([[],[[]],{},[{}]])",
        R"({"a":1,"b":[10,20 ,30],"c":{"d":"x","e":-0.5}})",
        "{\r\n  \"n\u00FC\" : 12 ,\r\n  \"t\":\"\xF0\x9F\x9A\xB2 , : ] }\",\"z\":{\"y\":[ 0 ]}\r\n}\r\n",
        R"(["\" , ]", "\\", 1])",
        "\xEF\xBB\xBF [ 1 ]",
    }));
    CAPTURE(text);
    check_slices(text, read(text));
}

TEST_CASE("a bare number at the end of the text ends with the text", "[json]") {
    const JsonValue value = read("  120");
    CHECK(value.begin == 2);
    CHECK(value.end == 5);
}

TEST_CASE("limits have problems of their own, at the place where they are passed", "[json]") {
    const JsonLimits limits{.depth = 3, .text_length = 4, .values = 6};

    CHECK(read_json("[[[1]]]", limits).ok());
    const auto deep = read_json("[[\n [[1]]]]", limits);
    REQUIRE_FALSE(deep.ok());
    CHECK(sentence(deep.problem()) == "line 2, column 3: brackets are more than 3 levels deep");

    CHECK(read_json("\"\xC3\xBC\xC3\xBC\xC3\xBC\xC3\xBC\"", limits).ok());
    const auto text_long = read_json("[1, \"12345\"]", limits);
    REQUIRE_FALSE(text_long.ok());
    CHECK(sentence(text_long.problem()) == "line 1, column 5: a text has 5 characters");
    CHECK(expected(text_long.problem()) == "4 or fewer");
    CHECK_FALSE(read_json("{\"12345\": 1}", limits).ok());

    CHECK(read_json("[1,2,3,4,5]", limits).ok());
    const auto many = read_json("[1,2,3,4,5,6]", limits);
    REQUIRE_FALSE(many.ok());
    CHECK(sentence(many.problem()) == "line 1, column 12: there are more than 6 values in one part");
}

TEST_CASE("10,000 levels of nesting get a sentence", "[json]") {
    const std::string opening = GENERATE("[", "{\"a\":");
    std::string text;
    for (int i = 0; i < 10'000; ++i)
        text += opening;
    const auto value = read_json(text, JsonLimits());
    REQUIRE_FALSE(value.ok());
    CHECK(code_name(value.problem().code) == code_name(ProblemCode::json_too_deep));
    CHECK(value.problem().position == TextPosition{1, 32 * opening.size() + 1});
}

TEST_CASE("elements of the wanted list are handed over one by one and not kept", "[json]") {
    const std::string_view text =
        R"({"units":"cm","bikes":[{"id":"A"},7,[8,[9]],"x"],"inner":{"bikes":[1]},"end":0})";
    std::vector<std::string> taken;
    std::vector<std::size_t> seen_before;
    const ElementSink sink{.member = "bikes", .take = [&](JsonValue&& element, const JsonValue& so_far) {
                               check_slices(text, element);
                               taken.emplace_back(slice(text, element));
                               seen_before.push_back(so_far.members.size());
                           }};
    const auto value = read_json(text, JsonLimits(), &sink);
    REQUIRE(value.ok());
    CHECK(taken == std::vector<std::string>{R"({"id":"A"})", "7", "[8,[9]]", "\"x\""});
    CHECK(seen_before == std::vector<std::size_t>(4, 2));
    CHECK(slice(text, value->find("bikes")->value) == R"([{"id":"A"},7,[8,[9]],"x"])");
    CHECK(value->find("bikes")->value.items.empty());
    CHECK(value->find("inner")->value.find("bikes")->value.items.size() == 1);
    CHECK(value->find("end") != nullptr);
}

TEST_CASE("only the top-level member of that name is handed over, and only when it is a list", "[json]") {
    int taken = 0;
    const ElementSink sink{.member = "bikes", .take = [&](JsonValue&&, const JsonValue&) { ++taken; }};
    CHECK(read_json(R"({"bikes":{"bikes":[1,2]}})", JsonLimits(), &sink).ok());
    CHECK(read_json(R"([{"bikes":[1,2]}])", JsonLimits(), &sink).ok());
    CHECK(read_json(R"({"other":[1,2]})", JsonLimits(), &sink).ok());
    CHECK(taken == 0);
}

TEST_CASE("a text in an element is left to whoever takes the element, and values count anew for each",
          "[json]") {
    const JsonLimits limits{.depth = 4, .text_length = 4, .values = 6};
    int taken = 0;
    const ElementSink sink{.member = "b", .take = [&](JsonValue&&, const JsonValue&) { ++taken; }};
    CHECK(read_json(R"({"b":[["12345",1],[1,2,3],[1,2,3],[1,2,3]],"c":1})", limits, &sink).ok());
    CHECK(taken == 4);
    CHECK_FALSE(read_json(R"({"b":[[1,2,3,4,5]]})", limits, &sink).ok());
    CHECK_FALSE(read_json(R"({"b":[1],"c":"12345"})", limits, &sink).ok());
}

TEST_CASE("kinds have words for sentences", "[json]") {
    const JsonValue value = read(R"([null,true,false,1,"t",[],{}])");
    const std::vector<std::string_view> words{
        "null", "true", "false", "a number", "a text", "a list", "a group of fields"};
    for (std::size_t i = 0; i < words.size(); ++i)
        CHECK(in_english(value.items[i].kind_name()) == words[i]);
}
