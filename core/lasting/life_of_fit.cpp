#include "core/lasting/life_of_fit.h"

#include "core/statistics/normal_distribution.h"
#include "core/statistics/quick_normal.h"

#include <algorithm>
#include <cstddef>

namespace saddlerule {
namespace {

/// Normal scores of 10, 50 and 90 %.
constexpr double score_of_10 = -1.2815515655446004;
constexpr double score_of_90 = 1.2815515655446004;

/// A child is a score here: the share of children like this one whose legs stay shorter. Each moment has two
/// limits: children above `reach` get over the lowest saddle, those above `leave` have left the highest
/// behind for good.
struct Moment {
    double months;
    double reach;
    double leave;
};

/// The tabulated days in order, the day of a change once for each of its stages.
class Course {
public:
    Course(const FitForecast& forecast, Length lowest, Length highest) {
        for (const StageOfForecast& stage : forecast.stages()) {
            const ScoreRow reach = forecast.inseams().row_of(lowest - stage.offsets.range.high());
            const ScoreRow leave = forecast.inseams().row_of(highest - stage.offsets.range.low());
            stage_starts_[stage_count_++] = count_;
            for (std::size_t day = stage.first_day; day <= stage.last_day; ++day)
                moments_[count_++] = {forecast.months()[day], reach.on(day), leave.on(day)};
        }
        stage_starts_[stage_count_] = count_;
        for (std::size_t i = 1; i < count_; ++i)
            moments_[i].leave = std::min(moments_[i].leave, moments_[i - 1].leave);
    }

    std::size_t size() const { return count_; }
    const Moment& operator[](std::size_t i) const { return moments_[i]; }
    double end() const { return moments_[count_ - 1].months; }

    std::size_t stage_count() const { return stage_count_; }
    /// The first moment of a stage; that of the one after the last is size().
    std::size_t stage_start(std::size_t stage) const { return stage_starts_[stage]; }

private:
    std::array<Moment, most_moments> moments_{};
    std::size_t count_ = 0;
    std::array<std::size_t, most_stages + 1> stage_starts_{};
    std::size_t stage_count_ = 0;
};

/// Which of the two limits of a moment.
using Limit = double Moment::*;

/// When a child of that score passes a limit that lies above it at the moment before `i` and no longer at
/// `i`.
double passing_time(const Course& course, std::size_t i, Limit limit, double score) {
    const Moment& before = course[i - 1];
    const Moment& after = course[i];
    const double fraction = (before.*limit - score) / (before.*limit - after.*limit);
    return before.months + fraction * (after.months - before.months);
}

DateQuantiles dates_of_passing(const Course& course, Limit limit, CalendarDate today) {
    std::size_t i = 0;
    const auto date_of = [&](double score) -> std::optional<CalendarDate> {
        while (i < course.size() && course[i].*limit > score)
            ++i;
        if (i == course.size())
            return std::nullopt;
        return today.plus(Days::months(i == 0 ? 0.0 : passing_time(course, i, limit, score)));
    };
    // One in ten has passed when the limit is down at the score that nine in ten stay below.
    DateQuantiles dates;
    dates.p10 = date_of(score_of_90);
    dates.p50 = date_of(0.0);
    dates.p90 = date_of(score_of_10);
    return dates;
}

double chance_of_fitting(const Moment& moment, const QuickNormal& normal) {
    return std::max(normal.cdf(moment.leave) - normal.cdf(moment.reach), 0.0);
}

double mean_months(const Course& course) {
    const QuickNormal& normal = QuickNormal::table();
    double twice_the_sum = 0.0;
    double before = chance_of_fitting(course[0], normal);
    for (std::size_t i = 1; i < course.size(); ++i) {
        const double now = chance_of_fitting(course[i], normal);
        twice_the_sum += (before + now) * (course[i].months - course[i - 1].months);
        before = now;
    }
    return 0.5 * twice_the_sum;
}

/// A hundred children, one for each hundredth of the distribution, tallest first.
constexpr std::size_t child_count = 100;

std::array<double, child_count> scores_of_children() {
    std::array<double, child_count> scores{};
    for (std::size_t i = 0; i < child_count; ++i)
        scores[i] = normal::quantile(1.0 - (static_cast<double>(i) + 0.5) / child_count);
    return scores;
}

/// Walks down the children, each limit being passed later than by the one before.
class MonthsOfChildren {
public:
    explicit MonthsOfChildren(const Course& course) : course_(course) {
        for (std::size_t stage = 0; stage < course.stage_count(); ++stage)
            reached_[stage] = course.stage_start(stage);
    }

    double next(double score) {
        while (left_ < course_.size() && course_[left_].leave > score)
            ++left_;
        const double leaves = left_ == 0                ? 0.0
                              : left_ == course_.size() ? course_.end()
                                                        : passing_time(course_, left_, &Moment::leave, score);
        double months = 0.0;
        for (std::size_t stage = 0; stage < course_.stage_count(); ++stage)
            months += months_in(stage, score, leaves);
        return months;
    }

private:
    double months_in(std::size_t stage, double score, double leaves) {
        const std::size_t start = course_.stage_start(stage);
        const std::size_t stop = course_.stage_start(stage + 1);
        std::size_t& reached = reached_[stage];
        while (reached < stop && course_[reached].reach > score)
            ++reached;
        if (reached == stop)
            return 0.0;
        const double from =
            reached == start ? course_[start].months : passing_time(course_, reached, &Moment::reach, score);
        return std::max(std::min(leaves, course_[stop - 1].months) - from, 0.0);
    }

    const Course& course_;
    std::size_t left_ = 0;
    std::array<std::size_t, most_stages> reached_{};
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
    const auto quantile = [&](std::size_t hundredth) {
        return 0.5 * (months[hundredth - 1] + months[hundredth]);
    };
    return {.mean = mean_months(course), .p10 = quantile(10), .p50 = quantile(50), .p90 = quantile(90)};
}

} // namespace

LifeOfFit life_of_fit(const FitForecast& forecast, const SaddleSpan& span) {
    LifeOfFit life;
    if (!span.lowest && !span.highest)
        return life;
    // An unknown end borrows the other; nothing that depends on it is given.
    const Course course(forecast, span.lowest ? *span.lowest : *span.highest,
                        span.highest ? *span.highest : *span.lowest);
    const bool too_tall_today = course[0].reach > 0.0;
    if (span.lowest && too_tall_today)
        life.fits_from = dates_of_passing(course, &Moment::reach, forecast.asked_on());
    if (span.highest)
        life.outgrown = dates_of_passing(course, &Moment::leave, forecast.asked_on());
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
    for (std::size_t i = 0; i < course.size(); ++i) {
        const auto month = static_cast<std::size_t>(course[i].months);
        // A change of stage between two whole months belongs to neither; on a whole month the new stage
        // counts.
        if (static_cast<double>(month) == course[i].months)
            curve[month] = chance_of_fitting(course[i], normal);
    }
    return curve;
}

} // namespace saddlerule
