// Benchmark: club mornings of several sizes, and lists turned round. Prints milliseconds of CPU time.
#include "core/planning/club/club_day.h"
#include "core/planning/suits/suits.h"
#include "tests/benchmarks/cpu_time.h"

#include <cstdio>
#include <optional>
#include <random>
#include <vector>

using namespace saddlerule;

namespace {

class Draw {
public:
    explicit Draw(unsigned seed) : random_(seed) {}

    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(random_()) / 4294967296.0;
    }
    unsigned below(unsigned count) { return static_cast<unsigned>(random_() % count); }

private:
    std::mt19937 random_;
};

const CalendarDate today = *CalendarDate::from_ymd(2026, 11, 28);

std::vector<Bike> bikes(std::size_t count, Draw& draw) {
    constexpr const char* wheels[] = {"12", "14", "16", "18", "20", "24"};
    std::vector<Bike> list(count);
    for (std::size_t i = 0; i < count; ++i) {
        Bike& bike = list[i];
        const unsigned size = draw.below(6);
        bike.id = std::to_string(i);
        bike.kind = draw.below(10) == 0 ? BikeKind::balance : BikeKind::pedal;
        bike.wheel = Wheel::from_text(wheels[size]);
        // To whole millimetres, as bikes are measured.
        const double lowest = 360.0 + 55.0 * size + draw.below(60);
        bike.saddle_lowest = Length::millimetres(lowest);
        bike.saddle_highest = Length::millimetres(lowest + 90.0 + draw.below(110));
        bike.mass = Mass::kilograms(draw.between(5.0, 11.0));
        bike.brakes = std::vector{Brake::front_hand, Brake::rear_hand};
        bike.standover = Length::millimetres(lowest - 20.0 - draw.below(60));
    }
    return list;
}

/// Half of them measured this morning and no more, as volunteers do.
std::vector<std::optional<Rider>> riders(std::size_t count, Draw& draw) {
    constexpr Stage stages[] = {Stage::riding, Stage::riding, Stage::starting, Stage::side_wheels,
                                Stage::gliding};
    std::vector<std::optional<Rider>> all;
    for (std::size_t i = 0; i < count; ++i) {
        Rider rider;
        rider.stage = stages[draw.below(5)];
        rider.readings.push_back({today, Length::millimetres(400.0 + draw.below(330)), true});
        if (draw.below(2) == 0)
            rider.born = today.plus_months(-40 - static_cast<int>(draw.below(90)));
        all.push_back(rider);
    }
    return all;
}

} // namespace

int main() {
    struct Size {
        std::size_t riders;
        std::size_t bikes;
        int rounds;
    };
    std::printf("riders  bikes  rounds  plan ms  seated  left\n");
    for (const Size size : {Size{30, 20, 1}, Size{30, 20, 2}, Size{200, 300, 1}, Size{201, 100, 3},
                            Size{1000, 1000, 1}, Size{2000, 1000, 2}}) {
        Draw draw(20261128);
        const auto list = bikes(size.bikes, draw);
        const auto children = riders(size.riders, draw);
        ClubDay day;
        const double ms = cpu_ms([&] {
            day = plan_club_day({.today = today,
                                 .riders = children,
                                 .bikes = list,
                                 .absent = std::vector<bool>(list.size()),
                                 .locked = {},
                                 .never = {},
                                 .before = {},
                                 .rounds = size.rounds,
                                 .off_road = false});
        });
        std::printf("%6zu  %5zu  %6d  %7.2f  %6zu  %4zu\n", size.riders, size.bikes, size.rounds, ms,
                    day.seated.size(), day.left.size());
    }
    std::printf("suits of bikes  ms  wheel sizes\n");
    for (const std::size_t count : {1000u, 20000u}) {
        Draw draw(7);
        const auto list = bikes(count, draw);
        std::size_t wheels = 0;
        const double ms = cpu_ms([&] { wheels = whom_they_suit(list, usual_reading_sd()).wheels.size(); });
        std::printf("%14zu  %.2f  %zu\n", count, ms, wheels);
    }
    return 0;
}
