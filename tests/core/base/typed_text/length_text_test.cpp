// Typed lengths. Outside check: the international inch, 25.4 mm exactly (international yard and pound
// agreement, 1959).
#include "core/base/typed_text/length_text.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

using namespace saddlerule;

namespace {

struct Typed {
    std::string_view text;
    LengthUnit bare;
    double mm;
};

struct Refused {
    std::string_view text;
    ProblemCode code;
};

} // namespace

TEST_CASE("a length reads the way people type it", "[typed_text]") {
    const auto typed = GENERATE(values<Typed>({
        {"49.5", LengthUnit::centimetre, 495.0},
        {"49,5 cm", LengthUnit::inch, 495.0},
        {"495", LengthUnit::millimetre, 495.0},
        {"495mm", LengthUnit::centimetre, 495.0},
        {"0.495 m", LengthUnit::centimetre, 495.0},
        {"19 1/2 in", LengthUnit::centimetre, 495.3},
        {"19-1/2", LengthUnit::inch, 495.3},
        {"19\xC2\xBD\"", LengthUnit::centimetre, 495.3},
        {"19 \xC2\xBD", LengthUnit::inch, 495.3},
        {"1/2 in", LengthUnit::centimetre, 12.7},
        {"19.5 Inches", LengthUnit::centimetre, 495.3},
        {"1 ft 7 in", LengthUnit::centimetre, 482.6},
        {"1 ft 7 1/2", LengthUnit::centimetre, 495.3},
        {"1'7\"", LengthUnit::centimetre, 482.6},
        {"1\xE2\x80\x99"
         "7\xE2\x80\x9D",
         LengthUnit::centimetre, 482.6},
        {"2 ft", LengthUnit::centimetre, 609.6},
        {"  \xC2\xA0"
         "50\tcm ",
         LengthUnit::inch, 500.0},
        {"20 Zoll", LengthUnit::centimetre, 508.0},
        {"0", LengthUnit::centimetre, 0.0},
        {"49.5 cm.", LengthUnit::inch, 495.0},
        {"49,5 Zentimeter", LengthUnit::inch, 495.0},
        {"49,5 centim\xC3\xA8tres", LengthUnit::inch, 495.0},
        {"49,5 cent\xC3\xADmetros", LengthUnit::inch, 495.0},
        {"49.5\xE2\x80\xAF"
         "cm\xE2\x80\x89",
         LengthUnit::inch, 495.0},
        {"1' - 7\"", LengthUnit::centimetre, 482.6},
        {"1'-7 1/2\"", LengthUnit::centimetre, 495.3},
        {"6 \xE2\x85\x93 in", LengthUnit::centimetre, 19.0 / 3.0 * 25.4},
        {"2 Fu\xC3\x9F", LengthUnit::centimetre, 609.6},
    }));
    CAPTURE(typed.text);
    const auto length = read_length(typed.text, typed.bare);
    REQUIRE(length.ok());
    CHECK(length->in_millimetres() == Approx(typed.mm).margin(1e-9));
}

TEST_CASE("what is not a length is refused with its code", "[typed_text]") {
    const auto refused = GENERATE(values<Refused>({
        {"", ProblemCode::figure_empty},
        {"   ", ProblemCode::figure_empty},
        {"forty", ProblemCode::figure_not_a_number},
        {"49.5.1", ProblemCode::figure_not_a_number},
        {"49.", ProblemCode::figure_not_a_number},
        {"1e3", ProblemCode::figure_unit_unknown},
        {"0x31", ProblemCode::figure_unit_unknown},
        {"NaN", ProblemCode::figure_not_a_number},
        {"-3 cm", ProblemCode::figure_negative},
        {"\xE2\x88\x92"
         "3 cm",
         ProblemCode::figure_negative},
        {"50 yards", ProblemCode::figure_unit_unknown},
        {"50 cm long", ProblemCode::figure_not_a_number},
        {"19 1/0 in", ProblemCode::figure_fraction_malformed},
        {"19 3/2 in", ProblemCode::figure_fraction_malformed},
        {"19.5 1/2 in", ProblemCode::figure_fraction_malformed},
        {"1 ft 13 in", ProblemCode::figure_not_a_number},
        {"1 ft 7 cm", ProblemCode::figure_not_a_number},
        {"999999999999999999999999 cm", ProblemCode::figure_too_large},
    }));
    CAPTURE(refused.text);
    const auto length = read_length(refused.text, LengthUnit::centimetre);
    REQUIRE_FALSE(length.ok());
    CHECK(std::string(code_name(length.problem().code)) == std::string(code_name(refused.code)));
    CHECK_FALSE(sentence(length.problem()).empty());
}

TEST_CASE("a sixteenth of an inch is exact to the last digit that matters", "[typed_text]") {
    for (int sixteenths = 0; sixteenths < 16; ++sixteenths) {
        const std::string text = "20 " + std::to_string(sixteenths) + "/16 in";
        const auto length = read_length(text, LengthUnit::centimetre);
        REQUIRE(length.ok());
        CHECK(length->in_millimetres() == Approx(20 * 25.4 + sixteenths * 25.4 / 16).margin(1e-9));
    }
}
