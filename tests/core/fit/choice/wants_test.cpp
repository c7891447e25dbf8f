// What a family asks of a bike beside the fit.
#include "core/fit/choice/wants.h"

#include <catch2/catch.hpp>

using namespace saddlerule;

namespace {

const Currency euro = *Currency::from_code("EUR");

Bike plain_bike() {
    Bike bike;
    bike.price = Money::amount(120.0, euro);
    bike.mass = Mass::kilograms(6.4);
    bike.brakes = std::vector<Brake>{Brake::front_hand, Brake::rear_hand};
    bike.wheel = Wheel::from_text("47-305");
    bike.colours = {"Green"};
    return bike;
}

using Reasons = std::vector<Unwanted>;

} // namespace

TEST_CASE("a family without wishes is offered every bike", "[wants]") {
    CHECK(reasons_against(plain_bike(), {}).empty());
    CHECK(reasons_against(Bike{}, {}).empty());
}

TEST_CASE("a limit is kept to the cent, and met exactly it is met", "[wants]") {
    Wants wants;
    wants.max_price = Amount::main_units(120.0);
    wants.max_mass = Mass::kilograms(6.4);
    CHECK(reasons_against(plain_bike(), wants).empty());
    wants.max_price = Amount::main_units(119.99);
    wants.max_mass = Mass::kilograms(6.3);
    CHECK(reasons_against(plain_bike(), wants) == Reasons{Unwanted::price_over, Unwanted::mass_over});
}

TEST_CASE("a single speed has one gear or none to choose, and a bike with gears has more", "[wants]") {
    Wants wants;
    Bike bike = plain_bike();
    wants.gears = GearsWish::single;
    CHECK(reasons_against(bike, wants) == Reasons{Unwanted::gears_unknown});
    bike.gears = 1;
    CHECK(reasons_against(bike, wants).empty());
    bike.gears = 3;
    CHECK(reasons_against(bike, wants) == Reasons{Unwanted::gears});
    wants.gears = GearsWish::several;
    CHECK(reasons_against(bike, wants).empty());
    bike.gears = 0; // a balance bike
    CHECK(reasons_against(bike, wants) == Reasons{Unwanted::gears});
}

TEST_CASE("what is not known does not pass for wanted, and says so", "[wants]") {
    Wants wants;
    wants.max_price = Amount::main_units(500.0);
    wants.max_mass = Mass::kilograms(20.0);
    wants.brakes = BrakeWish::coaster;
    wants.wheel_nominal_inches = 16.0;
    wants.colour = "green";
    CHECK(reasons_against(Bike{}, wants) == Reasons{Unwanted::price_unknown, Unwanted::mass_unknown,
                                                    Unwanted::brakes_unknown, Unwanted::wheel,
                                                    Unwanted::colour});
}

TEST_CASE("brakes, kind, wheel and colour are matched", "[wants]") {
    Wants wants;
    wants.brakes = BrakeWish::two_hand;
    wants.kind = KindWish::pedal;
    wants.wheel_nominal_inches = 16.0;
    wants.colour = "gREEN";
    CHECK(reasons_against(plain_bike(), wants).empty());
    wants.brakes = BrakeWish::coaster;
    wants.kind = KindWish::balance;
    wants.wheel_nominal_inches = 20.0;
    wants.colour = "red";
    CHECK(reasons_against(plain_bike(), wants) ==
          Reasons{Unwanted::brakes, Unwanted::kind, Unwanted::wheel, Unwanted::colour});
}

TEST_CASE("one hand brake is not two", "[wants]") {
    Bike bike = plain_bike();
    bike.brakes = std::vector<Brake>{Brake::front_hand, Brake::coaster};
    Wants wants;
    wants.brakes = BrakeWish::two_hand;
    CHECK(reasons_against(bike, wants) == Reasons{Unwanted::brakes});
    wants.brakes = BrakeWish::coaster;
    CHECK(reasons_against(bike, wants).empty());
}

TEST_CASE("a bike is there unless the list says that it is not", "[wants]") {
    Wants wants;
    wants.available_only = true;
    Bike bike = plain_bike();
    CHECK(reasons_against(bike, wants).empty());
    bike.available = false;
    CHECK(reasons_against(bike, wants) == Reasons{Unwanted::not_available});
}

TEST_CASE("every reason has a name of its own on the wire", "[wants]") {
    CHECK(name_of(Unwanted::price_over) == "price_over");
    CHECK(name_of(Unwanted::colour) == "colour");
}
