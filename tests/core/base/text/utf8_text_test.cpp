// Bytes of files to text. UTF-8 well-formedness: The Unicode Standard 15, table 3-7.
#include "core/base/text/utf8_text.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

using namespace saddlerule;
using namespace std::string_view_literals;

namespace {

struct Refused {
    std::string_view bytes;
    ProblemCode code;
    std::string_view said; ///< part of the sentence
};

Problem problem_of(std::string_view bytes) {
    std::string converted;
    const auto text = utf8_text(bytes, converted);
    REQUIRE_FALSE(text.ok());
    return text.problem();
}

std::string text_of_file(std::string_view bytes) {
    std::string converted;
    const auto text = utf8_text(bytes, converted);
    REQUIRE(text.ok());
    return std::string(*text);
}

std::string utf16(std::u16string_view text, bool little) {
    std::string bytes;
    for (const char16_t unit : text) {
        const auto low = static_cast<char>(unit & 0xFF);
        const auto high = static_cast<char>(unit >> 8);
        bytes += little ? low : high;
        bytes += little ? high : low;
    }
    return bytes;
}

} // namespace

TEST_CASE("UTF-8 is read as it is, without its byte order mark", "[text]") {
    CHECK(text_of_file("{}"sv) == "{}");
    CHECK(text_of_file("\xEF\xBB\xBF{ }"sv) == "{ }");
    CHECK(text_of_file("gr\xC3\xBCn \xE2\x82\xAC \xF0\x9F\x9A\xB2"sv) ==
          "gr\xC3\xBCn \xE2\x82\xAC \xF0\x9F\x9A\xB2");
}

TEST_CASE("UTF-16 with its byte order mark reads as the same text, in either order of bytes", "[text]") {
    const std::u16string_view text = u"\uFEFF{\"name\": \"gr\u00FCn \u20AC \U0001F6B2\"}";
    const std::string expected = "{\"name\": \"gr\xC3\xBCn \xE2\x82\xAC \xF0\x9F\x9A\xB2\"}";
    CHECK(text_of_file(utf16(text, true)) == expected);
    CHECK(text_of_file(utf16(text, false)) == expected);
}

TEST_CASE("what is no text is refused with what it seems to be", "[text]") {
    const auto refused = GENERATE(values<Refused>({
        {""sv, ProblemCode::file_empty, "empty"},
        {" \r\n\t\n"sv, ProblemCode::file_blank, "blanks"},
        {"\xEF\xBB\xBF"sv, ProblemCode::file_blank, "blanks"},
        {"PK\x03\x04\x14\0\0\0"sv, ProblemCode::file_is_other, "a ZIP archive"},
        {"PK\x03\x04\x14\0...[Content_Types].xml...xl/workbook.xml"sv, ProblemCode::file_is_spreadsheet,
         "xlsx"},
        {"PK\x03\x04\x14\0...mimetypeapplication/vnd.oasis.opendocument.spreadsheet"sv,
         ProblemCode::file_is_spreadsheet, "ods"},
        {"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1..."sv, ProblemCode::file_is_spreadsheet, "xls"},
        {"%PDF-1.7"sv, ProblemCode::file_is_other, "a PDF document"},
        {"\x89PNG\r\n\x1A\n...."sv, ProblemCode::file_is_other, "PNG"},
        {"\xFF\xD8\xFF\xE0"sv, ProblemCode::file_is_other, "JPEG"},
        {"\0\0\0\x18"
         "ftypheic"sv,
         ProblemCode::file_is_other, "picture"},
        {"\x1F\x8B\x08"sv, ProblemCode::file_is_other, "gzip"},
        {"{\"a\": \"\0\"}"sv, ProblemCode::file_is_binary, "line 1, column 8"},
        {"\xFF\xFE{\0}"sv, ProblemCode::file_utf16_broken, "line 1, column 2"},
        {"\xFF\xFE{\0\x00\xD8}\0"sv, ProblemCode::file_utf16_broken, "line 1, column 2"},
        {"\xFE\xFF\0\n\xDC\0\0}"sv, ProblemCode::file_utf16_broken, "line 2, column 1"},
        {"{\0\"\0"sv, ProblemCode::file_encoding_not_read, "UTF-16 without"},
        {"\xFF\xFE\0\0{\0\0\0"sv, ProblemCode::file_encoding_not_read, "UTF-32"},
        {"{\n \"colours\": [\"gr\xFCn\"]}"sv, ProblemCode::file_not_utf8, "line 2, column 17: the byte FC"},
        {"\"gr\xC3\xBCn \x84quoted\x93\""sv, ProblemCode::file_not_utf8, "Windows-1252"},
        {"\"gr\xC3"sv, ProblemCode::file_not_utf8, "cut off"},
    }));
    CAPTURE(refused.bytes);
    const Problem problem = problem_of(refused.bytes);
    CAPTURE(sentence(problem));
    CHECK(code_name(problem.code) == code_name(refused.code));
    CHECK(sentence(problem).find(refused.said) != std::string::npos);
}

TEST_CASE("ill-formed UTF-8 is found at its first byte", "[text]") {
    const auto bytes = GENERATE(values<std::string_view>({
        "ab\x80"sv,             // a continuation byte alone
        "ab\xC0\xAF"sv,         // overlong
        "ab\xC1\xBF"sv,         // overlong
        "ab\xE0\x9F\xBF"sv,     // overlong
        "ab\xF0\x8F\xBF\xBF"sv, // overlong
        "ab\xED\xA0\x80"sv,     // a surrogate
        "ab\xF4\x90\x80\x80"sv, // beyond U+10FFFF
        "ab\xF5\x80\x80\x80"sv, // never a lead byte
        "ab\xE2\x82 c"sv,       // broken off
    }));
    CAPTURE(bytes);
    const Problem problem = problem_of(bytes);
    CHECK(code_name(problem.code) == code_name(ProblemCode::file_not_utf8));
    CHECK(problem.position == TextPosition{1, 3});
}

TEST_CASE("the ends of every range of well-formed UTF-8 are accepted", "[text]") {
    const std::string_view ends = "\x7F\xC2\x80\xDF\xBF\xE0\xA0\x80\xED\x9F\xBF\xEE\x80\x80\xEF\xBF\xBF"
                                  "\xF0\x90\x80\x80\xF4\x8F\xBF\xBF"sv;
    CHECK(text_of_file(ends) == ends);
}

TEST_CASE("8 MiB are read and one byte more is refused, saying the limit", "[text]") {
    std::string bytes(largest_file, 'x');
    CHECK(text_of_file(bytes).size() == largest_file);
    bytes += 'x';
    const Problem problem = problem_of(bytes);
    CHECK(code_name(problem.code) == code_name(ProblemCode::file_too_large));
    CHECK(sentence(problem) == "the file has 8.1 MiB; a list can have at most 8 MiB");
}

TEST_CASE("characters are counted as Unicode counts them, and written back in UTF-8", "[text]") {
    CHECK(character_count("gr\xC3\xBCn \xF0\x9F\x9A\xB2") == 6);
    std::string text;
    for (const char32_t character : {U'A', U'\u00FC', U'\u20AC', U'\U0001F6B2'})
        append_utf8(text, character);
    CHECK(text == "A\xC3\xBC\xE2\x82\xAC\xF0\x9F\x9A\xB2");
}
