// Figures as people read them.
#include "core/base/outcomes/figure_text.h"

#include <catch2/catch.hpp>

#include <limits>
#include <string_view>

using namespace saddlerule;

namespace {

struct Figure {
    double value;
    int decimals;
    std::string_view text;
};

} // namespace

TEST_CASE("a figure has no more decimals than it needs", "[outcomes]") {
    const auto figure = GENERATE(values<Figure>({
        {49.5, 2, "49.5"},
        {63.0, 2, "63"},
        {0.0, 2, "0"},
        {-0.0, 2, "0"},
        {-0.001, 2, "0"},
        {-3.25, 2, "-3.25"},
        {0.05, 2, "0.05"},
        {19.999, 2, "20"},
        {1.005, 0, "1"},
        {2.0 / 3.0, 6, "0.666667"},
        {8'388'608.0, 2, "8388608"},
        {999'999'999'999'999.0, 2, "999999999999999"},
        {1e308, 2, "?"},
        {std::numeric_limits<double>::infinity(), 2, "?"},
        {std::numeric_limits<double>::quiet_NaN(), 2, "?"},
    }));
    CAPTURE(figure.value, figure.decimals);
    CHECK(figure_text(figure.value, figure.decimals) == figure.text);
}

TEST_CASE("a long text is quoted by its first characters, never by half a character", "[outcomes]") {
    CHECK(excerpt("saddle", 6) == "saddle");
    CHECK(excerpt("saddles", 6) == "saddle...");
    CHECK(excerpt("gr\xC3\xBCn", 3) == "gr\xC3\xBC...");
    CHECK(first_characters("\xF0\x9F\x9A\xB2!", 1) == "\xF0\x9F\x9A\xB2");
}
