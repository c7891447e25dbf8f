// A morning planned: what is best comes first, what was fixed stays, and everybody who is left hears why.
#include "core/planning/club/club_day.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace saddlerule;
using saddlerule::testing::RepeatableRandom;

namespace {

const CalendarDate today = *CalendarDate::from_ymd(2026, 11, 28);

std::optional<Rider> child(double inseam_mm, Stage stage = Stage::starting) {
    Rider rider;
    rider.stage = stage;
    rider.readings.push_back({today, Length::millimetres(inseam_mm), true});
    rider.mass = Mass::kilograms(20.0);
    return rider;
}

Bike bike(const char* id, double lowest_mm, double highest_mm) {
    Bike made;
    made.id = id;
    made.saddle_lowest = Length::millimetres(lowest_mm);
    made.saddle_highest = Length::millimetres(highest_mm);
    return made;
}

struct Morning {
    std::vector<std::optional<Rider>> riders;
    std::vector<Bike> bikes;
    std::vector<ClubPair> locked{};
    std::vector<ClubPair> never{};
    std::vector<ClubPair> before{};
    std::vector<std::size_t> absent{};
    int rounds = 1;

    ClubDay plan() const {
        ClubQuestion question{.today = today,
                              .riders = riders,
                              .bikes = bikes,
                              .absent = std::vector<bool>(bikes.size()),
                              .locked = locked,
                              .never = never,
                              .before = before,
                              .rounds = rounds,
                              .off_road = false};
        for (const std::size_t one : absent)
            question.absent[one] = true;
        return plan_club_day(question);
    }
};

std::vector<std::pair<std::size_t, std::size_t>> pairs(const ClubDay& day) {
    std::vector<std::pair<std::size_t, std::size_t>> all;
    for (const SeatedRider& seated : day.seated)
        all.emplace_back(seated.rider, seated.bike);
    return all;
}

using Pairs = std::vector<std::pair<std::size_t, std::size_t>>;

} // namespace

TEST_CASE("more riders seated goes before a better chance", "[club]") {
    // The first fits both bikes and the low one better; the second fits the low one only.
    const Morning morning{.riders = {child(500), child(470)},
                          .bikes = {bike("low", 460, 560), bike("tall", 505, 640)}};
    CHECK(pairs(morning.plan()) == Pairs{{0, 1}, {1, 0}});
}

TEST_CASE("equal chances: saddles nearer to their targets", "[club]") {
    // Both ride with ease. For the tall one, target 776, each is sure to fit; the one bike has to stay below it.
    const Morning morning{.riders = {child(700, Stage::riding)},
                          .bikes = {bike("short", 500, 775), bike("long", 500, 900)}};
    const ClubDay day = morning.plan();
    REQUIRE(day.seated.size() == 1);
    CHECK(day.seated[0].bike == 1);
    CHECK(day.seated[0].fit.setting->above_floor.in_millimetres() == Approx(776.0));
}

TEST_CASE("all else equal: the heavier bike to the heavier rider, and else the pair of last time", "[club]") {
    Morning morning{.riders = {child(600), child(600)}, .bikes = {bike("a", 500, 700), bike("b", 500, 700)}};
    morning.riders[0]->mass = Mass::kilograms(30.0);
    morning.riders[1]->mass = Mass::kilograms(35.0);
    morning.bikes[0].mass = Mass::kilograms(9.5);
    morning.bikes[1].mass = Mass::kilograms(6.0);
    CHECK(pairs(morning.plan()) == Pairs{{0, 1}, {1, 0}});
    morning.before = {{0, 0, {}}, {1, 1, {}}};
    CHECK(pairs(morning.plan()) == Pairs{{0, 1}, {1, 0}}); // weights go before habit
    morning.riders[1]->mass = morning.riders[0]->mass;
    CHECK(pairs(morning.plan()) == Pairs{{0, 0}, {1, 1}});
    morning.before = {{0, 1, {}}, {1, 0, {}}};
    CHECK(pairs(morning.plan()) == Pairs{{0, 1}, {1, 0}});
}

TEST_CASE("a check that says stop keeps a rider off a bike", "[club]") {
    Morning morning{.riders = {child(500)}, .bikes = {bike("no brakes", 450, 600)}};
    morning.bikes[0].brakes = std::vector<Brake>{};
    const ClubDay day = morning.plan();
    REQUIRE(day.left.size() == 1);
    CHECK(day.left[0].because == LeftBecause::check_stops);
    CHECK(day.left[0].bikes == std::vector<std::size_t>{0});
}

TEST_CASE("what was fixed stays, even where it does not fit, and takes its bike", "[club]") {
    Morning morning{.riders = {child(500), child(500)},
                    .bikes = {bike("right", 450, 600), bike("tall", 700, 900)}};
    morning.locked = {{0, 1, {}}};
    CHECK(pairs(morning.plan()) == Pairs{{0, 1}, {1, 0}});
    CHECK(morning.plan().seated[0].fit.verdict == Verdict::too_tall);
    CHECK(morning.plan().seated[0].locked);
    morning.locked = {{1, 0, {}}};
    const ClubDay day = morning.plan();
    CHECK(pairs(day) == Pairs{{1, 0}});
    REQUIRE(day.left.size() == 1);
    CHECK(day.left[0].because == LeftBecause::all_taken);
    CHECK(day.left[0].bikes == std::vector<std::size_t>{0});
}

