// Wheel sizes turned round: what fits any bike of one, and what fits half of them; and the ages that go with it.
#include "core/planning/suits/suits.h"

#include "core/planning/suits/typical_years.h"
#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::literals;
using saddlerule::testing::RepeatableRandom;

namespace {

Bike bike(const char* wheel, double lowest_mm, double highest_mm, BikeKind kind = BikeKind::pedal) {
    Bike made;
    made.wheel = Wheel::from_text(wheel);
    made.saddle_lowest = Length::millimetres(lowest_mm);
    made.saddle_highest = Length::millimetres(highest_mm);
    made.kind = kind;
    return made;
}

constexpr std::size_t starting = 2;

} // namespace

TEST_CASE("bikes come by wheel size and lowest saddle, those without a size last", "[suits]") {
    std::vector<Bike> list{bike("20", 600, 700), bike("16", 520, 650), bike("16", 480, 600)};
    list.push_back(bike("16", 400, 500));
    list.back().wheel.reset();
    const Suits suits = whom_they_suit(list, usual_reading_sd());
    REQUIRE(suits.bikes.size() == 4);
    CHECK(suits.bikes[0].bike == &list[2]);
    CHECK(suits.bikes[1].bike == &list[1]);
    CHECK(suits.bikes[2].bike == &list[0]);
    CHECK(suits.bikes[3].bike == &list[3]);
    REQUIRE(suits.wheels.size() == 2);
    CHECK(suits.wheels[0].nominal_inches == 16.0);
    CHECK(suits.wheels[0].stages[starting].bikes == 2);
}

TEST_CASE("a balance bike suits who glides, and nobody else", "[suits]") {
    const std::vector<Bike> list{bike("12", 350, 450, BikeKind::balance)};
    const Suits suits = whom_they_suit(list, usual_reading_sd());
    CHECK(suits.bikes[0].stages[0].has_value());
    CHECK_FALSE(suits.bikes[0].stages[starting].has_value());
    CHECK(suits.wheels[0].stages[starting].bikes == 0);
}

TEST_CASE("what any and half of a wheel size fit is counted anew at every inseam", "[suits]") {
    RepeatableRandom random(3);
    for (int round = 0; round < 40; ++round) {
        std::vector<Bike> list;
        const int count = 1 + static_cast<int>(random.uniform() * 7.0);
        for (int i = 0; i < count; ++i) {
            const double lowest = std::round(random.uniform(400.0, 800.0));
            list.push_back(bike("16", lowest, lowest + std::round(random.uniform(40.0, 160.0))));
        }
        const WheelStage wheel = whom_they_suit(list, usual_reading_sd()).wheels.at(0).stages[starting];
        const auto within = [](const std::optional<SharedRange>& range, Length inseam) {
            if (!range || inseam < range->from || inseam > range->to)
                return false;
            for (const auto& [after, before] : range->gaps) {
                if (inseam > after && inseam < before)
                    return false;
            }
            return true;
        };
        const WindowOffsets offsets = window_offsets(Stage::starting, Confidence::usual);
        for (int tenths = 3000; tenths < 10500; tenths += 1) {
            const Length inseam = Length::millimetres(tenths / 10.0);
            int fitting = 0;
            for (const Bike& one : list)
                fitting += fit_of(SaddleSpan::of(one), {inseam, usual_reading_sd()}, offsets).verdict ==
                           Verdict::fits_now;
            const bool any = fitting > 0;
            const bool half = 2 * fitting >= count;
            if (any != within(wheel.any, inseam) || half != within(wheel.half, inseam))
                FAIL("at " << inseam.in_millimetres() << " mm " << fitting << " of " << count);
        }
    }
}

TEST_CASE("typical years go by the middle child of the growth reference", "[suits]") {
    const TypicalYears years;
    // Fredriks et al. 2005, both sexes: legs of about 445 mm at 3 1/2 years and 527 mm at 5 1/2; 20 mm for the sole.
    const YearRange small = years.of(430_mm, 560_mm);
    REQUIRE(small.from);
    REQUIRE(small.to);
    CHECK(*small.from == 3);
    CHECK(*small.to == 5);
    // Wider ranges take in at least the same years; open ends stay open.
    const YearRange wider = years.of(400_mm, 600_mm);
    CHECK(*wider.from <= *small.from);
    CHECK(*wider.to >= *small.to);
    CHECK_FALSE(years.of(430_mm, std::nullopt).to.has_value());
    CHECK_FALSE(years.of(1200_mm, 1300_mm).from.has_value());
    // A range between the middles of two years has the nearer one.
    const YearRange narrow = years.of(500_mm, 500.1_mm);
    CHECK(narrow.from == narrow.to);
}
