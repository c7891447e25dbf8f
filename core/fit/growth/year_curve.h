// YearCurve: a figure tabulated at whole years of age as a smooth curve between them.
#pragma once

#include "core/fit/growth/table_figure.h"

#include <array>
#include <cstddef>

namespace saddlerule {

/// Tables run from 2 to 18 years.
inline constexpr std::size_t year_curve_knots = 17;
inline constexpr double first_table_year = 2.0;
inline constexpr double last_table_year = 18.0;

/// One column of a table.
template <typename Row>
std::array<double, year_curve_knots> column(const std::array<Row, year_curve_knots>& table,
                                            TableFigure Row::*figure) {
    std::array<double, year_curve_knots> values{};
    for (std::size_t i = 0; i < year_curve_knots; ++i)
        values[i] = table[i].*figure;
    return values;
}

/// A natural cubic spline over whole years. Below 2 years it goes on as the straight line it is there, beyond
/// 18 it keeps its last value.
class YearCurve {
public:
    /// `first_knot`: the age of the first value, where a table starts a little after 2.
    explicit YearCurve(const std::array<double, year_curve_knots>& values,
                       double first_knot = first_table_year)
        : values_(values), first_knot_(first_knot) {
        // The bends (second derivatives) solve a tridiagonal system; those at both ends are zero.
        constexpr std::size_t last = year_curve_knots - 1;
        std::array<double, year_curve_knots> factor{};
        std::array<double, year_curve_knots> partial{};
        for (std::size_t i = 1; i < last; ++i) {
            const double before = knot(i) - knot(i - 1);
            const double after = knot(i + 1) - knot(i);
            const double slopes =
                (values_[i + 1] - values_[i]) / after - (values_[i] - values_[i - 1]) / before;
            const double pivot = 2.0 * (before + after) - before * factor[i - 1];
            factor[i] = after / pivot;
            partial[i] = (6.0 * slopes - before * partial[i - 1]) / pivot;
        }
        for (std::size_t i = last - 1; i > 0; --i)
            bends_[i] = partial[i] - factor[i] * bends_[i + 1];
    }

    double at(double years) const {
        if (years >= last_table_year)
            return values_.back();
        const auto i = years < first_table_year + 1.0 ? std::size_t{0}
                                                      : static_cast<std::size_t>(years - first_table_year);
        const double width = knot(i + 1) - knot(i);
        const double b = (years - knot(i)) / width;
        const double a = 1.0 - b;
        const double straight = a * values_[i] + b * values_[i + 1];
        if (b < 0.0)
            return straight - b * bends_[1] * width * width / 6.0; // the slope at the first knot
        return straight +
               ((a * a * a - a) * bends_[i] + (b * b * b - b) * bends_[i + 1]) * width * width / 6.0;
    }

private:
    double knot(std::size_t i) const {
        return i == 0 ? first_knot_ : first_table_year + static_cast<double>(i);
    }

    std::array<double, year_curve_knots> values_;
    std::array<double, year_curve_knots> bends_{};
    double first_knot_;
};

} // namespace saddlerule
