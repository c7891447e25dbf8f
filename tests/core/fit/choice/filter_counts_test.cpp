// The counts beside the filters are those that filtering anew for every value would give.
#include "core/fit/choice/filter_counts.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

const Currency euro = *Currency::from_code("EUR");

/// One of these, or nothing.
template <typename Value, std::size_t Size>
std::optional<Value> one_of(RepeatableRandom& random, const std::array<Value, Size>& values) {
    const auto place = static_cast<std::size_t>(random.uniform(0.0, static_cast<double>(Size) + 0.6));
    return place < Size ? std::optional(values[place]) : std::nullopt;
}

const std::array<std::string, 5> colour_names{"red", "Red", "blue", "GREEN", "green"};

Bike invented_bike(RepeatableRandom& random) {
    Bike bike;
    bike.kind = random.uniform() < 0.3 ? BikeKind::balance : BikeKind::pedal;
    if (random.uniform() < 0.8)
        bike.price = Money::amount(5.0 * static_cast<int>(random.uniform(4.0, 60.0)), euro);
    if (random.uniform() < 0.8)
        bike.mass = Mass::kilograms(random.uniform(3.0, 14.0));
    bike.brakes = one_of(random, std::array{std::vector<Brake>{}, std::vector{Brake::coaster},
                                            std::vector{Brake::front_hand, Brake::rear_hand},
                                            std::vector{Brake::front_hand, Brake::coaster}});
    bike.gears = one_of(random, std::array{0, 1, 3, 21});
    bike.available = one_of(random, std::array{true, true, false});
    if (const auto size = one_of(random, std::array<std::string, 4>{"12", "47-305", "20", "60-400"}))
        bike.wheel = Wheel::from_text(*size);
    for (int colours = static_cast<int>(random.uniform(0.0, 3.0)); colours > 0; --colours)
        bike.colours.push_back(one_of(random, colour_names).value_or("silver"));
    return bike;
}

/// Most wishes are open, so that some bikes are left.
Wants invented_wants(RepeatableRandom& random) {
    const auto wished = [&] { return random.uniform() < 0.25; };
    Wants wants;
    if (wished())
        wants.max_price = Amount::main_units(random.uniform(50.0, 300.0));
    if (wished())
        wants.max_mass = Mass::kilograms(random.uniform(5.0, 13.0));
    if (wished())
        wants.brakes = random.even_chance() ? BrakeWish::two_hand : BrakeWish::coaster;
    if (wished())
        wants.kind = random.even_chance() ? KindWish::pedal : KindWish::balance;
    if (wished())
        wants.gears = random.even_chance() ? GearsWish::single : GearsWish::several;
    wants.available_only = wished();
    if (wished())
        wants.wheel_nominal_inches = random.even_chance() ? 16.0 : 24.0; // no bike has 24
    if (wished())
        wants.colour = random.even_chance() ? "rED" : "pink"; // no bike is pink
    return wants;
}

/// By filtering all of them anew.
int left_of(const std::vector<Bike>& bikes, const Wants& wants) {
    return static_cast<int>(std::count_if(
        bikes.begin(), bikes.end(), [&](const Bike& bike) { return reasons_against(bike, wants).empty(); }));
}

/// The same with one wish changed.
template <typename Change>
int left_with(const std::vector<Bike>& bikes, Wants wants, Change change) {
    change(wants);
    return left_of(bikes, wants);
}

FilterCounts counted(const std::vector<Bike>& bikes, const Wants& wants, std::size_t taped = 0) {
    const std::span<const Bike> all(bikes);
    FilterCounts counts;
    FilterCounter counter(all.first(bikes.size() - taped), all.last(taped), wants, counts);
    for (const Bike& bike : bikes)
        counter.count(bike, reasons_against(bike, wants));
    counter.finish();
    return counts;
}

int without(const FilterCounts& counts, Filter filter) {
    return counts.without[static_cast<std::size_t>(filter)];
}

