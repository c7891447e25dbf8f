// The JSON that answers are written in. Outside checks: RFC 8259 (strings, numbers); nlohmann_json reads it
// back.
#include "core/exchange/json_writer.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <cmath>
#include <limits>
#include <string>

using namespace saddlerule;

namespace {

std::string number(double value, int decimals) {
    JsonWriter json;
    json.number(value, decimals);
    return json.take();
}

std::string text(std::string_view value) {
    JsonWriter json;
    json.text(value);
    return json.take();
}

} // namespace

TEST_CASE("figures are rounded half away from zero and written without trailing zeros", "[json_writer]") {
    CHECK(number(495.0, 1) == "495");
    CHECK(number(495.34, 1) == "495.3");
    CHECK(number(495.35, 1) == "495.4");
    CHECK(number(-0.25, 1) == "-0.3");
    CHECK(number(0.05, 2) == "0.05");
    CHECK(number(-12.5, 3) == "-12.5");
    CHECK(number(0.000001, 6) == "0.000001");
    CHECK(number(100.0, 0) == "100");
    CHECK(number(1.0 / 3.0, 6) == "0.333333");
}

TEST_CASE("there is no minus zero, and no figure that is none", "[json_writer]") {
    CHECK(number(-0.0, 1) == "0");
    CHECK(number(-0.04, 1) == "0");
    CHECK(number(std::nan(""), 1) == "null");
    CHECK(number(std::numeric_limits<double>::infinity(), 1) == "null");
    CHECK(number(-1e300, 1) == "null");
    CHECK(number(999999999999.0, 3) == "999999999999");
}

TEST_CASE("a written figure reads back as the figure, over a grid", "[json_writer]") {
    for (int i = -20000; i <= 20000; i += 7) {
        const double value = i / 1000.0;
        CHECK(nlohmann::json::parse(number(value, 3)).get<double>() == Approx(value).margin(1e-12));
    }
}

// RFC 8259, section 7: quotation mark, reverse solidus and the control characters must be escaped.
TEST_CASE("every character comes back as it went in", "[json_writer]") {
    std::string all;
    for (int c = 0; c < 128; ++c)
        all += static_cast<char>(c);
    all += "grün \xF0\x9F\x9A\xB2 </script>";
    CHECK(nlohmann::json::parse(text(all)).get<std::string>() == all);
    CHECK(text("a\"b\\c\n\x01") == R"("a\"b\\c\n\u0001")");
    CHECK(text("") == R"("")");
}

TEST_CASE("commas go between values and nowhere else", "[json_writer]") {
    JsonWriter json;
    json.object([&] {
        json.key("empty").object([] {});
        json.key("none").array([] {});
        json.key("list").array([&] {
            json.integer(1);
            json.array([&] { json.flag(true); });
            json.null();
        });
        field(json, "length", Length::millimetres(12.34));
        field(json, "unknown", std::optional<Mass>());
        text_field(json, "blank", "");
    });
    CHECK(json.take() ==
          R"({"empty":{},"none":[],"list":[1,[true],null],"length":12.3,"unknown":null,"blank":null})");
}
