// ScoreTable: P(inseam <= x) on many days at once, kept as normal scores on an even grid of inseams.
#pragma once

#include "core/base/quantities/length.h"

#include <cstddef>
#include <vector>

namespace saddlerule {

/// An even grid of inseams.
struct InseamGrid {
    Length lowest;
    Length step;
    std::size_t count = 0;

    Length at(std::size_t i) const { return lowest + step * static_cast<double>(i); }
};

/// No score is farther out: one chance in a thousand million.
inline constexpr double farthest_score = 6.0;

/// Scores of one inseam on every day of a table, straight between two grid points.
struct ScoreRow {
    const double* below;
    const double* above;
    double fraction;

    double on(std::size_t day) const { return below[day] + fraction * (above[day] - below[day]); }
};

/// A normal score s stands for the probability Phi(s). Scores of a growth forecast are close to straight in
/// the inseam, so that few grid points do: they rise with the inseam and fall from day to day, and so does
/// everything between them.
class ScoreTable {
public:
    /// An empty table for a grid that is `refinement` times as fine as the one its days are given on.
    ScoreTable(const InseamGrid& coarse, std::size_t days);

    /// Fills in a day, after the ones before it: one score for each point of the coarse grid, rising with the
    /// inseam and none above that of the day before. Between the points a monotone cubic.
    void set_day(std::size_t day, const std::vector<double>& coarse_scores);

    std::size_t days() const { return days_; }
    const InseamGrid& grid() const { return grid_; }

    /// Inseams off the grid take its nearest end.
    ScoreRow row_of(Length inseam) const;

    static constexpr std::size_t refinement = 4;

private:
    InseamGrid grid_;
    std::size_t days_;
    std::vector<double> scores_; ///< all days of one inseam together
};

} // namespace saddlerule
