#include "core/fit/growth/population.h"

#include "core/fit/growth/growth_limits.h"
#include "core/fit/growth/growth_reference.h"
#include "core/fit/growth/leg_length_table.h"
#include "core/fit/growth/leg_share_table.h"
#include "core/fit/growth/population_table.h"
#include "core/fit/growth/year_curve.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace saddlerule {
namespace {

constexpr Population countries[] = {Population::us, Population::gb, Population::nl};

struct Normal {
    double mean;
    double sd;
};

/// Everything tabulated of the children of one sex.
class CountryCurves {
public:
    CountryCurves(const SurveyedLegsTable& us, const MedianTable& gb, double gb_spread, const LmsTable& nl,
                  const LegShareTable& nl_share)
        : us_leg_(column(us, &SurveyedLegsRow::leg)), us_leg_sd_(column(us, &SurveyedLegsRow::leg_sd)),
          us_share_(column(us, &SurveyedLegsRow::share)),
          us_share_sd_(column(us, &SurveyedLegsRow::share_sd)), gb_leg_(values(gb)), gb_spread_(gb_spread),
          nl_leg_(column(nl, &LmsTableRow::m)), nl_spread_(column(nl, &LmsTableRow::s)),
          nl_share_(column(nl_share, &LegShareRow::mean)), nl_share_sd_(column(nl_share, &LegShareRow::sd)),
          nl_share_first_(column(nl_share, &LegShareRow::first_percentile)),
          nl_share_last_(column(nl_share, &LegShareRow::last_percentile)) {}

    /// Leg length in millimetres around its median.
    Normal leg(Population country, double years) const {
        switch (country) {
        case Population::us:
            return {us_leg_.at(years), us_leg_sd_.at(years)};
        case Population::gb:
            return {gb_leg_.at(years), gb_leg_.at(years) * gb_spread_};
        case Population::nl:
        case Population::any:
            break;
        }
        return {nl_leg_.at(years), nl_leg_.at(years) * nl_spread_.at(years)};
    }

    LegShare share(Population country, double years, Length median_stature) const {
        if (country == Population::nl)
            return {.mean = nl_share_.at(years),
                    .sd = nl_share_sd_.at(years),
                    .first_percentile = nl_share_first_.at(years),
                    .last_percentile = nl_share_last_.at(years)};
        const double mean = country == Population::us ? us_share_.at(years)
                                                      : gb_leg_.at(years) / median_stature.in_millimetres();
        const double sd = us_share_sd_.at(years);
        return {.mean = mean,
                .sd = sd,
                .first_percentile = mean - growth_limits::last_percentile * sd,
                .last_percentile = mean + growth_limits::last_percentile * sd};
    }

private:
    static std::array<double, year_curve_knots> values(const MedianTable& table) {
        std::array<double, year_curve_knots> plain{};
        std::copy(table.begin(), table.end(), plain.begin());
        return plain;
    }

    YearCurve us_leg_;
    YearCurve us_leg_sd_;
    YearCurve us_share_;
    YearCurve us_share_sd_;
    YearCurve gb_leg_;
    double gb_spread_;
    YearCurve nl_leg_;
    YearCurve nl_spread_;
    YearCurve nl_share_;
    YearCurve nl_share_sd_;
    YearCurve nl_share_first_;
    YearCurve nl_share_last_;
};

const CountryCurves& curves_of(Sex sex) {
    // Worked out when they are first asked for, as the references are.
    static const CountryCurves boys(boys_us_legs, boys_gb_legs, boys_gb_spread, boys_leg_length,
                                    boys_leg_share);
    static const CountryCurves girls(girls_us_legs, girls_gb_legs, girls_gb_spread, girls_leg_length,
                                     girls_leg_share);
    return sex == Sex::boy ? boys : girls;
}

Days tabulated_age(Days age) {
    return std::clamp(age, Days::years(first_table_year), Days::years(last_table_year));
}

/// An even mixture, collected one by one.
class EvenMixture {
public:
    void add(double mean, double variance) {
        means_ += mean;
        squares_ += mean * mean + variance;
        ++count_;
    }
    double mean() const { return means_ / count_; }
    double variance() const { return squares_ / count_ - mean() * mean(); }

private:
    double means_ = 0.0;
    double squares_ = 0.0;
    double count_ = 0.0;
};

LegShare share_of_country(Population country, Sex sex, Days age) {
    return curves_of(sex).share(country, age.in_years(), stature_reference(sex, age).median);
}

} // namespace

ScoreEstimate legs_of_population(Population population, Sex sex, Days age) {
    const Days covered = tabulated_age(age);
    if (population == Population::any) {
        EvenMixture mixture;
        for (const Population country : countries) {
            const ScoreEstimate legs = legs_of_population(country, sex, covered);
            mixture.add(legs.mean, legs.variance);
        }
        return {.mean = mixture.mean(), .variance = mixture.variance()};
    }
    const Normal leg = curves_of(sex).leg(population, covered.in_years());
    const Lms<Length> reference = leg_length_reference(sex, covered);
    const double ratio = Length::millimetres(leg.mean) / reference.median;
    const double sd = Length::millimetres(leg.sd) / reference.median * reference.shape.slope(ratio);
    return {.mean = reference.shape.score(ratio), .variance = sd * sd};
}

ScoreEstimate legs_before_reading(Population population, Sex sex, Days age) {
    const ScoreEstimate legs = legs_of_population(population, sex, age);
    const Lms<Length> reference = leg_length_reference(sex, age);
    const double doubt =
        crotch_doubt / reference.median * reference.shape.slope(reference.shape.ratio(legs.mean));
    return {.mean = legs.mean, .variance = legs.variance + doubt * doubt};
}

LegShare leg_share(Population population, Sex sex, Days age) {
    const Days covered = tabulated_age(age);
    if (population != Population::any)
        return share_of_country(population, sex, covered);
    EvenMixture mixture;
    LegShare any{.mean = 0.0, .sd = 0.0, .first_percentile = 1.0, .last_percentile = 0.0};
    for (const Population country : countries) {
        const LegShare share = share_of_country(country, sex, covered);
        mixture.add(share.mean, share.sd * share.sd);
        any.first_percentile = std::min(any.first_percentile, share.first_percentile);
        any.last_percentile = std::max(any.last_percentile, share.last_percentile);
    }
    any.mean = mixture.mean();
    any.sd = std::sqrt(mixture.variance());
    return any;
}

} // namespace saddlerule
