// Benchmark: plans of bikes over years, for families of several sizes. Prints milliseconds of CPU time and what is proven.
// `years_benchmark quick` leaves out the longest.
#include "core/planning/years/family_plan.h"
#include "tests/benchmarks/cpu_time.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <random>
#include <string>
#include <string_view>
#include <vector>

using namespace saddlerule;

namespace {

class Draw {
public:
    explicit Draw(unsigned seed) : random_(seed) {}

    unsigned below(unsigned count) { return static_cast<unsigned>(random_() % count); }

private:
    std::mt19937 random_;
};

const CalendarDate today = *CalendarDate::from_ymd(2026, 11, 28);

std::vector<Bike> bikes(std::size_t count, Draw& draw) {
    std::vector<Bike> list(count);
    for (std::size_t i = 0; i < count; ++i) {
        Bike& bike = list[i];
        bike.id = std::to_string(i);
        bike.kind = draw.below(10) == 0 ? BikeKind::balance : BikeKind::pedal;
        const double lowest = (bike.kind == BikeKind::balance ? 300.0 : 400.0) + draw.below(400);
        bike.saddle_lowest = Length::millimetres(lowest);
        bike.saddle_highest = Length::millimetres(lowest + 90.0 + draw.below(110));
        bike.mass = Mass::kilograms(5.0 + draw.below(60) / 10.0);
        bike.brakes = std::vector{Brake::front_hand, Brake::rear_hand};
    }
    return list;
}

/// Brothers and sisters two years apart, the eldest nine; each was measured this morning.
std::vector<Rider> riders(int count) {
    std::vector<Rider> all;
    for (int i = 0; i < count; ++i) {
        const int years = 9 - 2 * i;
        Rider rider;
        rider.stage = years < 4 ? Stage::gliding : years < 6 ? Stage::starting : Stage::riding;
        rider.born = today.plus_months(-12 * years);
        rider.readings.push_back({today, Length::millimetres(285.0 + 37.0 * years), true});
        all.push_back(rider);
    }
    return all;
}

struct Size {
    const char* what;
    int riders;
    std::size_t bikes;
    int months;
    double limit_ms; ///< none: 0
};

void measure(const Size& size) {
    Draw draw(20261128);
    const std::vector<Bike> list = bikes(size.bikes, draw);
    FamilyQuestion question{.today = today, .riders = {}, .bikes = {}, .most_per_year = {}, .most_bikes = {}};
    question.months = size.months;
    question.riders = riders(size.riders);
    for (std::size_t i = 0; i < list.size(); ++i) {
        FamilyBike bike;
        bike.bike = &list[i];
        bike.price = Amount::main_units(20.0 + 5.0 * draw.below(40));
        bike.owned = i % 30 == 7;
        question.bikes.push_back(bike);
    }
    FamilyPlan plan;
    const double ms = cpu_ms([&] {
        const std::clock_t start = std::clock();
        RotaEffort effort;
        if (size.limit_ms > 0.0) {
            effort.most_width *= 4;
            effort.keep_going = [&] { return cpu_ms_since(start) < size.limit_ms; };
        }
        plan = plan_family(question, effort);
    });
    std::printf("%-14s %2d riders %5zu bikes %3d months %9.1f ms  %s  gaps %lld (proven %lld)  net %.2f "
                "(proven %.2f)\n",
                size.what, size.riders, size.bikes, size.months, ms, plan.exact ? "exact" : "     ",
                static_cast<long long>(plan.value.gap_months), static_cast<long long>(plan.least.gap_months),
                static_cast<double>(plan.net_thousandths) / 1000.0,
                static_cast<double>(plan.least.net) / 1000.0);
}

} // namespace

int main(int argc, char** argv) {
    const bool quick = argc > 1 && std::string_view(argv[1]) == "quick";
    measure({"one rider", 1, 2000, 120, 0.0});
    measure({"three", 3, 60, 96, 0.0});
    measure({"four", 4, 200, 96, 5000.0});
    if (!quick)
        measure({"a long list", 4, 20'000, 96, 20'000.0});
    return 0;
}
