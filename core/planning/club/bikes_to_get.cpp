#include "core/planning/club/bikes_to_get.h"

#include "core/base/sorting/sorting.h"
#include "core/base/statistics/normal_distribution.h"
#include "core/fit/choice/wheel_sizes.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

constexpr double chance_of_one_end = 0.75;
/// Where a range just reaches, in the tenths of a millimetre of answers, rounding of doubles does not decide.
constexpr Length close_enough = Length::millimetres(0.01);

/// What one rider needs of a bike: in tenths of a millimetre, as answers give lengths, rounded to the safe side.
struct Need {
    std::size_t rider = 0;
    Length lowest_at_most;
    Length highest_at_least;
    /// With its lowest saddle here or above, a bike of the usual range reaches `highest_at_least`.
    Length lowest_at_least;
};

Length rounded_down(Length length) {
    return Length::millimetres(std::floor(length.in_millimetres() * 10.0) / 10.0);
}

Length rounded_up(Length length) {
    return Length::millimetres(std::ceil(length.in_millimetres() * 10.0) / 10.0);
}

/// The lowest saddle with which a bike of the usual range just reaches `highest`. The higher a bike, the higher its range ends, so
/// halving finds it.
Length lowest_that_reaches(BikeKind kind, Length highest) {
    Length low;
    Length high = highest;
    for (int step = 0; step < 40; ++step) {
        const Length middle = (low + high) / 2.0;
        (middle + usual_range(kind, middle) < highest ? low : high) = middle;
    }
    return high;
}

Need need_of(const Unseated& one) {
    const Length sd =
        Length::millimetres(std::hypot(one.inseam.sd.in_millimetres(), bike_measurement_sd.in_millimetres()));
    const Length margin = sd * normal::quantile(chance_of_one_end);
    Need need{.rider = one.rider,
              .lowest_at_most = rounded_down(one.inseam.mean + one.offsets.range.high() - margin),
              .highest_at_least = rounded_up(one.inseam.mean + one.offsets.range.low() + margin),
              .lowest_at_least = {}};
    // Of a rider whose size is a wide guess: no bike's range is sure to hold the right height, the likeliest one is asked for.
    need.lowest_at_least =
        std::min(lowest_that_reaches(one.kind, need.highest_at_least), need.lowest_at_most);
    return need;
}

/// Every need is a stretch of lowest saddles. Taking the stretch that ends first, and all others that its end is in, again and
/// again, takes as few as can be.
void add_ranges(std::vector<BikeToGet>& ranges, BikeKind kind, std::vector<Need> needs, std::size_t rounds) {
    heap_sort(needs, [](const Need& a, const Need& b) {
        return a.lowest_at_most == b.lowest_at_most ? a.rider < b.rider : a.lowest_at_most < b.lowest_at_most;
    });
    std::vector<bool> seated(needs.size());
    for (std::size_t first = 0; first < needs.size(); ++first) {
        if (seated[first])
            continue;
        BikeToGet range{.kind = kind,
                        .lowest_at_most = needs[first].lowest_at_most,
                        .highest_at_least = needs[first].lowest_at_most,
                        .seats = {},
                        .bikes = 0};
        for (std::size_t i = first; i < needs.size(); ++i) {
            if (seated[i] || range.lowest_at_most + close_enough < needs[i].lowest_at_least)
                continue;
            seated[i] = true;
            range.seats.push_back(needs[i].rider);
            range.highest_at_least = std::max(range.highest_at_least, needs[i].highest_at_least);
        }
        range.bikes = (range.seats.size() + rounds - 1) / rounds;
        heap_sort(range.seats);
        ranges.push_back(std::move(range));
    }
}

} // namespace

Length usual_range(BikeKind kind, Length lowest) {
    const auto known = typical_spans(kind);
    const auto length = [](const TypicalSpan& span) { return span.highest - span.lowest; };
    if (lowest <= known.front().lowest)
        return length(known.front());
    for (std::size_t i = 1; i < known.size(); ++i) {
        if (lowest <= known[i].lowest) {
            const double part = (lowest - known[i - 1].lowest) / (known[i].lowest - known[i - 1].lowest);
            return length(known[i - 1]) * (1.0 - part) + length(known[i]) * part;
        }
    }
    return length(known.back());
}

std::vector<BikeToGet> bikes_to_get(std::span<const Unseated> riders, int rounds) {
    std::vector<BikeToGet> ranges;
    for (const BikeKind kind : {BikeKind::pedal, BikeKind::balance}) {
        std::vector<Need> needs;
        for (const Unseated& one : riders) {
            if (one.kind == kind)
                needs.push_back(need_of(one));
        }
        add_ranges(ranges, kind, std::move(needs), static_cast<std::size_t>(rounds));
    }
    insertion_sort(ranges,
                   [](const BikeToGet& a, const BikeToGet& b) { return a.seats.size() > b.seats.size(); });
    return ranges;
}

} // namespace saddlerule
