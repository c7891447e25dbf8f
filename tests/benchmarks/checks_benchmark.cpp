// Benchmark: all checks and the unbeaten bikes for lists of up to 20,000 bikes. Prints milliseconds, the best
// of several runs, and how they grow against n log n.
#include "core/fit/checks/check.h"
#include "core/fit/choice/unbeaten_bikes.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
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
    bool one_in(unsigned count) { return random_() % count == 0; }

private:
    std::mt19937 random_;
};

/// Bikes as a well-kept list has them: one figure in ten not taken.
std::vector<Bike> bikes(int count, unsigned seed) {
    Draw draw(seed);
    const auto length = [&](double low, double high) {
        return draw.one_in(10) ? std::nullopt : std::optional(Length::millimetres(draw.between(low, high)));
    };
    std::vector<Bike> list;
    list.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        Bike bike;
        bike.saddle_lowest = Length::millimetres(draw.between(420.0, 500.0));
        bike.saddle_highest = *bike.saddle_lowest + Length::millimetres(draw.between(90.0, 200.0));
        bike.wheel = Wheel::from_text(draw.one_in(2) ? "47-305" : "47-406");
        bike.standover = length(380.0, 520.0);
        bike.lever_reach = length(45.0, 95.0);
        bike.crank = length(80.0, 130.0);
        bike.bottom_bracket_height = length(180.0, 260.0);
        bike.seat_tube_angle_degrees = draw.between(66.0, 76.0);
        bike.mass = Mass::kilograms(draw.between(4.5, 12.0));
        bike.rider_mass_limit = Mass::kilograms(draw.between(25.0, 60.0));
        bike.brakes =
            draw.one_in(3) ? std::vector{Brake::coaster} : std::vector{Brake::front_hand, Brake::rear_hand};
        bike.chainring = 32;
        bike.sprocket = 16;
        list.push_back(std::move(bike));
    }
    return list;
}

/// `rivalry` 0: figures have nothing to do with each other, so that few bikes are unbeaten. 1: whatever lasts
/// longer costs or weighs more, so that nearly all are.
std::vector<ChoiceFigures> choices(int count, unsigned seed, bool rivalry) {
    Draw draw(seed);
    const Currency euro = *Currency::from_code("EUR");
    std::vector<ChoiceFigures> figures;
    figures.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        const double months = draw.between(1.0, 60.0);
        const double price = draw.between(20.0, 600.0);
        const double kg = rivalry ? 4.0 + months / 10.0 + (600.0 - price) / 100.0 : draw.between(4.5, 12.0);
        figures.push_back({.lasts = Days::months(months),
                           .price = Money::amount(price, euro),
                           .mass = Mass::kilograms(kg)});
    }
    return figures;
}

CheckedRider rider() {
    CheckedRider child;
    child.inseam_in_shoes = Length::millimetres(495.0);
    child.inseam_without_shoes = Length::millimetres(475.0);
    child.sole = Length::millimetres(20.0);
    child.stature = Length::millimetres(1105.0);
    child.estimated_mass = EstimatedMass{Mass::kilograms(17.93)};
    return child;
}

/// Milliseconds of one piece of work, the best of several runs.
template <typename Work>
double best_ms(Work work) {
    using Clock = std::chrono::steady_clock;
    double best = 1e9;
    for (int run = 0; run < 15; ++run) {
        const auto start = Clock::now();
        work();
        best = std::min(best, std::chrono::duration<double, std::milli>(Clock::now() - start).count());
    }
    return best;
}

/// How many findings are not ok, which keeps the work from being optimised away.
long judge_all(const std::vector<Bike>& list, const CheckedRider& child,
               std::vector<std::vector<CheckResult>>& kept) {
    long worth_reading = 0;
    for (std::size_t i = 0; i < list.size(); ++i) {
        check_bike({.rider = child, .bike = list[i], .saddle_setting = Length::millimetres(505.0)}, kept[i]);
        worth_reading += std::count_if(kept[i].begin(), kept[i].end(), [](const CheckResult& result) {
            return result.finding.state != CheckState::ok;
        });
    }
    return worth_reading;
}

} // namespace

int main() {
    const CheckedRider child = rider();
    std::printf("bikes  checks ms  unbeaten ms  (nearly all unbeaten)  total ms  total / n log2 n, ns  "
                "findings not ok\n");
    for (const int count : {1000, 2000, 4000, 10000, 20000}) {
        const auto list = bikes(count, 20261125);
        const auto loose = choices(count, 7, false);
        const auto rivals = choices(count, 7, true);
        long not_ok = 0;
        std::size_t standings = 0;
        // Findings are kept for every bike, as an answer keeps them, and made in fresh memory.
        const double checks_ms = best_ms([&] {
            std::vector<std::vector<CheckResult>> kept(list.size());
            not_ok = judge_all(list, child, kept);
        });
        const double loose_ms = best_ms([&] { standings += choice_standings(loose).size(); });
        const double rival_ms = best_ms([&] { standings += choice_standings(rivals).size(); });
        const double total_ms = checks_ms + rival_ms;
        std::printf("%5d  %9.2f  %11.2f  %21.2f  %8.2f  %20.1f  %15ld\n", count, checks_ms, loose_ms,
                    rival_ms, total_ms, total_ms * 1e6 / (count * std::log2(count)), not_ok);
        if (standings == 0)
            return 1;
    }
    return 0;
}
