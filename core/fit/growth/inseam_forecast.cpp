#include "core/fit/growth/inseam_forecast.h"

#include "core/base/sorting/sorting.h"
#include "core/base/statistics/normal_distribution.h"
#include "core/base/statistics/quick_normal.h"
#include "core/fit/growth/growth_reference.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace saddlerule {
namespace {

constexpr double coarse_step_mm = 8.0;
constexpr std::size_t most_coarse_points = 400;
constexpr double shortest_leg_mm = 50.0;

/// The time since the newest reading, during which legs did not shrink, is looked at on so many days.
constexpr int looks_back = 24;

/// How one hypothesis sees leg lengths on one day: the score of a leg is a power of it, stretched and
/// shifted.
class LegScorer {
public:
    LegScorer(const GrowthHypothesis& hypothesis, double months, double measuring_sd_mm) {
        const Days age = hypothesis.age_today + Days::months(months);
        const ScoreEstimate legs = hypothesis.legs.at(age);
        reference_ = leg_length_reference(hypothesis.sex, age);
        mean_ = legs.mean;
        const double at_mean = std::max(leg_at(0.0), shortest_leg_mm);
        const double slope = reference_.shape.slope(at_mean / median_mm()) / median_mm();
        sd_ = std::sqrt(legs.variance + measuring_sd_mm * measuring_sd_mm * slope * slope);

        const auto& [l, s] = reference_.shape;
        stretch_ = std::exp(-l * std::log(median_mm())) / (l * s * sd_);
        shift_ = -(1.0 / (l * s) + mean_) / sd_;
    }

    /// In standard deviations of this hypothesis. Leg length references have L well above zero.
    double score(double log_leg_mm) const {
        return stretch_ * std::exp(reference_.shape.l * log_leg_mm) + shift_;
    }
    double leg_at(double score) const { return reference_.value(mean_ + sd_ * score).in_millimetres(); }

private:
    double median_mm() const { return reference_.median.in_millimetres(); }

    Lms<Length> reference_;
    double mean_ = 0.0;
    double sd_ = 0.0;
    double stretch_ = 0.0;
    double shift_ = 0.0;
};

InseamGrid grid_for(const RiderGrowth& growth, double first_month, double measuring_sd_mm, int horizon) {
    double lowest = 1e9;
    double highest = 0.0;
    for (const GrowthHypothesis& hypothesis : growth.hypotheses()) {
        const LegScorer start(hypothesis, first_month, measuring_sd_mm);
        lowest = std::min(lowest, start.leg_at(-farthest_score));
        for (int month = 0; month <= horizon; month += 12) {
            const LegScorer later(hypothesis, month, measuring_sd_mm);
            highest = std::max(highest, later.leg_at(farthest_score));
        }
    }
    lowest = std::max(lowest, shortest_leg_mm);
    highest = std::max(highest, lowest) + 2.0 * coarse_step_mm;
    const double step = std::max(coarse_step_mm, (highest - lowest) / (most_coarse_points - 1));
    return {.lowest = growth.sole() + Length::millimetres(lowest),
            .step = Length::millimetres(step),
            .count = static_cast<std::size_t>(std::ceil((highest - lowest) / step)) + 1};
}

/// The mixture of all hypotheses, day by day, on the coarse grid.
class Mixture {
public:
    Mixture(const RiderGrowth& growth, const InseamGrid& grid, double measuring_sd_mm)
        : hypotheses_(growth.hypotheses()), measuring_sd_mm_(measuring_sd_mm), scores_(grid.count),
          lowest_yet_(grid.count, farthest_score) {
        for (std::size_t i = 0; i < grid.count; ++i)
            log_legs_.push_back(std::log((grid.at(i) - growth.sole()).in_millimetres()));
    }

    /// Scores of the next day, none above that of a day before: who has passed a length stays past it.
    const std::vector<double>& next_day(double months) {
        if (hypotheses_.size() == 1)
            score_one(months);
        else
            score_many(months);
        for (std::size_t i = 0; i < scores_.size(); ++i)
            lowest_yet_[i] = std::min(lowest_yet_[i], scores_[i]);
        return lowest_yet_;
    }

private:
    void score_one(double months) {
        const LegScorer scorer(hypotheses_.front(), months, measuring_sd_mm_);
        for (std::size_t i = 0; i < scores_.size(); ++i)
            scores_[i] = std::clamp(scorer.score(log_legs_[i]), -farthest_score, farthest_score);
    }

    void score_many(double months) {
        std::fill(scores_.begin(), scores_.end(), 0.0);
        double surely_below = 0.0; // the weight of hypotheses that are wholly below a grid point
        below_from_.assign(scores_.size(), 0.0);
        for (const GrowthHypothesis& hypothesis : hypotheses_)
            add(hypothesis, months);
        for (std::size_t i = 0; i < scores_.size(); ++i) {
            surely_below += below_from_[i];
            const double probability = std::clamp(scores_[i] + surely_below, rarest, 1.0 - rarest);
            scores_[i] = std::clamp(normal::rough_quantile(probability), -farthest_score, farthest_score);
        }
    }

