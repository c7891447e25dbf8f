#include "core/fit/growth/score_table.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

/// The slope at a point between two rises, so that a cubic through it overshoots nowhere: their harmonic mean
/// (Fritsch and Butland, SIAM J Sci Stat Comput 1984;5:300-304).
double monotone_slope(double rise_before, double rise_after) {
    const double product = rise_before * rise_after;
    return product > 0.0 ? 2.0 * product / (rise_before + rise_after) : 0.0;
}

} // namespace

ScoreTable::ScoreTable(const InseamGrid& coarse, std::size_t days)
    : grid_{.lowest = coarse.lowest,
            .step = coarse.step / static_cast<double>(refinement),
            .count = (coarse.count - 1) * refinement + 1},
      days_(days), scores_(grid_.count * days) {}

void ScoreTable::set_day(std::size_t day, const std::vector<double>& coarse_scores) {
    // A smooth curve through points that fell may still rise a little between them; that is cut off.
    const auto put = [&](std::size_t point, double score) {
        double* days = scores_.data() + point * days_;
        days[day] = day > 0 ? std::min(score, days[day - 1]) : score;
    };
    const std::size_t last = coarse_scores.size() - 1;
    const auto rise = [&](std::size_t i) { return coarse_scores[i + 1] - coarse_scores[i]; };
    double slope_here = rise(0);
    for (std::size_t i = 0; i < last; ++i) {
        const double slope_there = i + 1 < last ? monotone_slope(rise(i), rise(i + 1)) : rise(i);
        const double quadratic = 3.0 * rise(i) - 2.0 * slope_here - slope_there;
        const double cubic = slope_here + slope_there - 2.0 * rise(i);
        for (std::size_t part = 0; part < refinement; ++part) {
            const double t = static_cast<double>(part) / static_cast<double>(refinement);
            put(i * refinement + part, coarse_scores[i] + t * (slope_here + t * (quadratic + t * cubic)));
        }
        slope_here = slope_there;
    }
    put(last * refinement, coarse_scores[last]);
}

ScoreRow ScoreTable::row_of(Length inseam) const {
    const auto last = static_cast<double>(grid_.count - 1);
    const double at = std::clamp((inseam - grid_.lowest) / grid_.step, 0.0, last);
    const auto point = std::min(static_cast<std::size_t>(at), grid_.count - 2);
    const double* below = scores_.data() + point * days_;
    return {.below = below, .above = below + days_, .fraction = at - static_cast<double>(point)};
}

} // namespace saddlerule
