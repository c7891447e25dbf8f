#include "core/fit/lasting/life_of_fit.h"

#include "core/base/statistics/normal_distribution.h"
#include "core/base/statistics/quick_normal.h"

#include <algorithm>
#include <cstddef>

namespace saddlerule {
namespace {

/// Normal scores of 10, 50 and 90 %.
constexpr double score_of_10 = -1.2815515655446004;
constexpr double score_of_90 = 1.2815515655446004;

/// A limit at each moment of the course, as a score: a child is a score here, the share of children like this
/// one whose legs stay shorter.
using Limits = std::array<double, most_moments>;

/// The tabulated days in order, the day of a change of stage once for each of the two stages.
struct Course {
    Limits months{};
    Limits reach{}; ///< children above it get over the lowest saddle
    Limits leave{}; ///< children above it have left the highest saddle behind for good
    std::size_t count = 0;

    /// Moments at which a stage begins; the last entry is `count`.
    std::array<std::size_t, most_stages + 1> stage_starts{};
    std::size_t stage_count = 0;

    Course(const FitForecast& forecast, Length lowest, Length highest) {
        for (const StageOfForecast& stage : forecast.stages()) {
            const ScoreRow to_reach = forecast.inseams().row_of(lowest - stage.offsets.range.high());
            const ScoreRow to_leave = forecast.inseams().row_of(highest - stage.offsets.range.low());
            const std::size_t days = std::min(stage.last_day + 1 - stage.first_day, most_moments - count);
            for (std::size_t i = 0; i < days; ++i) {
                const std::size_t day = stage.first_day + i;
                months[count + i] = forecast.months()[day];
                reach[count + i] = to_reach.on(day);
                leave[count + i] = to_leave.on(day);
            }
            stage_starts[stage_count++] = count;
            count += days;
        }
        stage_starts[stage_count] = count;
        for (std::size_t i = 1; i < count; ++i)
            leave[i] = leave[i] < leave[i - 1] ? leave[i] : leave[i - 1];
    }
};

/// When a child of that score passes limits that lie above it at the moment before `i` and no longer at `i`.
double passing_time(const Course& course, const Limits& limits, std::size_t i, double score) {
    const double fraction = (limits[i - 1] - score) / (limits[i - 1] - limits[i]);
    return course.months[i - 1] + fraction * (course.months[i] - course.months[i - 1]);
}

DateQuantiles dates_of_passing(const Course& course, const Limits& limits, CalendarDate today) {
    std::size_t i = 0;
    const auto date_of = [&](double score) -> std::optional<CalendarDate> {
        while (i < course.count && limits[i] > score)
            ++i;
        if (i == course.count)
            return std::nullopt;
        return today.plus(Days::months(i == 0 ? 0.0 : passing_time(course, limits, i, score)));
    };
    // One in ten has passed when the limit is down at the score that nine in ten stay below.
    DateQuantiles dates;
    dates.p10 = date_of(score_of_90);
    dates.p50 = date_of(0.0);
    dates.p90 = date_of(score_of_10);
    return dates;
}

/// Beyond this score the normal cdf is 0 or 1 to seven decimals.
constexpr double practically_certain = 5.3;

double chance_between(double reach, double leave, const QuickNormal& normal) {
    if (reach >= practically_certain || leave <= -practically_certain)
        return 0.0;
    if (reach <= -practically_certain && leave >= practically_certain)
        return 1.0;
    const double chance = normal.cdf(leave) - normal.cdf(reach);
    return chance > 0.0 ? chance : 0.0;
}

double chance_of_fitting(const Course& course, std::size_t i, const QuickNormal& normal) {
    return chance_between(course.reach[i], course.leave[i], normal);
}

double mean_months(const Course& course) {
    const QuickNormal& normal = QuickNormal::table();
    double twice_the_sum = 0.0;
    double before = chance_of_fitting(course, 0, normal);
    for (std::size_t i = 1; i < course.count; ++i) {
        const double now = chance_of_fitting(course, i, normal);
        twice_the_sum += (before + now) * (course.months[i] - course.months[i - 1]);
        before = now;
    }
    return 0.5 * twice_the_sum;
}

/// Fifty children, one for each fiftieth of the distribution, tallest first.
constexpr std::size_t child_count = 50;

std::array<double, child_count> scores_of_children() {
    std::array<double, child_count> scores{};
    for (std::size_t i = 0; i < child_count; ++i)
        scores[i] = normal::quantile(1.0 - (static_cast<double>(i) + 0.5) / child_count);
    return scores;
}

/// Walks down the children, each limit being passed later than by the one before.
class MonthsOfChildren {
public:
    explicit MonthsOfChildren(const Course& course) : course_(course), reached_(course.stage_starts) {}

