#include "core/planning/suits/suits.h"

#include "core/base/sorting/sorting.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

/// What a bike is sorted by.
struct Place {
    double wheel;
    double lowest;
    std::uint32_t index;

    friend auto operator<=>(const Place&, const Place&) = default;
};

Place place_of(const Bike& bike, std::size_t index) {
    constexpr double last = 1e9;
    const auto known = bike.wheel ? bike.wheel->nominal_inches() : std::nullopt;
    const auto saddle = bike.saddle_lowest ? bike.saddle_lowest : bike.saddle_highest;
    return {.wheel = known.value_or(last),
            .lowest = saddle ? saddle->in_millimetres() : last,
            .index = static_cast<std::uint32_t>(index)};
}

/// Inseams in tenths of a millimetre, both ends included.
using Stretch = std::pair<long long, long long>;

long long tenths(Length length) {
    return std::llround(length.in_millimetres() * 10.0);
}

Length length_of_tenths(long long count) {
    return Length::millimetres(static_cast<double>(count) / 10.0);
}

/// Where at least `wanted` of the stretches are on top of each other.
std::optional<SharedRange> shared(const std::vector<Stretch>& stretches, std::size_t wanted) {
    std::vector<std::pair<long long, int>> steps;
    for (const auto& [from, to] : stretches) {
        steps.emplace_back(from, 1);
        steps.emplace_back(to + 1, -1);
    }
    heap_sort(steps);
    std::optional<SharedRange> range;
    std::ptrdiff_t depth = 0;
    bool covered = false;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        depth += steps[i].second;
        if (i + 1 < steps.size() && steps[i + 1].first == steps[i].first)
            continue;
        const bool enough = depth >= static_cast<std::ptrdiff_t>(wanted);
        if (enough == covered)
            continue;
        covered = enough;
        const Length before = length_of_tenths(steps[i].first - 1);
        const Length at = length_of_tenths(steps[i].first);
        if (!enough)
            range->to = before;
        else if (!range)
            range = SharedRange{.from = at, .to = at, .gaps = {}};
        else
            range->gaps.emplace_back(range->to, at);
    }
    return range;
}

WheelStage of_wheel(std::span<const BikeSuits> bikes, std::size_t stage) {
    WheelStage result;
    std::vector<Stretch> stretches;
    for (const BikeSuits& one : bikes) {
        if (!made_for(one.bike->kind, every_stage[stage]))
            continue;
        ++result.bikes;
        if (!one.bike->saddle_lowest || !one.bike->saddle_highest)
            continue;
        ++result.measured;
        if (const auto& range = one.stages[stage])
            stretches.emplace_back(tenths(*range->from), tenths(*range->to));
    }
    result.any = shared(stretches, 1);
    result.half = shared(stretches, std::max<std::size_t>((result.measured + 1) / 2, 1));
    return result;
}

std::vector<WheelSuits> wheels_of(const std::vector<BikeSuits>& bikes) {
    const auto size_of = [](const BikeSuits& one) {
        return one.bike->wheel ? one.bike->wheel->nominal_inches() : std::nullopt;
    };
    const std::span<const BikeSuits> all(bikes);
    std::vector<WheelSuits> wheels;
    for (std::size_t first = 0; first < all.size() && size_of(all[first]);) {
        std::size_t last = first;
        while (last < all.size() && size_of(all[last]) == size_of(all[first]))
            ++last;
        WheelSuits wheel{.nominal_inches = *size_of(all[first]), .stages = {}};
        for (std::size_t stage = 0; stage < every_stage.size(); ++stage)
            wheel.stages[stage] = of_wheel(all.subspan(first, last - first), stage);
        wheels.push_back(std::move(wheel));
        first = last;
    }
    return wheels;
}

} // namespace

bool made_for(BikeKind kind, Stage stage) {
    return (kind == BikeKind::balance) == (stage == Stage::gliding);
}

Suits whom_they_suit(std::span<const Bike> bikes, Length reading_sd) {
    std::vector<Place> places;
    places.reserve(bikes.size());
    for (std::size_t i = 0; i < bikes.size(); ++i)
        places.push_back(place_of(bikes[i], i));
    heap_sort(places);

    std::vector<InseamFinder> finders;
    finders.reserve(std::size(every_stage));
    for (const Stage stage : every_stage)
        finders.emplace_back(stage, reading_sd);
    Suits suits;
    suits.bikes.reserve(bikes.size());
    for (const Place& place : places) {
        const Bike& bike = bikes[place.index];
        BikeSuits one{.bike = &bike, .stages = {}};
        for (std::size_t stage = 0; stage < every_stage.size(); ++stage) {
            if (made_for(bike.kind, every_stage[stage]))
                one.stages[stage] = finders[stage].of(SaddleSpan::of(bike));
        }
        suits.bikes.push_back(one);
    }
    suits.wheels = wheels_of(suits.bikes);
    return suits;
}

} // namespace saddlerule