int value(const FilterCounts& counts, Filter filter, bool second) {
    return counts.values[static_cast<std::size_t>(filter)][second ? 1 : 0];
}

Bike coloured(std::string colour) {
    Bike bike;
    bike.colours = {std::move(colour)};
    return bike;
}

} // namespace

TEST_CASE("every count is what filtering anew for its value leaves", "[filters]") {
    RepeatableRandom random(20261130);
    int left_by_none = 0;
    int of_some = 0;
    for (int round = 0; round < 300; ++round) {
        std::vector<Bike> bikes;
        for (int i = static_cast<int>(random.uniform(0.0, 90.0)); i > 0; --i)
            bikes.push_back(invented_bike(random));
        const Wants wants = invented_wants(random);
        const FilterCounts counts = counted(bikes, wants, bikes.size() / 7);
        const auto left = [&](auto change) {
            const int result = left_with(bikes, wants, change);
            ++(result == 0 ? left_by_none : of_some);
            return result;
        };

        CHECK(without(counts, Filter::price) == left([](Wants& w) { w.max_price.reset(); }));
        CHECK(without(counts, Filter::mass) == left([](Wants& w) { w.max_mass.reset(); }));
        CHECK(without(counts, Filter::brakes) == left([](Wants& w) { w.brakes = BrakeWish::any; }));
        CHECK(without(counts, Filter::kind) == left([](Wants& w) { w.kind = KindWish::any; }));
        CHECK(without(counts, Filter::gears) == left([](Wants& w) { w.gears = GearsWish::any; }));
        CHECK(without(counts, Filter::available) == left([](Wants& w) { w.available_only = false; }));
        CHECK(without(counts, Filter::wheel) == left([](Wants& w) { w.wheel_nominal_inches.reset(); }));
        CHECK(without(counts, Filter::colour) == left([](Wants& w) { w.colour.reset(); }));

        for (const BrakeWish wish : {BrakeWish::two_hand, BrakeWish::coaster})
            CHECK(value(counts, Filter::brakes, wish == BrakeWish::coaster) ==
                  left([&](Wants& w) { w.brakes = wish; }));
        for (const KindWish wish : {KindWish::pedal, KindWish::balance})
            CHECK(value(counts, Filter::kind, wish == KindWish::balance) ==
                  left([&](Wants& w) { w.kind = wish; }));
        for (const GearsWish wish : {GearsWish::single, GearsWish::several})
            CHECK(value(counts, Filter::gears, wish == GearsWish::several) ==
                  left([&](Wants& w) { w.gears = wish; }));
        CHECK(value(counts, Filter::available, false) == left([](Wants& w) { w.available_only = true; }));
        for (const auto& limit : counts.prices)
            CHECK(limit.bikes == left([&](Wants& w) { w.max_price = Amount::main_units(limit.figure); }));
        for (const auto& limit : counts.kilograms)
            CHECK(limit.bikes == left([&](Wants& w) { w.max_mass = Mass::kilograms(limit.figure); }));
        for (const auto& limit : counts.pounds)
            CHECK(limit.bikes == left([&](Wants& w) { w.max_mass = Mass::pounds(limit.figure); }));
        for (const FigureCount& wheel : counts.wheels)
            CHECK(wheel.bikes == left([&](Wants& w) { w.wheel_nominal_inches = wheel.figure; }));
        for (const ColourCount& colour : counts.colours)
            CHECK(colour.bikes == left([&](Wants& w) { w.colour = colour.colour; }));
    }
    CHECK(left_by_none > 1000);
    CHECK(of_some > 4000);
}

