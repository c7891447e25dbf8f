// The side view: parts where the figures say, everything else plausible and named as assumed.
#include "core/fit/drawing/side_view.h"

#include "tests/domain_checkers.h"

#include <algorithm>
#include <cmath>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

Bike measured_bike() {
    Bike bike;
    bike.wheel = Wheel::from_text("47-305");
    bike.saddle_lowest = 495_mm;
    bike.saddle_highest = 630_mm;
    bike.standover = 410_mm;
    bike.crank = 102_mm;
    bike.bottom_bracket_height = 215_mm;
    bike.seat_tube_angle_degrees = 70.0;
    return bike;
}

SideView view_of(const Bike& bike, Length inseam) {
    return side_view(bike, fit_for(inseam, Stage::starting, SaddleSpan::of(bike)), inseam);
}

Length distance(PlanePoint a, PlanePoint b) {
    return Length::millimetres(std::hypot((a.x - b.x).in_millimetres(), (a.y - b.y).in_millimetres()));
}

bool assumes(const SideView& view, std::string_view field) {
    return std::find(view.assumed.begin(), view.assumed.end(), field) != view.assumed.end();
}

} // namespace

TEST_CASE("a fully measured bike is drawn from its figures and assumes nothing", "[drawing]") {
    const SideView view = view_of(measured_bike(), 495_mm);
    CHECK(view.assumed.empty());
    check_length(view.rear_wheel.axle.y, Length::millimetres(152.5 + 47));
    check_length(view.bottom_bracket.y, 215_mm);
    check_length(*view.crank, 102_mm);
    check_length(view.saddle_lowest->y, 495_mm);
    check_length(view.saddle_highest->y, 630_mm);
    check_length(view.saddle_setting->y, 495_mm);
    CHECK(view.foot == FootOnFloor::flat);
    check_length((view.top_tube.from.y + view.top_tube.to.y) / 2.0, 410_mm);
}

TEST_CASE("the saddle slides along the seat tube's angle", "[drawing]") {
    const SideView view = view_of(measured_bike(), 495_mm);
    const Length back = view.saddle_lowest->x - view.saddle_highest->x;
    check_length(back, Length::millimetres(135.0 / std::tan(70.0 * std::acos(-1.0) / 180.0)));
}

TEST_CASE("what was not measured is named as assumed", "[drawing]") {
    Bike bike;
    bike.saddle_highest = 630_mm;
    const SideView view = view_of(bike, 495_mm);
    for (const char* field :
         {"wheel", "bottom_bracket_height", "crank", "seat_tube_angle_deg", "saddle_lowest", "standover"}) {
        CAPTURE(field);
        CHECK(assumes(view, field));
    }
    CHECK_FALSE(assumes(view, "saddle_highest"));
    CHECK_FALSE(view.saddle_lowest);
}

TEST_CASE("a balance bike is drawn without a crank", "[drawing]") {
    Bike bike = measured_bike();
    bike.kind = BikeKind::balance;
    bike.crank.reset();
    const SideView view = view_of(bike, 495_mm);
    CHECK_FALSE(view.crank);
    CHECK_FALSE(assumes(view, "crank"));
}

TEST_CASE("bikes of every usual size have wheels that clear each other, the pedals and the frame",
          "[drawing]") {
    for (const auto& [lowest, highest, wheel] : {std::tuple{360_mm, 460_mm, "12"},
                                                 {480_mm, 620_mm, "16"},
                                                 {570_mm, 760_mm, "20"},
                                                 {740_mm, 950_mm, "26"}}) {
        Bike bike;
        bike.saddle_lowest = lowest;
        bike.saddle_highest = highest;
        bike.wheel = Wheel::from_text(wheel);
        const SideView view = view_of(bike, lowest);
        CAPTURE(wheel);
        CHECK(view.front_wheel.axle.x - view.rear_wheel.axle.x > 2.0 * view.rear_wheel.radius);
        CHECK(distance(view.bottom_bracket, view.rear_wheel.axle) > view.rear_wheel.radius);
        CHECK(view.bottom_bracket.y > *view.crank + 30_mm);
        CHECK(view.seat_tube.to.y < *bike.saddle_lowest);
        CHECK(view.top_tube.to.x > view.top_tube.from.x + 100_mm);
        CHECK(view.grip.y > *bike.saddle_lowest);
    }
}

// Common practice: flat feet at the inseam, tiptoes from 2 to 4 in above it.
TEST_CASE("the foot meets the floor as the saddle windows say: flat for starting, on tiptoe for riding",
          "[drawing]") {
    CHECK(foot_on_floor(500_mm, 500_mm) == FootOnFloor::flat);
    for (double above = -40.0; above <= 120.0; above += 0.7) {
        const Length saddle = 500_mm + Length::millimetres(above);
        if (saddle_window(500_mm, Stage::starting, Confidence::usual).range.contains(saddle))
            CHECK(foot_on_floor(saddle, 500_mm) == FootOnFloor::flat);
        if (saddle_window(500_mm, Stage::riding, Confidence::usual).range.contains(saddle) && above >= 52.0)
            CHECK(foot_on_floor(saddle, 500_mm) == FootOnFloor::tiptoe);
    }
    CHECK(foot_on_floor(530_mm, 500_mm) == FootOnFloor::ball);
    CHECK(foot_on_floor(500_mm + Length::inches(3.0), 500_mm) == FootOnFloor::tiptoe);
    CHECK(foot_on_floor(500_mm + Length::inches(4.5), 500_mm) == FootOnFloor::off_the_floor);
}

TEST_CASE("a bike whose saddle cannot be set shows no setting and no foot", "[drawing]") {
    const SideView view = view_of(measured_bike(), 380_mm);
    CHECK_FALSE(view.saddle_setting);
    CHECK_FALSE(view.foot);
}
