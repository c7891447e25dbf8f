// The unbeaten bikes, against a comparison of every bike with every other.
#include "core/fit/choice/unbeaten_bikes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <random>

using namespace saddlerule;

namespace {

ChoiceFigures bike(std::optional<double> months, std::optional<double> price, std::optional<double> kg,
                   std::string_view currency = "EUR") {
    ChoiceFigures figures;
    if (months)
        figures.lasts = Days::months(*months);
    if (price)
        figures.price = Money::amount(*price, *Currency::from_code(currency));
    if (kg)
        figures.mass = Mass::kilograms(*kg);
    return figures;
}

/// -1: a is better; 0: equal; 1: b is better; nothing: cannot be compared. Known is better than unknown.
template <typename Figure>
int better(const std::optional<Figure>& a, const std::optional<Figure>& b, bool more_is_better) {
    if (!a || !b)
        return static_cast<int>(b.has_value()) - static_cast<int>(a.has_value());
    if (*a == *b)
        return 0;
    return (*a > *b) == more_is_better ? -1 : 1;
}

/// By the definition, one pair at a time.
bool beats(const ChoiceFigures& a, const ChoiceFigures& b) {
    if (a.price && b.price && !(a.price->currency() == b.price->currency()))
        return false;
    const auto amount = [](const ChoiceFigures& figures) {
        return figures.price ? std::optional(figures.price->in_main_units()) : std::nullopt;
    };
    if (a.against.stopped)
        return false;
    const std::array faults{std::pair(a.against.close_call, b.against.close_call),
                            std::pair(a.against.unavailable, b.against.unavailable),
                            std::pair(a.against.pauses, b.against.pauses),
                            std::pair(a.against.stopped, b.against.stopped)};
    bool sounder = false;
    for (const auto& [of_a, of_b] : faults) {
        if (of_a && !of_b)
            return false;
        sounder = sounder || (of_b && !of_a);
    }
    const int lasts = better(a.lasts, b.lasts, true);
    const int price = better(amount(a), amount(b), false);
    const int mass = better(a.mass, b.mass, false);
    return lasts <= 0 && price <= 0 && mass <= 0 && (sounder || lasts + price + mass < 0);
}

void check_against_every_pair(const std::vector<ChoiceFigures>& bikes) {
    const auto standings = choice_standings(bikes);
    REQUIRE(standings.size() == bikes.size());
    for (std::size_t i = 0; i < bikes.size(); ++i) {
        const bool beaten = std::any_of(bikes.begin(), bikes.end(),
                                        [&](const ChoiceFigures& other) { return beats(other, bikes[i]); });
        CAPTURE(i, bikes.size());
        CHECK((standings[i].standing != Standing::unbeaten) == beaten);
        CHECK(standings[i].worth.empty() == beaten);
        CHECK(standings[i].beaten_by.has_value() == beaten);
        if (standings[i].beaten_by) {
            CHECK(beats(bikes[*standings[i].beaten_by], bikes[i]));
            CHECK(standings[*standings[i].beaten_by].standing == Standing::unbeaten);
        }
    }
}

std::vector<ChoiceFigures> generated(std::mt19937& random, int count, unsigned values, unsigned unknown_in,
                                     bool two_currencies, bool with_faults = false) {
    std::vector<ChoiceFigures> bikes;
    const auto figure = [&]() -> std::optional<double> {
        if (unknown_in > 0 && random() % unknown_in == 0)
            return std::nullopt;
        return 1.0 + static_cast<double>(random() % values);
    };
    for (int i = 0; i < count; ++i) {
        const auto months = figure();
        const auto price = figure();
        const auto kg = figure();
        bikes.push_back(bike(months, price, kg, two_currencies && random() % 2 == 0 ? "SEK" : "EUR"));
        if (with_faults)
            bikes.back().against = {.stopped = random() % 4 == 0,
                                    .close_call = random() % 4 == 0,
                                    .unavailable = random() % 4 == 0,
                                    .pauses = random() % 4 == 0};
    }
    return bikes;
}

} // namespace

TEST_CASE("the unbeaten bikes are those that no pair comparison beats", "[choice]") {
    std::mt19937 random(20261125);
    for (int round = 0; round < 60; ++round) {
        const int count = 1 + static_cast<int>(random() % 60);
        check_against_every_pair(generated(random, count, 5, 0, false));    // many ties
        check_against_every_pair(generated(random, count, 1000, 0, false)); // few
        check_against_every_pair(generated(random, count, 6, 4, false));    // figures missing
        check_against_every_pair(generated(random, count, 6, 5, true));     // two currencies
        check_against_every_pair(generated(random, count, 5, 0, false, true));
        check_against_every_pair(generated(random, count, 6, 5, true, true));
    }
}

