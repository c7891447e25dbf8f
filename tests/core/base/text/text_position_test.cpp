// Byte offsets to lines and columns.
#include "core/base/text/text_position.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

using namespace saddlerule;

namespace {

struct Place {
    std::string_view text;
    std::string_view before; ///< the position asked for is behind this
    TextPosition position;
};

/// The plain way: one character after the other from the start.
TextPosition counted(std::string_view text, std::size_t offset) {
    TextPosition position;
    for (std::size_t i = 0; i < offset; ++i) {
        const bool crlf = text[i] == '\r' && i + 1 < text.size() && text[i + 1] == '\n';
        if (text[i] == '\n' || (text[i] == '\r' && !crlf))
            position = {position.line + 1, 1};
        else if ((static_cast<unsigned char>(text[i]) & 0xC0) != 0x80)
            ++position.column;
    }
    return position;
}

} // namespace

TEST_CASE("a position counts lines and characters from 1, whatever ends the lines", "[text]") {
    const auto place = GENERATE(values<Place>({
        {"", "", {1, 1}},
        {"abc", "", {1, 1}},
        {"abc", "ab", {1, 3}},
        {"abc", "abc", {1, 4}},
        {"a\nbc", "a\n", {2, 1}},
        {"a\nbc", "a\nb", {2, 2}},
        {"a\r\nbc", "a\r\nb", {2, 2}},
        {"a\rbc", "a\rb", {2, 2}},
        {"a\r\rb", "a\r\r", {3, 1}},
        {"a\n\r\nb", "a\n\r\n", {3, 1}},
        {"\n\n\n", "\n\n", {3, 1}},
        {"gr\xC3\xBCn!", "gr\xC3\xBC", {1, 4}},
        {"\xF0\x9F\x9A\xB2 bike", "\xF0\x9F\x9A\xB2 ", {1, 3}},
        {"a\xCC\x88z", "a\xCC\x88", {1, 3}}, // a letter and a combining mark: two characters
    }));
    CAPTURE(place.text, place.before);
    REQUIRE(place.text.starts_with(place.before));
    CHECK(TextPositions(place.text).at(place.before.size()) == place.position);
}

TEST_CASE("an offset behind the end is the end", "[text]") {
    CHECK(TextPositions("ab\ncd").at(1000) == TextPosition{2, 3});
}

TEST_CASE("positions in a long text agree with counting, in any order of asking", "[text]") {
    std::string text;
    for (int i = 0; i < 3000; ++i)
        text += i % 7 == 0 ? "\r\n" : i % 11 == 0 ? "\r" : i % 5 == 0 ? "\xE2\x82\xAC\n" : "saddle ";
    text += std::string(20'000, 'x'); // one line across several marks
    TextPositions positions(text);
    for (std::size_t step = 0; step <= text.size(); step += 97) {
        const std::size_t offset = (step * 7919) % (text.size() + 1);
        CAPTURE(offset);
        REQUIRE(positions.at(offset) == counted(text, offset));
    }
}
