// The order of bikes. Outside check: common practice prefers the lowest saddle nearest the target from below.
#include "core/fit/choice/bike_order.h"

#include "tests/domain_checkers.h"

#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

using Places = std::vector<std::size_t>;

/// Facts of a bike as the engine would have them for a rider of 500 mm who is starting.
OrderFacts facts_of(Length lowest, Length highest) {
    const Fit fit = fit_for(500_mm, Stage::starting, {lowest, highest});
    OrderFacts facts;
    facts.verdict = fit.verdict;
    facts.margin = fit.margin;
    facts.lowest = lowest;
    if (fit.setting)
        facts.room = fit.setting->below_highest;
    return facts;
}

OrderFacts fitting() {
    OrderFacts facts;
    facts.verdict = Verdict::fits_now;
    facts.room = 50_mm;
    return facts;
}

} // namespace

TEST_CASE(
    "bikes that fit come before close calls, these before what is too tall, and outgrown ones come last",
    "[order]") {
    std::vector<OrderFacts> bikes(5);
    bikes[0].verdict = Verdict::outgrown;
    bikes[1].verdict = Verdict::not_measured;
    bikes[2].verdict = Verdict::too_tall;
    bikes[3].verdict = Verdict::close_call;
    bikes[4].verdict = Verdict::fits_now;
    const Order order = GENERATE(Order::lasts, Order::cost, Order::light, Order::closest);
    CHECK(order_of(bikes, order, 500_mm) == Places{4, 3, 2, 1, 0});
}

TEST_CASE("a bike of the wrong kind for the stage comes after all that suit it", "[order]") {
    std::vector<OrderFacts> bikes(2);
    bikes[0].verdict = Verdict::fits_now;
    bikes[0].suits_stage = false;
    bikes[1].verdict = Verdict::outgrown;
    CHECK(order_of(bikes, Order::lasts, 500_mm) == Places{1, 0});
}

TEST_CASE("what a check stops comes after what none stops, and what cannot be had after what can",
          "[order]") {
    std::vector<OrderFacts> bikes(4, fitting());
    bikes[0].stopped = true;
    bikes[0].use = Days::months(40);
    bikes[1].available = false;
    bikes[1].use = Days::months(30);
    bikes[2].use = Days::months(10);
    bikes[3].verdict = Verdict::close_call;
    const Order order = GENERATE(Order::lasts, Order::cost, Order::light, Order::closest);
    CHECK(order_of(bikes, order, 500_mm) == Places{2, 1, 0, 3});
    CHECK_FALSE(may_be_first_choice(bikes[0]));
    CHECK(may_be_first_choice(bikes[3]));
}

TEST_CASE("the longest use comes first, and an unknown room after every known one", "[order]") {
    std::vector<OrderFacts> bikes(3, fitting());
    bikes[0].use = Days::months(30);
    bikes[0].room.reset();
    bikes[1].use = Days::months(10);
    bikes[2].use = Days::months(20);
    CHECK(order_of(bikes, Order::lasts, 500_mm) == Places{2, 1, 0});
}

TEST_CASE("a bike still too tall counts by how soon it fits, an outgrown one by how little it misses",
          "[order]") {
    std::vector<OrderFacts> bikes(4);
    bikes[0].verdict = bikes[1].verdict = Verdict::too_tall;
    bikes[0].fits_from = date("2027-09-01");
    bikes[1].fits_from = date("2027-03-01");
    bikes[2].verdict = bikes[3].verdict = Verdict::outgrown;
    bikes[2].margin = -60_mm;
    bikes[3].margin = -20_mm;
    CHECK(order_of(bikes, Order::lasts, 500_mm) == Places{1, 0, 3, 2});
}

TEST_CASE("cheapest a month and lightest come first where asked, unknown figures last", "[order]") {
    std::vector<OrderFacts> bikes(3, fitting());
    bikes[1].cost_per_month = Amount::main_units(5.0);
    bikes[2].cost_per_month = Amount::main_units(3.5);
    bikes[0].mass = Mass::kilograms(7.0);
    bikes[1].mass = Mass::kilograms(6.2);
    CHECK(order_of(bikes, Order::cost, 500_mm) == Places{2, 1, 0});
    CHECK(order_of(bikes, Order::light, 500_mm) == Places{1, 0, 2});
}

TEST_CASE("the closest lowest saddle from below comes first, then those above the target", "[order]") {
    const std::vector<OrderFacts> bikes{facts_of(502_mm, 622_mm), facts_of(420_mm, 540_mm),
                                        facts_of(495_mm, 615_mm), facts_of(460_mm, 580_mm)};
    CHECK(order_of(bikes, Order::closest, 500_mm) == Places{2, 3, 1, 0});
}

// Common practice: among bikes that fit, the one whose lowest saddle is nearest the target from below leaves
// most room.
TEST_CASE("with spans of equal length the trade's rule and the engine's room give one order", "[order]") {
    std::vector<OrderFacts> bikes;
    for (const double lowest : {400.0, 499.0, 440.0, 480.0, 420.0, 500.0, 460.0}) {
        const Length low = Length::millimetres(lowest);
        bikes.push_back(facts_of(low, low + 130_mm));
        REQUIRE(bikes.back().verdict == Verdict::fits_now);
    }
    CHECK(order_of(bikes, Order::closest, 500_mm) == order_of(bikes, Order::lasts, 500_mm));
}

TEST_CASE("equal bikes keep the order of the list", "[order]") {
    CHECK(order_of(std::vector<OrderFacts>(4, fitting()), Order::lasts, 500_mm) == Places{0, 1, 2, 3});
}