TEST_CASE("what is stopped beats nobody, and a sound bike is not beaten by one that is not", "[choice]") {
    std::vector<ChoiceFigures> bikes{bike(10.0, 100.0, 7.0), bike(12.0, 90.0, 6.0)};
    for (bool AgainstABike::*fault : {&AgainstABike::stopped, &AgainstABike::close_call,
                                      &AgainstABike::unavailable, &AgainstABike::pauses}) {
        bikes[1].against = {};
        bikes[1].against.*fault = true;
        const auto standings = choice_standings(bikes);
        CHECK(standings[0].standing == Standing::unbeaten);
        CHECK(standings[1].standing == Standing::unbeaten);
    }
    bikes[1].against = {.stopped = true, .close_call = false, .unavailable = false, .pauses = false};
    bikes[0].against = bikes[1].against;
    CHECK(choice_standings(bikes)[0].standing == Standing::unbeaten);
    bikes[0].against = {};
    bikes[0].lasts = Days::months(13);
    bikes[0].price = bikes[1].price;
    bikes[0].mass = bikes[1].mass;
    CHECK(choice_standings(bikes)[1].beaten_by == 0);
}

TEST_CASE("each unbeaten bike is worth a look for a reason", "[choice]") {
    const std::vector bikes{bike(30, 200, 7), bike(20, 90, 9), bike(24, 150, 6), bike(25, 140, 8),
                            bike(20, 150, 9)};
    const auto standings = choice_standings(bikes);
    CHECK(standings[0].worth == std::vector{Worth::lasts_longest});
    CHECK(standings[1].worth == std::vector{Worth::cheapest});
    CHECK(standings[2].worth == std::vector{Worth::lightest});
    CHECK(standings[3].worth == std::vector{Worth::balance});
    CHECK(standings[4].standing == Standing::beaten);
}

TEST_CASE("equal bikes do not beat each other", "[choice]") {
    const auto standings =
        choice_standings(std::vector{bike(20, 100, 7), bike(20, 100, 7), bike(19, 100, 7)});
    CHECK(standings[0].standing == Standing::unbeaten);
    CHECK(standings[1].standing == Standing::unbeaten);
    CHECK(standings[2].standing == Standing::beaten);
}

TEST_CASE("a figure that is not known never wins, and a bike that lacks one is beaten only so far",
          "[choice]") {
    const auto standings =
        choice_standings(std::vector{bike(20, 100, 7), bike(20, 100, {}), bike({}, 90, 6), bike(20, {}, 5)});
    CHECK(standings[0].standing == Standing::unbeaten);
    CHECK(standings[1].standing == Standing::beaten_as_far_as_known);
    CHECK(standings[1].beaten_by == 0);
    CHECK(standings[2].worth == std::vector{Worth::cheapest});
    CHECK(standings[3].worth == std::vector{Worth::lasts_longest, Worth::lightest});
}

TEST_CASE("a list without weights is judged on what it has", "[choice]") {
    const auto standings =
        choice_standings(std::vector{bike(20, 100, {}), bike(18, 120, {}), bike(10, 60, {})});
    CHECK(standings[0].standing == Standing::unbeaten);
    CHECK(standings[1].standing == Standing::beaten_as_far_as_known);
    CHECK(standings[2].worth == std::vector{Worth::cheapest});
}

TEST_CASE("prices in two currencies do not beat each other", "[choice]") {
    const auto standings = choice_standings(
        std::vector{bike(20, 100, 7, "EUR"), bike(19, 900, 8, "SEK"), bike(18, 800, 9, "SEK")});
    CHECK(standings[0].standing == Standing::unbeaten);
    CHECK(standings[1].standing == Standing::unbeaten);
    CHECK(standings[2].worth == std::vector{Worth::cheapest});
}

TEST_CASE("bikes of which nothing is known are beside each other, and no bikes at all are none", "[choice]") {
    const auto standings = choice_standings(std::vector<ChoiceFigures>(2));
    CHECK(standings[0].worth == std::vector{Worth::nothing_to_compare});
    CHECK(standings[1].worth == std::vector{Worth::nothing_to_compare});
    CHECK(choice_standings({}).empty());
}
