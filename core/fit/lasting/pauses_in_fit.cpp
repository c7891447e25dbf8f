#include "core/fit/lasting/pauses_in_fit.h"

namespace saddlerule {
namespace {

/// Below it the bike counts as not fitting.
constexpr double even_chance = 0.5;

/// When the chance passes one half between the moment before `i` and `i`.
double turning_time(const Course& course, const Moments& chances, std::size_t i) {
    const double fraction = (chances[i - 1] - even_chance) / (chances[i - 1] - chances[i]);
    return course.months[i - 1] + fraction * (course.months[i] - course.months[i - 1]);
}

class PauseFinder {
public:
    PauseFinder(const Course& course, const Moments& chances, CalendarDate today)
        : course_(course), chances_(chances), today_(today) {}

    std::vector<PauseInFit> find() {
        std::size_t i = first_fitting();
        bool pausing = false;
        for (; i < course_.count && course_.leave[i] > 0.0; ++i) {
            const bool fits = chances_[i] >= even_chance;
            if (fits == !pausing)
                continue;
            const double turn = turning_time(course_, chances_, i);
            if (fits)
                end(turn);
            else
                begin(turn, i);
            pausing = !pausing;
        }
        // To be outgrown is no pause, but a bike may be too tall until the day on which it is.
        if (pausing && cause_ == PauseCause::too_tall)
            end(i == course_.count ? course_.months[i - 1] : passing_time(course_, course_.leave, i, 0.0));
        return std::move(pauses_);
    }

private:
    std::size_t first_fitting() const {
        std::size_t i = 0;
        while (i < course_.count && chances_[i] < even_chance)
            ++i;
        return i;
    }

    void begin(double month, std::size_t i) {
        from_ = month;
        cause_ = course_.reach[i] > -course_.leave[i] ? PauseCause::too_tall : PauseCause::outgrown;
    }

    void end(double month) {
        const CalendarDate from = today_.plus(Days::months(from_));
        const CalendarDate to = today_.plus(Days::months(month));
        if (from < to)
            pauses_.push_back({from, to, cause_});
    }

    const Course& course_;
    const Moments& chances_;
    CalendarDate today_;
    double from_ = 0.0;
    PauseCause cause_ = PauseCause::too_tall;
    std::vector<PauseInFit> pauses_;
};

} // namespace

std::vector<PauseInFit> pauses_in_fit(const Course& course, const Moments& chances, CalendarDate today) {
    return PauseFinder(course, chances, today).find();
}

} // namespace saddlerule
