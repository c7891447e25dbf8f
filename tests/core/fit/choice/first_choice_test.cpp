// The first choice that is found without judging the whole list is the one that judging the whole list finds.
#include "core/fit/choice/first_choice.h"

#include "core/fit/choice/assessment.h"
#include "core/fit/choice/bike_order.h"
#include "tests/core/fit/lasting/invented_riders.h"
#include "tests/domain_checkers.h"
#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

/// By judging every bike and putting all of them in order.
const Bike* first_of_all(const FitQuestion& question, std::span<const Bike> list,
                         std::span<const Bike> taped) {
    for (const JudgedBike& judged : assess(question, list, taped).bikes) {
        if (may_be_first_choice(order_facts(judged)))
            return judged.bike;
    }
    return nullptr;
}

/// Few different figures, so that many bikes are as good as another; and every figure is missing on some.
Bike invented_bike(RepeatableRandom& random) {
    Bike bike;
    const auto measured = [&] { return random.uniform() < 0.9; };
    const double lowest = 350.0 + 10.0 * static_cast<int>(random.uniform(0.0, 30.0));
    bike.kind = random.uniform() < 0.2 ? BikeKind::balance : BikeKind::pedal;
    const bool has_lowest = measured();
    if (has_lowest)
        bike.saddle_lowest = Length::millimetres(lowest);
    if (!has_lowest || measured())
        bike.saddle_highest =
            Length::millimetres(lowest + 20.0 * static_cast<int>(random.uniform(0.0, 10.0)));
    if (measured())
        bike.standover = Length::millimetres(lowest - 100.0 + random.uniform(0.0, 120.0));
    if (measured())
        bike.mass = Mass::kilograms(5.0 + static_cast<int>(random.uniform(0.0, 9.0)));
    if (measured())
        bike.price =
            Money::amount(20.0 * static_cast<int>(random.uniform(0.0, 8.0)), *Currency::from_code("EUR"));
    if (measured())
        bike.crank = Length::millimetres(90.0 + 10.0 * static_cast<int>(random.uniform(0.0, 8.0)));
    bike.available = random.uniform() < 0.8;
    return bike;
}

std::vector<Bike> invented_bikes(RepeatableRandom& random, std::size_t count) {
    std::vector<Bike> bikes(count);
    std::generate(bikes.begin(), bikes.end(), [&] { return invented_bike(random); });
    return bikes;
}

} // namespace

TEST_CASE("the first choice is that of the whole assessment, for every rider, order and wish", "[choice]") {
    const CalendarDate today = *CalendarDate::from_ymd(2026, 11, 25);
    RepeatableRandom random(20261125);
    std::size_t found = 0;
    std::size_t stopped = 0;
    for (const Rider& rider : invented_riders(today)) {
        for (const Order order : {Order::lasts, Order::cost, Order::light, Order::closest}) {
            FitQuestion question{.rider = rider, .today = today, .wants = {}};
            question.wants.order = order;
            question.wants.available_only = random.uniform() < 0.2;
            if (random.even_chance())
                question.wants.max_price =
                    Amount::main_units(20.0 * static_cast<int>(random.uniform(0.0, 8.0)));
            const std::vector<Bike> list =
                invented_bikes(random, static_cast<std::size_t>(random.uniform(0.0, 60.0)));
            const std::vector<Bike> taped =
                invented_bikes(random, static_cast<std::size_t>(random.uniform(0.0, 3.0)));

            const FirstChoice choice(list, taped);
            const auto first = choice.of(question);
            const Bike* expected = first_of_all(question, list, taped);
            REQUIRE((first ? choice.bikes()[*first] : nullptr) == expected);

            found += expected != nullptr ? 1U : 0U;
            const auto judged = assess(question, list, taped).bikes;
            stopped += !judged.empty() && judged.front().checks.stops > 0 ? 1U : 0U;
        }
    }
    // Or the lists would show nothing.
    CHECK(found > 400);
    CHECK(stopped > 5);
}
