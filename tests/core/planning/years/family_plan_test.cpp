// A family's plan: which months a bike may be ridden in, what a plan says of money and gaps, and that what it says to look for
// would close them.
#include "core/planning/years/family_plan.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

using namespace saddlerule;
using saddlerule::testing::RepeatableRandom;

namespace {

const CalendarDate today = *CalendarDate::from_ymd(2026, 11, 28);

Bike bike_of(const std::string& id, double lowest, double highest, BikeKind kind = BikeKind::pedal) {
    Bike bike;
    bike.id = id;
    bike.kind = kind;
    bike.saddle_lowest = Length::millimetres(lowest);
    bike.saddle_highest = Length::millimetres(highest);
    return bike;
}

Rider rider_of(double inseam, int months_old, Stage stage = Stage::riding) {
    Rider rider;
    rider.stage = stage;
    rider.born = today.plus_months(-months_old);
    rider.readings.push_back({today, Length::millimetres(inseam), true});
    return rider;
}

std::vector<FamilyBike> shelf(const std::vector<Bike>& bikes, double price) {
    std::vector<FamilyBike> shelf;
    for (const Bike& bike : bikes) {
        FamilyBike one;
        one.bike = &bike;
        one.price = Amount::main_units(price);
        shelf.push_back(one);
    }
    return shelf;
}

FamilyQuestion question_of(std::vector<Rider> riders, std::vector<FamilyBike> bikes, int months) {
    FamilyQuestion question{.today = today, .riders = {}, .bikes = {}, .most_per_year = {}, .most_bikes = {}};
    question.months = months;
    question.riders = std::move(riders);
    question.bikes = std::move(bikes);
    return question;
}

bool stops(const FutureRider& rider, const Bike& bike, int month) {
    const auto checks = rider.checks(bike, month);
    return std::any_of(checks.begin(), checks.end(),
                       [](const CheckResult& result) { return result.finding.state == CheckState::stop; });
}

} // namespace

TEST_CASE("The chances of a plan's months are those of the curve that bikes are judged by", "[years]") {
    RepeatableRandom random(1);
    for (const Stage stage : {Stage::gliding, Stage::side_wheels, Stage::starting, Stage::riding}) {
        for (int i = 0; i < 10; ++i) {
            Rider rider = rider_of(random.uniform(380.0, 700.0), 30 + 8 * i, stage);
            if (i % 2 == 0)
                rider.born.reset();
            if (i % 3 == 0)
                rider.riding_from = today.plus_months(3).plus(Days::months(0.4));
            const RiderGrowth growth = RiderGrowth::of(rider, today);
            const FitForecast usual(growth, rider);
            const FitForecast longest(growth, rider, longest_horizon_months);
            const double lowest = random.uniform(380.0, 700.0);
            const SaddleSpan span{Length::millimetres(lowest), Length::millimetres(lowest + 120.0)};
            const auto curve = fit_curve(usual, span);
            REQUIRE(curve);
            std::vector<FitLimits> same(horizon_months + 1);
            std::vector<FitLimits> longer(longest_horizon_months + 1);
            fit_limits(usual, *span.lowest, *span.highest, same);
            fit_limits(longest, *span.lowest, *span.highest, longer);
            for (std::size_t month = 0; month < same.size(); ++month) {
                CAPTURE(i, month, lowest);
                CHECK(same[month].chance() == Approx((*curve)[month]).margin(1e-9));
                // A longer table of scores is a little coarser.
                CHECK(longer[month].chance() == Approx((*curve)[month]).margin(2e-3));
            }
        }
    }
}