    void add(const GrowthHypothesis& hypothesis, double months) {
        const LegScorer scorer(hypothesis, months, measuring_sd_mm_);
        const auto first_above = [&](double score) {
            const double leg = std::max(scorer.leg_at(score), 1.0);
            const auto found = std::lower_bound(log_legs_.begin(), log_legs_.end(), std::log(leg));
            return static_cast<std::size_t>(found - log_legs_.begin());
        };
        const std::size_t end = first_above(farthest_score);
        for (std::size_t i = first_above(-farthest_score); i < end; ++i)
            scores_[i] += hypothesis.weight * quick_.cdf(scorer.score(log_legs_[i]));
        if (end < scores_.size())
            below_from_[end] += hypothesis.weight;
    }

    static constexpr double rarest = 1e-9;

    const std::vector<GrowthHypothesis>& hypotheses_;
    double measuring_sd_mm_;
    const QuickNormal& quick_ = QuickNormal::table();
    std::vector<double> log_legs_;
    std::vector<double> scores_;
    std::vector<double> below_from_;
    std::vector<double> lowest_yet_;
};

std::vector<double> tabulated_months(CalendarDate today, const std::vector<CalendarDate>& also_on,
                                     int horizon) {
    std::vector<double> months;
    for (int month = 0; month <= horizon; ++month)
        months.push_back(month);
    for (const CalendarDate day : also_on) {
        const double month = (day - today).in_months();
        if (month > 0.0 && month < horizon)
            months.push_back(month);
    }
    insertion_sort(months);
    months.erase(std::unique(months.begin(), months.end()), months.end());
    return months;
}

ScoreTable tabulated(const RiderGrowth& growth, const std::vector<double>& months, Length measuring_sd,
                     int horizon) {
    const double measuring_sd_mm = measuring_sd.in_millimetres();
    const double known_since = (growth.known_since() - growth.asked_on()).in_months();
    const InseamGrid grid = grid_for(growth, known_since, measuring_sd_mm, horizon);
    Mixture mixture(growth, grid, measuring_sd_mm);
    if (known_since < 0.0) {
        const int looks = std::clamp(static_cast<int>(-known_since), 1, looks_back);
        for (int look = 0; look < looks; ++look)
            mixture.next_day(known_since * (1.0 - static_cast<double>(look) / looks));
    }
    ScoreTable table(grid, months.size());
    for (std::size_t day = 0; day < months.size(); ++day)
        table.set_day(day, mixture.next_day(months[day]));
    return table;
}

} // namespace

InseamDistribution::InseamDistribution(const InseamGrid& grid, std::vector<double> scores)
    : grid_(grid), scores_(std::move(scores)) {
    // Moments of the probability in each cell, about the cell's middle; Sheppard's correction for the cell's
    // width.
    double mass = 0.0;
    double first = 0.0;
    double second = 0.0;
    for (std::size_t i = 0; i + 1 < scores_.size(); ++i) {
        const double part = normal::cdf(scores_[i + 1]) - normal::cdf(scores_[i]);
        const double middle = static_cast<double>(i) + 0.5;
        mass += part;
        first += part * middle;
        second += part * middle * middle;
    }
    const double mean = first / mass;
    mean_ = grid_.lowest + grid_.step * mean;
    sd_ = grid_.step * std::sqrt(std::max(second / mass - mean * mean - 1.0 / 12.0, 0.0));
}

Length InseamDistribution::quantile(double p) const {
    const double score = std::clamp(normal::quantile(p), scores_.front(), scores_.back());
    const auto above = std::lower_bound(scores_.begin() + 1, scores_.end() - 1, score);
    const double low = *(above - 1);
    const double rise = *above - low;
    const double fraction = rise > 0.0 ? (score - low) / rise : 0.0;
    return grid_.lowest + grid_.step * (static_cast<double>(above - 1 - scores_.begin()) + fraction);
}

double InseamDistribution::probability_below(Length inseam) const {
    const auto last = static_cast<double>(scores_.size() - 1);
    const double at = std::clamp((inseam - grid_.lowest) / grid_.step, 0.0, last);
    const auto i = std::min(static_cast<std::size_t>(at), scores_.size() - 2);
    const double score = scores_[i] + (at - static_cast<double>(i)) * (scores_[i + 1] - scores_[i]);
    return normal::cdf(score);
}

InseamForecast::InseamForecast(const RiderGrowth& growth) : InseamForecast(growth, Length(), {}) {}

InseamForecast::InseamForecast(const RiderGrowth& growth, Length measuring_sd,
                               const std::vector<CalendarDate>& also_on, int horizon)
    : asked_on_(growth.asked_on()), months_(tabulated_months(asked_on_, also_on, horizon)),
      table_(tabulated(growth, months_, measuring_sd, horizon)) {}

InseamDistribution InseamForecast::at(CalendarDate day) const {
    const double month = std::clamp((day - asked_on_).in_months(), months_.front(), months_.back());
    const auto next = std::lower_bound(months_.begin() + 1, months_.end() - 1, month);
    const auto above = static_cast<std::size_t>(next - months_.begin());
    const double fraction = (month - months_[above - 1]) / (months_[above] - months_[above - 1]);

    const InseamGrid& grid = table_.grid();
    std::vector<double> scores;
    scores.reserve(grid.count);
    for (std::size_t i = 0; i < grid.count; ++i) {
        const ScoreRow row = table_.row_of(grid.at(i));
        const double before = row.on(above - 1);
        scores.push_back(before + fraction * (row.on(above) - before));
    }
    return {grid, std::move(scores)};
}

} // namespace saddlerule
