#include "core/fit/growth/rider_history.h"

#include "core/fit/growth/growth_limits.h"

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

constexpr Days youngest = Days::years(1.0);
constexpr Days grown_up = Days::years(18.0);

std::string place_of_reading(std::size_t index) {
    return "readings[" + std::to_string(index) + "].on";
}

} // namespace

RiderHistory rider_history(const Rider& rider, CalendarDate today) {
    RiderHistory history;
    const auto note = [&](ProblemCode code, std::string where, CalendarDate date) {
        history.notes.push_back({.code = code,
                                 .figures = {{"date", date}, {"today", today}},
                                 .where = std::move(where),
                                 .position = {}});
    };

    history.born = rider.born;
    if (rider.born && *rider.born > today) {
        note(ProblemCode::rider_born_in_future, "born", *rider.born);
        history.born.reset();
    } else if (rider.born && today - *rider.born < youngest) {
        note(ProblemCode::rider_under_one, "born", *rider.born);
    } else if (rider.born && today - *rider.born > grown_up) {
        note(ProblemCode::rider_over_eighteen, "born", *rider.born);
    }

    Rider dated = rider;
    for (std::size_t i = 0; i < dated.readings.size(); ++i) {
        Reading& reading = dated.readings[i];
        if (reading.on > today) {
            note(ProblemCode::reading_in_future, place_of_reading(i), reading.on);
            reading.on = today;
        }
        if (history.born && reading.on < *history.born)
            note(ProblemCode::reading_before_birth, place_of_reading(i), reading.on);
    }

    const auto before_birth = [&](const Reading& reading) {
        return history.born && reading.on < *history.born;
    };
    std::erase_if(dated.readings, before_birth);
    history.days = pooled_by_day(dated);
    if (!history.days.empty() && today - history.days.back().on > growth_limits::fresh_for) {
        const CalendarDate newest = history.days.back().on;
        const auto found = std::find_if(rider.readings.begin(), rider.readings.end(),
                                        [&](const Reading& reading) { return reading.on == newest; });
        const auto months = static_cast<int>((today - newest).in_months());
        history.notes.push_back(
            {.code = ProblemCode::reading_old,
             .figures = {{"date", newest}, {"months", months}},
             .where = place_of_reading(static_cast<std::size_t>(found - rider.readings.begin())),
             .position = {}});
    }
    return history;
}

bool says_nothing_of_size(const Rider& rider, CalendarDate today) {
    const RiderHistory history = rider_history(rider, today);
    return history.days.empty() && !history.born && !rider.stature;
}

} // namespace saddlerule