TEST_CASE("A bike may be ridden while it is likely enough to fit and no check says stop", "[years]") {
    Rider child = rider_of(480.0, 60);
    child.mass = Mass::kilograms(19.0);
    const FutureRider rider(child, today, 72);
    Bike bike = bike_of("limited", 470.0, 640.0);
    const auto free = rider.runs(bike, 0.8);
    REQUIRE(free.size() == 1);
    bike.rider_mass_limit = Mass::kilograms(21.0);
    const auto limited = rider.runs(bike, 0.8);
    REQUIRE(limited.size() == 1);
    CHECK(limited[0].first == free[0].first);
    CHECK(limited[0].chances.size() < free[0].chances.size());
    const int after = limited[0].first + static_cast<int>(limited[0].chances.size());
    for (int month = limited[0].first; month < after; ++month)
        CHECK_FALSE(stops(rider, bike, month));
    CHECK(stops(rider, bike, after));
    for (const std::uint32_t chance : limited[0].chances)
        CHECK(chance >= 800'000);
}

TEST_CASE("A child that glides has pedals from the day the family names", "[years]") {
    Rider child = rider_of(400.0, 36, Stage::gliding);
    child.pedals_from = today.plus_months(8);
    const FutureRider rider(child, today, 24);
    for (int month = 0; month < 24; ++month)
        CHECK(rider.pedals(month) == (month >= 8));
    const auto glides = rider.runs(bike_of("balance", 330.0, 430.0, BikeKind::balance), 0.5);
    const auto rides = rider.runs(bike_of("pedal", 380.0, 480.0), 0.5);
    REQUIRE(glides.size() == 1);
    REQUIRE(rides.size() == 1);
    CHECK(glides[0].first + static_cast<int>(glides[0].chances.size()) <= 8);
    CHECK(rides[0].first >= 8);
}

TEST_CASE("A bike is handed on, and its money counts once", "[years]") {
    const std::vector<Bike> bikes{bike_of("A", 440.0, 600.0), bike_of("B", 560.0, 720.0)};
    const FamilyPlan plan =
        plan_family(question_of({rider_of(560.0, 84), rider_of(450.0, 50)}, shelf(bikes, 100.0), 72), {});
    CHECK(plan.exact);
    bool handed_on = false;
    std::vector<int> held(bikes.size() * 72, 0);
    for (const PlannedRider& rider : plan.riders) {
        for (const PlannedStretch& stretch : rider.stretches) {
            handed_on |= stretch.how == HowTheyGetIt::handed_on;
            for (int month = stretch.from; month < stretch.to; ++month)
                CHECK(++held[stretch.bike * 72 + static_cast<std::size_t>(month)] == 1);
        }
    }
    CHECK(handed_on);
    CHECK(plan.purchases.size() == 2);
    CHECK(plan.sales.size() == 2);
    CHECK(plan.net_thousandths == 2 * 50'000);
    CHECK(plan.riders[0].share_of_cost.in_main_units() + plan.riders[1].share_of_cost.in_main_units() ==
          Approx(100.0));
}

TEST_CASE("An owned bike costs nothing and brings in what it is sold for", "[years]") {
    const std::vector<Bike> bikes{bike_of("mine", 470.0, 640.0), bike_of("other", 470.0, 640.0)};
    FamilyQuestion question = question_of({rider_of(500.0, 66)}, shelf(bikes, 80.0), 24);
    question.bikes[0].owned = true;
    const FamilyPlan sold = plan_family(question, {});
    CHECK(sold.purchases.empty());
    CHECK(sold.net_thousandths == -40'000);
    question.bikes[0].kept = true;
    const FamilyPlan kept = plan_family(question, {});
    CHECK(kept.sales.empty());
    CHECK(kept.net_thousandths == 0);
    // Out of the plan, it is sold all the same, and the other is bought.
    question.bikes[0].kept = false;
    question.bikes[0].out = true;
    const FamilyPlan out = plan_family(question, {});
    CHECK(out.purchases.size() == 1);
    CHECK(out.net_thousandths == 40'000 - 40'000);
}

TEST_CASE("A bike with the span to look for closes the gap", "[years]") {
    RepeatableRandom random(5);
    for (int i = 0; i < 30; ++i) {
        CAPTURE(i);
        const Rider child = rider_of(random.uniform(420.0, 600.0), 40 + 3 * i);
        const std::vector<Bike> few{bike_of("now", 430.0 + 5.0 * i, 540.0 + 5.0 * i)};
        FamilyQuestion question = question_of({child}, shelf(few, 50.0), 60);
        question.least_chance = random.uniform(0.5, 0.9);
        const FamilyPlan plan = plan_family(question, {});
        std::vector<Bike> got = few;
        for (const PlannedGap& gap : plan.riders[0].gaps) {
            int month = gap.from;
            for (const LookFor& wanted : gap.look_for) {
                CHECK(wanted.by == month);
                month = wanted.until;
                // To whole millimetres, on the safe side.
                got.push_back(bike_of("G" + std::to_string(got.size()),
                                      std::floor(wanted.lowest_at_most.in_millimetres()),
                                      std::ceil(wanted.highest_at_least.in_millimetres())));
            }
            CHECK(month == gap.to);
        }
        question.bikes = shelf(got, 50.0);
        CHECK(plan_family(question, {}).value.gap_months == 0);
    }
}

TEST_CASE("Nothing is bought before the family says so", "[years]") {
    const std::vector<Bike> bikes{bike_of("A", 440.0, 640.0)};
    FamilyQuestion question = question_of({rider_of(500.0, 66)}, shelf(bikes, 80.0), 24);
    question.buy_from = 5;
    const FamilyPlan plan = plan_family(question, {});
    REQUIRE(plan.purchases.size() == 1);
    CHECK(plan.purchases[0].month == 5);
    CHECK(plan.value.gap_months >= 5);
}
