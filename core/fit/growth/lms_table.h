// LmsTable: a published LMS reference at whole years of age, as three smooth curves.
#pragma once

#include "core/fit/growth/table_figure.h"
#include "core/fit/growth/year_curve.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace saddlerule {

struct LmsRow {
    double l;
    double m;
    double s;
};

struct LmsTableRow {
    TableFigure l;
    TableFigure m;
    TableFigure s;
};

using LmsTable = std::array<LmsTableRow, year_curve_knots>;

/// L, M and S interpolated each by itself, as the references are meant to be used.
class LmsCurves {
public:
    explicit LmsCurves(const LmsTable& table, double first_knot = first_table_year)
        : l_(column(table, &LmsTableRow::l), first_knot), m_(column(table, &LmsTableRow::m), first_knot),
          s_(column(table, &LmsTableRow::s), first_knot) {}

    /// Below 2 years M goes on as a straight line, while L and S keep their first values: the tables start
    /// there, and a child's second year is close to straight. Ages under 1 count as 1, ages over 18 as 18.
    LmsRow at(double years) const {
        const double covered = std::max(years, youngest);
        const double shaped = std::max(years, first_table_year);
        return {l_.at(shaped), m_.at(covered), s_.at(shaped)};
    }

    static constexpr double youngest = 1.0;

private:
    YearCurve l_;
    YearCurve m_;
    YearCurve s_;
};

} // namespace saddlerule