TEST_CASE("who is left hears why", "[club]") {
    Morning morning{.riders = {child(500), std::nullopt, child(400)}, .bikes = {bike("right", 450, 600)}};
    ClubDay day = morning.plan();
    CHECK(pairs(day) == Pairs{{0, 0}});
    REQUIRE(day.left.size() == 2);
    CHECK(day.left[0].rider == 2);
    CHECK(day.left[0].because == LeftBecause::none_fits);
    REQUIRE(day.left[0].nearest);
    CHECK(day.left[0].nearest->bike == 0);
    CHECK(day.left[0].nearest->verdict == Verdict::too_tall);
    CHECK(day.left[0].nearest->by.in_millimetres() == Approx(40.0)); // 450 above 400 + 10
    CHECK(day.left[1].because == LeftBecause::not_measured);

    morning.never = {{0, 0, {}}};
    CHECK(morning.plan().left.size() == 3);
    CHECK(morning.plan().left[1].because == LeftBecause::ruled_out);
    morning.never.clear();
    morning.absent = {0};
    day = morning.plan();
    CHECK(std::any_of(day.left.begin(), day.left.end(), [](const RiderLeft& left) {
        return left.rider == 0 && left.because == LeftBecause::away;
    }));
    CHECK(day.spare.empty());

    morning.absent.clear();
    morning.bikes[0].saddle_highest.reset();
    morning.bikes[0].saddle_lowest = Length::millimetres(300.0);
    day = morning.plan();
    REQUIRE(day.left.size() == 3);
    CHECK(day.left[0].to_measure == std::vector<std::size_t>{0});
}

TEST_CASE("the waiting list has the youngest first", "[club]") {
    Morning morning{.riders = {child(520), child(420), child(580)}, .bikes = {}};
    morning.riders[0]->born = *CalendarDate::from_ymd(2022, 1, 1);
    const ClubDay day = morning.plan();
    REQUIRE(day.left.size() == 3);
    CHECK(day.left[0].rider == 1); // by its legs about three; the first says nearly five
    CHECK(day.left[1].rider == 0);
    CHECK(day.left[2].rider == 2);
}

TEST_CASE("bikes that nobody rides say whom they would fit", "[club]") {
    const Morning morning{.riders = {child(500), child(690)},
                          .bikes = {bike("a", 450, 600), bike("b", 450, 600), bike("tall", 900, 990)}};
    const ClubDay day = morning.plan();
    REQUIRE(day.spare.size() == 2);
    CHECK(day.spare[0].would_fit == std::vector<std::size_t>{0});
    CHECK(day.spare[1].bike == 2);
    CHECK(day.spare[1].would_fit.empty());
}

TEST_CASE("in rounds one bike serves one rider after another", "[club]") {
    Morning morning{
        .riders = {child(500), child(505), child(510)}, .bikes = {bike("only", 450, 600)}, .rounds = 2};
    ClubDay day = morning.plan();
    REQUIRE(day.seated.size() == 2);
    CHECK(day.seated[0].round != day.seated[1].round);
    CHECK(day.left.size() == 1);
    // Rounds that were fixed and those of last time stay.
    morning.rounds = 3;
    morning.locked = {{0, 0, 2}};
    morning.before = {{2, 0, 0}};
    day = morning.plan();
    REQUIRE(day.seated.size() == 3);
    CHECK(day.seated[0].round == 2);
    CHECK(day.seated[1].round == 1);
    CHECK(day.seated[2].round == 0);
}

TEST_CASE("a latecomer moves nobody where that costs nothing; order of input decides ties only", "[club]") {
    RepeatableRandom random(11);
    for (int round = 0; round < 60; ++round) {
        Morning morning;
        for (int i = 0; i < 12; ++i)
            morning.riders.push_back(child(420.0 + 5.0 * static_cast<int>(random.uniform() * 50.0)));
        std::vector<std::string> names;
        for (int i = 0; i < 15; ++i) {
            const double lowest = 400.0 + 10.0 * static_cast<int>(random.uniform() * 25.0);
            morning.bikes.push_back(bike("", lowest, lowest + 120.0));
        }
        const ClubDay first = morning.plan();
        for (const SeatedRider& seated : first.seated)
            morning.before.push_back({seated.rider, seated.bike, {}});
        CHECK(pairs(morning.plan()) == pairs(first));

        const auto sum = [](const ClubDay& day) {
            long long millionths = 0;
            for (const SeatedRider& seated : day.seated)
                millionths += std::llround(*seated.fit.probability * 1e6);
            return millionths;
        };
        Morning turned = morning;
        turned.before.clear();
        std::reverse(turned.riders.begin(), turned.riders.end());
        std::reverse(turned.bikes.begin(), turned.bikes.end());
        const ClubDay other = turned.plan();
        CHECK(other.seated.size() == first.seated.size());
        CHECK(sum(other) == sum(first));
    }
}
