#include "core/fit/lasting/life_of_fit.h"

#include "core/base/sorting/sorting.h"
#include "core/base/statistics/normal_distribution.h"
#include "core/fit/lasting/fit_course.h"
#include "core/fit/lasting/pauses_in_fit.h"

#include <algorithm>
#include <cstddef>

namespace saddlerule {
namespace {

/// Normal scores of 10, 50 and 90 %.
constexpr double score_of_10 = -1.2815515655446004;
constexpr double score_of_90 = 1.2815515655446004;

DateQuantiles dates_of_passing(const Course& course, const Moments& limits, CalendarDate today) {
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

double mean_months(const Course& course, const Moments& chances) {
    double twice_the_sum = 0.0;
    for (std::size_t i = 1; i < course.count; ++i)
        twice_the_sum += (chances[i - 1] + chances[i]) * (course.months[i] - course.months[i - 1]);
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

MonthsOfFit months_of_fit(const Course& course, const Moments& chances) {
    static const std::array<double, child_count> scores = scores_of_children();
    std::array<double, child_count> months{};
    MonthsOfChildren children(course);
    for (std::size_t i = 0; i < child_count; ++i)
        months[i] = children.next(scores[i]);
    // Already in order where the bike fits from today on: the tallest leave first.
    if (!std::is_sorted(months.begin(), months.end()))
        heap_sort(months);
    const auto between = [&](std::size_t child) { return 0.5 * (months[child - 1] + months[child]); };
    return {.mean = mean_months(course, chances),
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
    if (span.lowest && span.highest) {
        const Moments chances = chances_of_fitting(course);
        life.months_of_fit = months_of_fit(course, chances);
        life.pauses = pauses_in_fit(course, chances, forecast.asked_on());
    }
    return life;
}

std::vector<MonthStretch> likely_months(const FitCurve& curve) {
    constexpr double as_likely_as_not = 0.5;
    std::vector<MonthStretch> stretches;
    bool fitted = false;
    for (int month = 0; month <= horizon_months; ++month) {
        const bool fits = curve[static_cast<std::size_t>(month)] >= as_likely_as_not;
        if (fits && !fitted)
            stretches.push_back({.from = month, .to = month});
        if (fits)
            stretches.back().to = month + 1;
        fitted = fits;
    }
    return stretches;
}

std::optional<FitCurve> fit_curve(const FitForecast& forecast, const SaddleSpan& span) {
    if (!span.lowest || !span.highest)
        return std::nullopt;
    const Course course(forecast, *span.lowest, *span.highest);
    const Moments chances = chances_of_fitting(course);
    FitCurve curve{};
    for (std::size_t i = 0; i < course.count; ++i) {
        const auto month = static_cast<std::size_t>(course.months[i]);
        // A change of stage between two whole months belongs to neither; on a whole month the new stage
        // counts.
        if (static_cast<double>(month) == course.months[i])
            curve[month] = chances[i];
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
