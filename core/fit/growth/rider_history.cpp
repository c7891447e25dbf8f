#include "core/fit/growth/rider_history.h"

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
                                 .figures = {{"date", date.to_iso()}, {"today", today.to_iso()}},
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
    auto& readings = dated.readings;
    if (!readings.empty() && std::all_of(readings.begin(), readings.end(), before_birth))
        history.born.reset();
    std::erase_if(readings, before_birth);
    history.days = pooled_by_day(dated);
    return history;
}

} // namespace saddlerule
