// Text buffer: what was written stays where it is while more is written.
#include "core/base/text/text_buffer.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>
#include <vector>

using namespace saddlerule;

TEST_CASE("texts stay as they were while others are written, whatever their lengths", "[text]") {
    TextBuffer buffer;
    std::vector<std::string_view> views;
    std::vector<std::string> expected;
    for (std::size_t i = 0; i < 2000; ++i) {
        buffer.begin_next();
        const std::string piece(i * 7919 % 1201, static_cast<char>('a' + i % 26));
        buffer.append('[');
        buffer.append(piece);
        buffer.append("cut off again");
        buffer.cut(1 + piece.size());
        buffer.append(std::string_view());
        buffer.append(std::string_view("]"));
        REQUIRE(buffer.size() == piece.size() + 2);
        views.push_back(buffer.view());
        expected.push_back('[' + piece + ']');
    }
    const auto blocks = buffer.take_blocks();
    for (std::size_t i = 0; i < views.size(); ++i)
        REQUIRE(views[i] == expected[i]);
    // Every text is whole in one of the blocks.
    for (const std::string_view view : views) {
        bool found = false;
        for (const auto& block : blocks)
            found = found || (view.data() >= block->data() &&
                              view.data() + view.size() <= block->data() + block->size());
        REQUIRE(found);
    }
}

TEST_CASE("a text that is longer than any block moves as it grows", "[text]") {
    TextBuffer buffer;
    buffer.append("first");
    const std::string_view first = buffer.view();
    buffer.begin_next();
    std::string expected;
    for (int i = 0; i < 300'000; ++i) {
        buffer.append(std::string_view("abc"));
        expected += "abc";
    }
    CHECK(first == "first");
    CHECK(buffer.view() == expected);
}