    double next(double score) {
        while (left_ < course_.count && course_.leave[left_] > score)
            ++left_;
        const double leaves = left_ == 0               ? 0.0
                              : left_ == course_.count ? course_.months[left_ - 1]
                                                       : passing_time(course_, course_.leave, left_, score);
        double months = 0.0;
        for (std::size_t stage = 0; stage < course_.stage_count; ++stage)
            months += months_in(stage, score, leaves);
        return months;
    }

private:
    double months_in(std::size_t stage, double score, double leaves) {
        const std::size_t start = course_.stage_starts[stage];
        const std::size_t stop = course_.stage_starts[stage + 1];
        std::size_t& reached = reached_[stage];
        while (reached < stop && course_.reach[reached] > score)
            ++reached;
        if (reached == stop)
            return 0.0;
        const double from =
            reached == start ? course_.months[start] : passing_time(course_, course_.reach, reached, score);
        return std::max(std::min(leaves, course_.months[stop - 1]) - from, 0.0);
    }

    const Course& course_;
    std::size_t left_ = 0;
    std::array<std::size_t, most_stages + 1> reached_;
};

MonthsOfFit months_of_fit(const Course& course) {
    static const std::array<double, child_count> scores = scores_of_children();
    std::array<double, child_count> months{};
    MonthsOfChildren children(course);
    for (std::size_t i = 0; i < child_count; ++i)
        months[i] = children.next(scores[i]);
    // Already in order where the bike fits from today on: the tallest leave first.
    if (!std::is_sorted(months.begin(), months.end()))
        std::sort(months.begin(), months.end());
    const auto between = [&](std::size_t child) { return 0.5 * (months[child - 1] + months[child]); };
    return {.mean = mean_months(course),
            .p10 = between(child_count / 10),
            .p50 = between(child_count / 2),
            .p90 = between(child_count - child_count / 10)};
}

} // namespace

LifeOfFit life_of_fit(const FitForecast& forecast, const SaddleSpan& span) {
    LifeOfFit life;
    if (!span.lowest && !span.highest)
        return life;
    // An unknown end borrows the other; nothing that depends on it is given.
    const Course course(forecast, span.lowest ? *span.lowest : *span.highest,
                        span.highest ? *span.highest : *span.lowest);
    const bool too_tall_today = course.reach[0] > 0.0;
    if (span.lowest && too_tall_today)
        life.fits_from = dates_of_passing(course, course.reach, forecast.asked_on());
    if (span.highest)
        life.outgrown = dates_of_passing(course, course.leave, forecast.asked_on());
    if (span.lowest && span.highest)
        life.months_of_fit = months_of_fit(course);
    return life;
}

std::optional<FitCurve> fit_curve(const FitForecast& forecast, const SaddleSpan& span) {
    if (!span.lowest || !span.highest)
        return std::nullopt;
    const Course course(forecast, *span.lowest, *span.highest);
    const QuickNormal& normal = QuickNormal::table();
    FitCurve curve{};
    for (std::size_t i = 0; i < course.count; ++i) {
        const auto month = static_cast<std::size_t>(course.months[i]);
        // A change of stage between two whole months belongs to neither; on a whole month the new stage
        // counts.
        if (static_cast<double>(month) == course.months[i])
            curve[month] = chance_of_fitting(course, i, normal);
    }
    return curve;
}

double FitLimits::chance() const {
    return chance_between(reach, leave, QuickNormal::table());
}

void fit_limits(const FitForecast& forecast, Length lowest, Length highest, std::span<FitLimits> months) {
    const std::vector<double>& days = forecast.months();
    double left = practically_certain + 1.0;
    for (const StageOfForecast& stage : forecast.stages()) {
        const ScoreRow to_reach = forecast.inseams().row_of(lowest - stage.offsets.range.high());
        const ScoreRow to_leave = forecast.inseams().row_of(highest - stage.offsets.range.low());
        for (std::size_t day = stage.first_day; day <= stage.last_day; ++day) {
            left = std::min(left, to_leave.on(day));
            const auto month = static_cast<std::size_t>(days[day]);
            if (month < months.size() && static_cast<double>(month) == days[day])
                months[month] = {.reach = to_reach.on(day), .leave = left};
        }
    }
}

} // namespace saddlerule
