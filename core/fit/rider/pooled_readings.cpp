#include "core/fit/rider/rider.h"

#include "core/base/sorting/sorting.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {

std::vector<DayReading> pooled_by_day(const Rider& rider) {
    std::vector<Reading> sorted = rider.readings;
    insertion_sort(sorted, [](const Reading& a, const Reading& b) { return a.on < b.on; });

    std::vector<DayReading> days;
    for (auto first = sorted.begin(); first != sorted.end();) {
        const auto last = std::find_if(first, sorted.end(),
                                       [&](const Reading& reading) { return reading.on != first->on; });
        const auto in_shoes = [&](const Reading& reading) {
            return reading.shoes ? reading.inseam : reading.inseam + rider.accuracy.sole;
        };
        Length sum;
        Length low = in_shoes(*first);
        Length high = low;
        int without_shoes = 0;
        for (auto reading = first; reading != last; ++reading) {
            const Length value = in_shoes(*reading);
            sum += value;
            low = std::min(low, value);
            high = std::max(high, value);
            without_shoes += reading->shoes ? 0 : 1;
        }
        const auto count = static_cast<double>(last - first);
        double squares = 0.0;
        for (auto reading = first; reading != last; ++reading)
            squares += std::pow((in_shoes(*reading) - sum / count).in_millimetres(), 2);
        const double one_sd = rider.accuracy.reading_sd.in_millimetres();
        // Readings that differ by more than their error say that the error is larger: the mean is then as unsure as
        // they show (the ratio of Birge, Phys Rev 1932;40:207-227).
        const double shown_sd = count > 1.0 ? std::sqrt(squares / (count - 1.0)) : 0.0;
        const double tape_sd =
            std::max(std::max(one_sd, shown_sd) / std::sqrt(count), shared_error_share * one_sd);
        const double sole_sd = rider.accuracy.sole_sd.in_millimetres() * without_shoes / count;
        days.push_back({.on = first->on,
                        .inseam = sum / count,
                        .sd = Length::millimetres(std::hypot(tape_sd, sole_sd)),
                        .spread = high - low,
                        .count = static_cast<int>(last - first)});
        first = last;
    }
    return days;
}

} // namespace saddlerule
