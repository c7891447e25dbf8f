// Wheel sizes. Outside check: ISO 5775-1 bead seat diameters (from memory).
#include "core/fit/bike/wheel.h"

#include "tests/domain_checkers.h"

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

struct Marking {
    const char* text;
    double nominal_inches;
    double bead_seat_mm;
};

} // namespace

TEST_CASE("an ISO 5775 marking and a nominal size name the same wheel", "[bike]") {
    const auto marking = GENERATE(values<Marking>({
        {"47-305", 16, 305},
        {"16", 16, 305},
        {"16 in", 16, 305},
        {"16\"", 16, 305},
        {"37-349", 16, 349},
        {"57-203", 12, 203},
        {"47-254", 14, 254},
        {"47-355", 18, 355},
        {"47-406", 20, 406},
        {"28-451", 20, 451},
        {"47-507", 24, 507},
        {"28-540", 24, 540},
        {"50-559", 26, 559},
        {"27.5", 27.5, 584},
        {"27,5 in", 27.5, 584},
        {"700C", 28, 622},
        {"28", 28, 622},
        {"16 x 1.75", 16, 305},
        {"20x1.95\"", 20, 406},
        {"16\" x 1.75\"", 16, 305},
        {"20 \xC3\x97 1,95", 20, 406},
        {"12 1/2 x 2 1/4", 12, 203},
        {"12.5", 12, 203},
        {"12\xC2\xBD", 12, 203},
        {"16 x 1 3/8", 16, 349},
        {"20 x 1 3/8", 20, 451},
        {"24 x 1 3/8", 24, 540},
        {"700x35C", 28, 622},
        {"700 x 35", 28, 622},
        {"47\xE2\x80\x93"
         "305",
         16, 305},
        {"ETRTO 47-305", 16, 305},
        {"305", 16, 305},
        {"622", 28, 622},
        {"37 - 622", 28, 622},
    }));
    CAPTURE(marking.text);
    const auto wheel = Wheel::from_text(marking.text);
    REQUIRE(wheel);
    CHECK(*wheel->nominal_inches() == marking.nominal_inches);
    check_length(wheel->bead_seat(), Length::millimetres(marking.bead_seat_mm));
}

TEST_CASE("a marking of no common size keeps its diameter and has no nominal one", "[bike]") {
    const auto wheel = Wheel::from_text("47-470");
    REQUIRE(wheel);
    CHECK_FALSE(wheel->nominal_inches());
    check_length(wheel->bead_seat(), 470_mm);
}

TEST_CASE("what is no wheel is refused", "[bike]") {
    for (const char* text : {"", "sixteen", "17", "16 cm", "47-", "-305", "47-30500", "5-305", "300-305",
                             "700D", "305-47", "26 x 1 3/8", "16 x", "x 1.75", "16 x 40", "17 x 1.75", "470"})
        CHECK_FALSE(Wheel::from_text(text));
}

TEST_CASE("a wheel rolls on its tyre", "[bike]") {
    check_length(Wheel::from_text("47-305")->rolling_radius(), Length::millimetres(152.5 + 47.0));
    CHECK_FALSE(Wheel::from_text("16")->tyre_width());
    check_length(*Wheel::from_text("16 x 1.75")->tyre_width(), Length::inches(1.75));
    check_length(*Wheel::from_text("700x35C")->tyre_width(), 35_mm);
}
