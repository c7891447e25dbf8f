#include "core/fit/choice/filter_counts.h"

#include "core/base/sorting/sorting.h"
#include "core/base/text/ascii_case.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <utility>

namespace saddlerule {
namespace {

/// So many colours are offered: nobody looks through more.
constexpr std::size_t most_colours = 60;

/// Limits need not be exact: they are made of about so many bikes of a long list.
constexpr std::size_t sampled_bikes = 500;

/// At most one limit more than this is offered.
constexpr double most_steps = 4.0;

/// The least of 1, 2, 5, 10, 20, 50 and so on of which `most_steps` reach as far.
double round_step(double distance) {
    double decade = 1.0;
    while (true) {
        for (const double part : {1.0, 2.0, 5.0}) {
            if (most_steps * part * decade >= distance)
                return part * decade;
        }
        decade *= 10.0;
    }
}

/// Round limits between the lowest and the highest tenth, so that one dear bike does not set them all. `sorted` is in whatever
/// unit, of which the limits' own one is `unit`.
std::vector<FigureCount> round_limits(const std::vector<double>& sorted, double unit) {
    std::vector<FigureCount> limits;
    if (sorted.empty())
        return limits;
    const std::size_t tenth = sorted.size() / 10;
    const double low = sorted[tenth] / unit;
    const double high = sorted[sorted.size() - 1 - tenth] / unit;
    if (low == high)
        return limits;
    const double step = round_step(high - low);
    double limit = std::ceil(low / step) * step;
    while (limit <= high) {
        limits.push_back({limit});
        limit += step;
    }
    return limits;
}

void count_within(std::vector<FigureCount>& limits, double found, double unit) {
    for (FigureCount& limit : limits)
        limit.bikes += found <= limit.figure * unit ? 1 : 0;
}

constexpr double pound = Mass::pounds(1.0).in_kilograms();

} // namespace

FilterCounter::FilterCounter(std::span<const Bike> list, std::span<const Bike> taped, const Wants& wants,
                             FilterCounts& counts)
    : wants_(wants), counts_(counts) {
    std::vector<double> prices;
    std::vector<double> kilograms;
    const std::size_t stride = 1 + (list.size() + taped.size()) / sampled_bikes;
    for (const auto& bikes : {list, taped}) {
        for (std::size_t place = 0; place < bikes.size(); place += stride) {
            const Bike& bike = bikes[place];
            if (bike.price)
                prices.push_back(bike.price->in_main_units());
            if (bike.mass)
                kilograms.push_back(bike.mass->in_kilograms());
        }
    }
    heap_sort(prices);
    heap_sort(kilograms);
    counts_.prices = round_limits(prices, 1.0);
    counts_.kilograms = round_limits(kilograms, 1.0);
    counts_.pounds = round_limits(kilograms, pound);
}

void FilterCounter::count(const Bike& bike, const std::vector<Unwanted>& because) {
    // A filter gives at most one reason. A bike with two is left out whatever is chosen instead in one filter.
    const auto counts_in = [&](Filter filter) {
        return because.empty() || (because.size() == 1 && filter_of(because.front()) == filter);
    };
    const auto count_values = [&](Filter filter, bool first, bool second) {
        const auto place = static_cast<std::size_t>(filter);
        const int one = counts_in(filter) ? 1 : 0;
        counts_.without[place] += one;
        counts_.values[place][0] += first ? one : 0;
        counts_.values[place][1] += second ? one : 0;
    };
    count_values(Filter::brakes, answers(bike, BrakeWish::two_hand), answers(bike, BrakeWish::coaster));
    count_values(Filter::kind, answers(bike, KindWish::pedal), answers(bike, KindWish::balance));
    count_values(Filter::gears, answers(bike, GearsWish::single), answers(bike, GearsWish::several));
    count_values(Filter::available, is_available(bike), false);
    for (const Filter filter : {Filter::price, Filter::mass, Filter::wheel, Filter::colour})
        count_values(filter, false, false);

    if (bike.price && counts_in(Filter::price))
        count_within(counts_.prices, bike.price->in_main_units(), 1.0);
    if (bike.mass && counts_in(Filter::mass)) {
        count_within(counts_.kilograms, bike.mass->in_kilograms(), 1.0);
        count_within(counts_.pounds, bike.mass->in_kilograms(), pound);
    }
    if (bike.wheel && bike.wheel->nominal_inches())
        count_wheel(*bike.wheel->nominal_inches(), counts_in(Filter::wheel));
    count_colours(bike, counts_in(Filter::colour));
}

/// There are no more than a dozen nominal sizes.
void FilterCounter::count_wheel(double nominal_inches, bool counts) {
    auto& wheels = counts_.wheels;
    std::size_t place = 0;
    while (place < wheels.size() && wheels[place].figure != nominal_inches)
        ++place;
    if (place == wheels.size()) {
        wheels.push_back({nominal_inches});
        for (; place > 0 && wheels[place - 1].figure > nominal_inches; --place)
            std::swap(wheels[place - 1], wheels[place]);
    }
    wheels[place].bikes += counts ? 1 : 0;
}

std::size_t FilterCounter::colour_place(const std::string& name) {
    std::size_t& number = colour_numbers_[in_lower_case(name)];
    if (number == 0) {
        counts_.colours.push_back({name});
        number = counts_.colours.size();
    }
    return number - 1;
}

void FilterCounter::count_colours(const Bike& bike, bool counts) {
    for (const std::string& name : bike.colours) {
        ColourCount& colour = counts_.colours[colour_place(name)];
        // "Red" and "red" of one bike are one colour.
        if (colour.last == &bike)
            continue;
        colour.last = &bike;
        ++colour.in_list;
        colour.bikes += counts ? 1 : 0;
    }
}

void FilterCounter::finish() {
    if (wants_.wheel_nominal_inches)
        count_wheel(*wants_.wheel_nominal_inches, false);

    auto& colours = counts_.colours;
    std::optional<std::size_t> chosen;
    if (wants_.colour) {
        chosen = colour_place(*wants_.colour);
        colours[*chosen].colour = *wants_.colour;
    }
    std::vector<std::size_t> places(colours.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    heap_sort(places, [&](std::size_t a, std::size_t b) {
        return colours[a].in_list != colours[b].in_list ? colours[a].in_list > colours[b].in_list : a < b;
    });
    const std::size_t count = std::min(places.size(), most_colours);
    if (chosen && std::find(places.begin(), places.end(), *chosen) - places.begin() >=
                      static_cast<std::ptrdiff_t>(count))
        places[count - 1] = *chosen;
    std::vector<ColourCount> offered;
    for (std::size_t i = 0; i < count; ++i)
        offered.push_back(std::move(colours[places[i]]));
    counts_.more_colours = colours.size() - count;
    colours = std::move(offered);
}

} // namespace saddlerule
