#include "core/fit/growth/growth_reference.h"

#include "core/fit/growth/leg_length_table.h"
#include "core/fit/growth/lms_table.h"
#include "core/fit/growth/population_table.h"
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

/// Leg lengths below 3 years. The Dutch table grows 66 and 69 mm there, where British children grow 51 and 52 and those of the US
/// survey 45 from 2.5 to 3.5: from 2 to 3 the median follows the British one, at the Dutch level at 3. Under 2 it goes on as
/// fast as the Dutch table, which is about what shorter legs of more growing children do (from memory: 280 mm at 1).
class LegLengthCurves {
public:
    LegLengthCurves(const LmsTable& published, double british_growth_to_three)
        : growth_under_two_(published[1].m - published[0].m),
          curves_(with_growth_to_three(published, british_growth_to_three)) {}

    LmsRow at(double years) const {
        LmsRow row = curves_.at(std::max(years, first_table_year));
        const double before = first_table_year - std::max(years, LmsCurves::youngest);
        if (before > 0.0)
            row.m -= growth_under_two_ * before;
        return row;
    }

private:
    static LmsTable with_growth_to_three(LmsTable table, double factor) {
        table[0].m = TableFigure(table[1].m / factor);
        return table;
    }

    double growth_under_two_;
    LmsCurves curves_;
};

// Worked out when they are first asked for: curves that the compiler works out take 6 kB of the packed engine.

const LegLengthCurves& leg_length(Sex sex) {
    static const BothSexes<LegLengthCurves> curves{
        LegLengthCurves(boys_leg_length, boys_gb_legs[1] / boys_gb_legs[0]),
        LegLengthCurves(girls_leg_length, girls_gb_legs[1] / girls_gb_legs[0])};
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

} // namespace saddlerule