TEST_CASE("every wheel size and colour of the list is offered, and the chosen one even where no bike has it",
          "[filters]") {
    RepeatableRandom random(7);
    std::vector<Bike> bikes;
    for (int i = 0; i < 60; ++i)
        bikes.push_back(invented_bike(random));
    Wants wants;
    wants.wheel_nominal_inches = 18.0;
    wants.colour = "Pink";
    const FilterCounts counts = counted(bikes, wants);
    std::vector<double> sizes;
    for (const FigureCount& wheel : counts.wheels)
        sizes.push_back(wheel.figure);
    CHECK(sizes == std::vector{12.0, 16.0, 18.0, 20.0});
    CHECK(counts.colours.size() == 5); // red, blue, green, silver, Pink
    CHECK(counts.colours.back().colour == "Pink");
    CHECK(counts.colours.back().bikes == 0);
    CHECK(counts.more_colours == 0);
}

TEST_CASE("a colour is one colour in whatever case, and spelled as it is wanted", "[filters]") {
    std::vector<Bike> bikes{coloured("Red"), coloured("red"), coloured("blue")};
    bikes.front().colours.push_back("RED"); // of the same bike
    FilterCounts counts = counted(bikes, {});
    REQUIRE(counts.colours.size() == 2);
    CHECK(counts.colours[0].colour == "Red");
    CHECK(counts.colours[0].bikes == 2);
    Wants wants;
    wants.colour = "rED";
    counts = counted(bikes, wants);
    CHECK(counts.colours[0].colour == "rED");
    CHECK(counts.colours[0].bikes == 2);
    CHECK(counts.colours[1].bikes == 1);
}

TEST_CASE("of many colours the most frequent are offered and the others counted; the chosen one stays",
          "[filters]") {
    std::vector<Bike> bikes;
    for (int i = 0; i < 75; ++i)
        bikes.push_back(coloured("shade " + std::to_string(100 + i)));
    bikes.push_back(coloured("shade 174"));
    FilterCounts counts = counted(bikes, {});
    CHECK(counts.colours.size() == 60);
    CHECK(counts.more_colours == 15);
    CHECK(counts.colours[0].colour == "shade 174");
    Wants wants;
    wants.colour = "shade 173";
    counts = counted(bikes, wants);
    CHECK(counts.colours.size() == 60);
    CHECK(counts.more_colours == 15);
    CHECK(counts.colours.back().colour == "shade 173");
    CHECK(counts.colours.back().bikes == 1);
}

TEST_CASE("limits are a few round figures among most of the list's, and one dear bike does not move them",
          "[filters]") {
    std::vector<Bike> bikes(40);
    for (std::size_t i = 0; i < bikes.size(); ++i) {
        bikes[i].price = Money::amount(30.0 + 5.0 * static_cast<double>(i), euro);
        bikes[i].mass = Mass::kilograms(5.0 + 0.2 * static_cast<double>(i));
    }
    const auto figures = [](const auto& limits) {
        std::vector<double> result;
        for (const auto& limit : limits)
            result.push_back(limit.figure);
        return result;
    };
    // Most cost 50 to 205 and weigh 5.8 to 12 kg.
    CHECK(figures(counted(bikes, {}).prices) == std::vector{50.0, 100.0, 150.0, 200.0});
    CHECK(figures(counted(bikes, {}).kilograms) == std::vector{6.0, 8.0, 10.0, 12.0});
    CHECK(figures(counted(bikes, {}).pounds) == std::vector{15.0, 20.0, 25.0});
    bikes.back().price = Money::amount(1e6, euro);
    CHECK(figures(counted(bikes, {}).prices) == std::vector{50.0, 100.0, 150.0, 200.0});

    for (Bike& bike : bikes)
        bike.price = Money::amount(90.0, euro);
    CHECK(counted(bikes, {}).prices.empty()); // a limit would divide nothing
    CHECK(counted({Bike{}}, {}).prices.empty());
    // Prices without measure end in few limits as well.
    bikes[0].price = Money::amount(0.0, euro);
    for (std::size_t i = 1; i < bikes.size(); ++i)
        bikes[i].price = Money::amount(2e11 * static_cast<double>(i % 5), euro);
    CHECK(counted(bikes, {}).prices.size() <= 5);
}
