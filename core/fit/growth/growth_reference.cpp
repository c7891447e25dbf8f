#include "core/fit/growth/growth_reference.h"

#include "core/fit/growth/leg_length_table.h"
#include "core/fit/growth/leg_share_table.h"
#include "core/fit/growth/lms_table.h"
#include "core/fit/growth/stature_table.h"
#include "core/fit/growth/weight_table.h"
#include "core/fit/growth/year_curve.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace saddlerule {
namespace {

/// The CDC table of standing height starts at 24.5 months.
constexpr double first_standing_year = 24.5 / 12.0;

/// One reference for both sexes.
template <typename Curves>
struct BothSexes {
    Curves boys;
    Curves girls;

    const Curves& of(Sex sex) const { return sex == Sex::boy ? boys : girls; }
};

class LegShareCurves {
public:
    explicit LegShareCurves(const LegShareTable& table)
        : mean_(column(table, &LegShareRow::mean)), sd_(column(table, &LegShareRow::sd)),
          first_(column(table, &LegShareRow::first_percentile)),
          last_(column(table, &LegShareRow::last_percentile)) {}

    LegShare at(double years) const {
        const double covered = std::max(years, LmsCurves::youngest);
        const double spread = sd_.at(std::max(years, first_table_year));
        return {.mean = mean_.at(covered),
                .sd = spread,
                .first_percentile = first_.at(covered),
                .last_percentile = last_.at(covered)};
    }

private:
    YearCurve mean_;
    YearCurve sd_;
    YearCurve first_;
    YearCurve last_;
};

// Worked out when they are first asked for: curves that the compiler works out take 6 kB of the packed engine.

const LmsCurves& leg_length(Sex sex) {
    static const BothSexes<LmsCurves> curves{LmsCurves(boys_leg_length), LmsCurves(girls_leg_length)};
    return curves.of(sex);
}

const LmsCurves& stature(Sex sex) {
    static const BothSexes<LmsCurves> curves{LmsCurves(boys_stature, first_standing_year),
                                             LmsCurves(girls_stature, first_standing_year)};
    return curves.of(sex);
}

const LmsCurves& weight(Sex sex) {
    static const BothSexes<LmsCurves> curves{LmsCurves(boys_weight), LmsCurves(girls_weight)};
    return curves.of(sex);
}

const LegShareCurves& leg_share(Sex sex) {
    static const BothSexes<LegShareCurves> curves{LegShareCurves(boys_leg_share),
                                                  LegShareCurves(girls_leg_share)};
    return curves.of(sex);
}

Lms<Length> length_of(const LmsRow& row) {
    return {.median = Length::millimetres(row.m), .shape = {.l = row.l, .s = row.s}};
}

} // namespace

Lms<Length> leg_length_reference(Sex sex, Days age) {
    return length_of(leg_length(sex).at(age.in_years()));
}

Lms<Length> stature_reference(Sex sex, Days age) {
    return length_of(stature(sex).at(age.in_years()));
}

Lms<Mass> weight_reference(Sex sex, Days age) {
    const LmsRow row = weight(sex).at(age.in_years());
    return {.median = Mass::kilograms(row.m), .shape = {.l = row.l, .s = row.s}};
}

LegShare leg_share_reference(Sex sex, Days age) {
    return leg_share(sex).at(age.in_years());
}

} // namespace saddlerule
