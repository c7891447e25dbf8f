// Quantities. Outside checks: the international inch and pound (1959 agreement), the Gregorian calendar
// through <chrono>.
#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/closed_range.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/base/quantities/money.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <string>

using namespace saddlerule;
using namespace saddlerule::literals;

// International yard and pound agreement, 1959: 1 in = 25.4 mm and 1 lb = 0.45359237 kg, both exactly.
TEST_CASE("inches, feet and pounds are the international ones", "[quantities]") {
    CHECK(Length::inches(1.0).in_millimetres() == 25.4);
    CHECK(Length::feet(1.0).in_millimetres() == Approx(304.8).margin(1e-12));
    CHECK(Length::inches(19.5).in_centimetres() == Approx(49.53).margin(1e-12));
    CHECK(Length::centimetres(49.53).in_inches() == Approx(19.5).margin(1e-12));
    CHECK(Mass::pounds(1.0).in_kilograms() == 0.45359237);
}

TEST_CASE("lengths add, scale and compare, and their ratio is a number", "[quantities]") {
    CHECK(500_mm + 1_mm > 500_mm);
    CHECK((500_mm - 520_mm).in_millimetres() == Approx(-20.0).margin(1e-12));
    CHECK((2.0 * 10_mm).in_millimetres() == Approx(20.0).margin(1e-12));
    CHECK(300_mm / 150_mm == Approx(2.0).margin(1e-12));
    CHECK((-(10_mm)).in_millimetres() == Approx(-10.0).margin(1e-12));
}

TEST_CASE("a closed range holds both its ends and cannot be built upside down", "[quantities]") {
    const auto range = ClosedRange<Length>::between(470_mm, 505_mm);
    REQUIRE(range);
    CHECK(range->contains(470_mm));
    CHECK(range->contains(505_mm));
    CHECK_FALSE(range->contains(505.1_mm));
    CHECK(range->nearest_to(600_mm) == 505_mm);
    CHECK(range->nearest_to(100_mm) == 470_mm);
    CHECK(range->width() == 35_mm);
    CHECK_FALSE(ClosedRange<Length>::between(505_mm, 470_mm));
    CHECK_FALSE(ClosedRange<Length>::between(Length::millimetres(std::nan("")), 470_mm));
}

TEST_CASE("ranges that touch in one point meet there; ranges apart do not", "[quantities]") {
    const auto window = *ClosedRange<Length>::between(470_mm, 505_mm);
    const auto touching = window.intersection(*ClosedRange<Length>::between(505_mm, 600_mm));
    REQUIRE(touching);
    CHECK(touching->width() == 0_mm);
    CHECK_FALSE(window.intersection(*ClosedRange<Length>::between(506_mm, 600_mm)));
}

TEST_CASE("a date reads and writes ISO 8601 and refuses days that do not exist", "[quantities]") {
    CHECK(CalendarDate::from_iso("2026-11-25")->to_iso() == "2026-11-25");
    CHECK(CalendarDate::from_iso("2028-02-29"));
    for (const char* wrong : {"2027-02-29", "2026-13-01", "2026-00-10", "2026-1-1", "25.11.2026",
                              "2026-11-25T00:00", "", "20261-1-25", "1899-12-31", "2200-01-01", "2026-11-2x"})
        CHECK_FALSE(CalendarDate::from_iso(wrong));
    CHECK(CalendarMonth::from_iso("2021-09")->middle().to_iso() == "2021-09-15");
    CHECK_FALSE(CalendarMonth::from_iso("2021-9"));
    CHECK_FALSE(CalendarMonth::from_iso("2021-13"));
}

TEST_CASE("dates move by days and by months, to the last day where a month is short", "[quantities]") {
    const CalendarDate start = *CalendarDate::from_iso("2027-01-31");
    CHECK(start.plus_months(1).to_iso() == "2027-02-28");
    CHECK(start.plus_months(13).to_iso() == "2028-02-29");
    CHECK(start.plus_months(-2).to_iso() == "2026-11-30");
    CHECK(start.plus(Days(1.4)).to_iso() == "2027-02-01");
    CHECK((*CalendarDate::from_iso("2028-03-01") - *CalendarDate::from_iso("2028-02-01")).count() == 29.0);
    CHECK(Days::years(1.0).in_months() == Approx(12.0));
}

TEST_CASE("money keeps hundredths exactly and knows its currency", "[quantities]") {
    const Currency euro = *Currency::from_code("EUR");
    CHECK(Money::amount(0.1, euro) == Money::amount(0.1000001, euro));
    CHECK(Money::amount(119.99, euro).in_main_units() == 119.99);
    CHECK(Money::amount(1.0, euro).currency().code() == "EUR");
    for (const char* wrong : {"", "eur", "EURO", "E1R", "E", "\xE2\x82\xAC"})
        CHECK_FALSE(Currency::from_code(wrong));
}
