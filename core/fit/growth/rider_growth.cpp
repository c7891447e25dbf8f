#include "core/fit/growth/rider_growth.h"

#include "core/fit/growth/growth_limits.h"
#include "core/fit/growth/growth_reference.h"
#include "core/fit/growth/inseams_of_age.h"
#include "core/fit/growth/population.h"
#include "core/fit/growth/rider_history.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <optional>

namespace saddlerule {
namespace {

/// Steps between the ages that are tried where none is known. The legs of children of one age spread over a year
/// of growth or more, so finer steps change nothing (the tests measure it).
constexpr double longest_guess_step = 0.5;
/// Weights that make the sum over the steps an integral: Gregory's rule, one elsewhere.
constexpr std::array<double, 3> end_weights{3.0 / 8.0, 7.0 / 6.0, 23.0 / 24.0};

using namespace growth_limits;

/// A reading as the growth model takes it.
struct LegScore {
    ScoreEstimate score;
    double log_slope = 0.0; ///< turns a density per score into one per millimetre
};

LegScore leg_score(Sex sex, Days age, Length leg, Length sd) {
    const Lms<Length> reference = leg_length_reference(sex, age);
    const double ratio = std::max(leg, shortest_leg) / reference.median;
    const double slope = reference.shape.slope(ratio);
    const double score_sd = std::max(sd, least_reading_sd) / reference.median * slope;
    return {.score = {.mean = reference.shape.score(ratio), .variance = score_sd * score_sd},
            .log_slope = std::log(slope / reference.median.in_millimetres())};
}

/// A leg length with its spread, where the score is normal and the spread small.
struct LegEstimate {
    Length mean;
    Length sd;
};

LegEstimate leg_estimate(Sex sex, Days age, ScoreEstimate score) {
    const Lms<Length> reference = leg_length_reference(sex, age);
    const double shortest = shortest_leg / reference.median;
    const double ratio = std::max(reference.shape.ratio(score.mean), shortest);
    return {.mean = reference.median * ratio,
            .sd = reference.median * (std::sqrt(score.variance) / reference.shape.slope(ratio))};
}

/// A sex and the age on the day the question is about.
struct Candidate {
    Sex sex = Sex::girl;
    Days age_today;
    double prior = 1.0;
};

std::vector<Candidate> candidates(const Rider& rider, std::optional<Days> age_today, Days since_newest,
                                  Days since_oldest) {
    std::vector<Candidate> all;
    const auto add = [&](Days age, double prior) {
        for (const Sex possible : {Sex::girl, Sex::boy}) {
            if (!rider.sex || *rider.sex == possible)
                all.push_back({.sex = possible, .age_today = age, .prior = prior});
        }
    };
    if (age_today) {
        add(*age_today, 1.0);
        return all;
    }
    // Nobody is measured before the first birthday.
    const Days first = rider.stage == Stage::gliding ? youngest_glider : youngest_pedaller;
    const double youngest =
        std::max(first.in_years(), 1.0 + since_oldest.in_years() - since_newest.in_years());
    const double oldest = std::max(oldest_guess.in_years(), youngest);
    const int steps = static_cast<int>(std::ceil((oldest - youngest) / longest_guess_step));
    const double step = steps > 0 ? (oldest - youngest) / steps : 0.0;
    for (int i = 0; i <= steps; ++i) {
        const auto from_an_end = static_cast<std::size_t>(std::min(i, steps - i));
        const double prior = from_an_end < end_weights.size() ? end_weights[from_an_end] : 1.0;
        add(Days::years(youngest + step * i) + since_newest, prior);
    }
    return all;
}

/// A hypothesis while its weight is still a logarithm.
struct Weighed {
    GrowthHypothesis hypothesis;
    double log_weight = 0.0;
    double farthest_score = 0.0; ///< of any reading, in size
    double error_shown = 1.0;    ///< variance of the readings' errors as they show it, by the one assumed
};

/// How far the readings of one child contradict each other: what is between each and what the ones before
/// foresee, against the error of the readings and the doubt of the growth between them.
class Disagreement {
public:
    void add(double off, double reading_variance, double growth_variance) {
        squares_ += off * off;
        of_readings_ += reading_variance;
        of_growth_ += std::max(growth_variance, 0.0);
    }
    /// The variance of the readings' errors that explains it all, in terms of the one assumed.
    double error_shown() const { return of_readings_ > 0.0 ? (squares_ - of_growth_) / of_readings_ : 0.0; }

private:
    double squares_ = 0.0;
    double of_readings_ = 0.0;
    double of_growth_ = 0.0;
};

/// By how much to widen the variance of readings that show such an error. Up to two standard deviations are chance and
/// change nothing; of contradictions beyond, the whole is taken for error.
double widened(double error_shown) {
    return std::max(1.0, error_shown - (beyond_chance * beyond_chance - 1.0));
}

Weighed from_readings(const Candidate& candidate, const std::vector<DayReading>& days, CalendarDate today,
                      const Rider& rider, double widening) {
    Weighed result{.hypothesis = {.sex = candidate.sex,
                                  .age_today = candidate.age_today,
                                  .weight = 1.0,
                                  .legs = {},
                                  .unpulled = {}},
                   .log_weight = std::log(candidate.prior),
                   .farthest_score = 0.0,
                   .error_shown = 1.0};
    GrowthHypothesis& hypothesis = result.hypothesis;
    Disagreement disagreement;
    Days age_before;
    for (const DayReading& day : days) {
        const bool first = &day == &days.front();
        const Days age = candidate.age_today - (today - day.on);
        const LegScore leg =
            leg_score(candidate.sex, age, day.inseam - rider.accuracy.sole, day.sd * std::sqrt(widening));
        if (first)
            hypothesis.legs = LegGrowth::before_readings(
                candidate.sex, age, legs_before_reading(rider.population, candidate.sex, age));
        result.log_weight += hypothesis.legs.log_likelihood(age, leg.score) + leg.log_slope;
        result.farthest_score = std::max(result.farthest_score, std::fabs(leg.score.mean));
        hypothesis.legs.update(age, leg.score);
        if (first) {
            hypothesis.unpulled = LegGrowth::from_first_reading(candidate.sex, age, leg.score);
        } else {
            const double known_before = hypothesis.unpulled.at(age_before).variance;
            const ScoreEstimate foreseen = hypothesis.unpulled.at(age);
            disagreement.add(leg.score.mean - foreseen.mean, leg.score.variance + known_before,
                             foreseen.variance - known_before);
            hypothesis.unpulled.update(age, leg.score);
        }
        age_before = age;
    }
    result.error_shown = disagreement.error_shown();
    return result;
}

Weighed from_stature(const Candidate& candidate, Length stature, const Rider& rider) {
    const Lms<Length> reference = stature_reference(candidate.sex, candidate.age_today);
    const double ratio = stature / reference.median;
    const double score = reference.shape.score(ratio);
    const double log_slope = std::log(reference.shape.slope(ratio) / reference.median.in_millimetres());

    const LegShare share = leg_share(rider.population, candidate.sex, candidate.age_today);
    const double leg_sd = std::hypot(
        std::hypot((stature * share.sd).in_millimetres(), (stature_sd * share.mean).in_millimetres()),
        rider.accuracy.sole_sd.in_millimetres(), crotch_doubt.in_millimetres());
    const LegScore leg =
        leg_score(candidate.sex, candidate.age_today, stature * share.mean, Length::millimetres(leg_sd));
    // The share already is what is known of this child's legs: the prior would count the same thing twice.
    const LegGrowth legs = LegGrowth::from_first_reading(candidate.sex, candidate.age_today, leg.score);
    return {.hypothesis = {.sex = candidate.sex,
                           .age_today = candidate.age_today,
                           .weight = 1.0,
                           .legs = legs,
                           .unpulled = legs},
            .log_weight = std::log(candidate.prior) - 0.5 * score * score + log_slope,
            .farthest_score = std::fabs(score),
            .error_shown = 1.0};
}

Weighed from_age(const Candidate& candidate, const Rider& rider) {
    const ScoreEstimate prior = inseam_before_reading(rider, candidate.sex, candidate.age_today);
    const LegGrowth legs = LegGrowth::before_readings(candidate.sex, candidate.age_today, prior);
    return {.hypothesis = {.sex = candidate.sex,
                           .age_today = candidate.age_today,
                           .weight = 1.0,
                           .legs = legs,
                           .unpulled = legs},
            .log_weight = std::log(candidate.prior),
            .farthest_score = 0.0,
            .error_shown = 1.0};
}

bool none_possible(const std::vector<Weighed>& all) {
    return std::all_of(all.begin(), all.end(),
                       [](const Weighed& one) { return one.farthest_score > impossible_score; });
}

/// Shares of one instead of logarithms.
std::vector<double> shares_of_one(const std::vector<Weighed>& all) {
    double top = all.front().log_weight;
    for (const Weighed& one : all)
        top = std::max(top, one.log_weight);
    double sum = 0.0;
    std::vector<double> shares;
    for (const Weighed& one : all) {
        shares.push_back(std::exp(one.log_weight - top));
        sum += shares.back();
    }
    for (double& share : shares)
        share /= sum;
    return shares;
}

/// What the readings show of their own error, for everything the rider may be: a contradiction that one likely age
/// explains is none.
double mean_error_shown(const std::vector<Weighed>& all) {
    const std::vector<double> shares = shares_of_one(all);
    double mean = 0.0;
    for (std::size_t i = 0; i < all.size(); ++i)
        mean += shares[i] * all[i].error_shown;
    return mean;
}

/// The negligible ones go.
std::vector<GrowthHypothesis> weighted(const std::vector<Weighed>& all) {
    const std::vector<double> shares = shares_of_one(all);
    std::vector<GrowthHypothesis> kept;
    double kept_sum = 0.0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (shares[i] < negligible_weight)
            continue;
        kept.push_back(all[i].hypothesis);
        kept.back().weight = shares[i];
        kept_sum += shares[i];
    }
    for (GrowthHypothesis& hypothesis : kept)
        hypothesis.weight /= kept_sum;
    return kept;
}

} // namespace

RiderGrowth RiderGrowth::of(const Rider& rider, CalendarDate today) {
    const RiderHistory history = rider_history(rider, today);
    const bool measured = !history.days.empty();
    const CalendarDate newest = measured ? history.days.back().on : today;
    const CalendarDate oldest = measured ? history.days.front().on : today;

    RiderGrowth growth(today, newest, rider.accuracy.sole);
    growth.basis_ = measured        ? InseamBasis::measured
                    : rider.stature ? InseamBasis::estimated_from_stature
                                    : InseamBasis::estimated_from_age;

    if (measured)
        growth.unscored_ =
            std::max(Length(), shortest_leg - (history.days.back().inseam - rider.accuracy.sole));

    const auto weigh = [&](std::optional<Days> age_today, double widening) {
        std::vector<Weighed> all;
        for (const Candidate& candidate : candidates(rider, age_today, today - newest, today - oldest)) {
            switch (growth.basis_) {
            case InseamBasis::measured:
                all.push_back(from_readings(candidate, history.days, today, rider, widening));
                break;
            case InseamBasis::estimated_from_stature:
                all.push_back(from_stature(candidate, *rider.stature, rider));
                break;
            case InseamBasis::estimated_from_age:
                all.push_back(from_age(candidate, rider));
                break;
            }
        }
        return all;
    };
    std::optional<Days> age_today;
    if (history.born)
        age_today = today - *history.born;
    std::vector<Weighed> all = weigh(age_today, 1.0);
    if (age_today && none_possible(all)) {
        age_today.reset();
        all = weigh(age_today, 1.0);
    }
    if (history.days.size() > 1) {
        const double widening = widened(mean_error_shown(all));
        if (widening > 1.0)
            all = weigh(age_today, widening);
    }
    growth.hypotheses_ = weighted(all);
    return growth;
}

InseamToday RiderGrowth::today() const {
    // Legs do not shrink: no hypothesis falls back behind its own estimate on the day of the newest reading.
    const auto leg_of = [&](const GrowthHypothesis& one) {
        LegEstimate leg = leg_estimate(one.sex, one.age_today, one.unpulled.at(one.age_today));
        const Days age_then = one.age_today - (asked_on_ - known_since_);
        leg.mean = std::max(leg.mean, leg_estimate(one.sex, age_then, one.unpulled.at(age_then)).mean);
        return leg;
    };
    Length mean;
    for (const GrowthHypothesis& one : hypotheses_)
        mean += leg_of(one).mean * one.weight;
    double variance = 0.0;
    for (const GrowthHypothesis& one : hypotheses_) {
        const LegEstimate leg = leg_of(one);
        const double off = (leg.mean - mean).in_millimetres();
        const double sd = leg.sd.in_millimetres();
        variance += one.weight * (sd * sd + off * off);
    }
    return {
        .mean = mean + sole_ - unscored_, .sd = Length::millimetres(std::sqrt(variance)), .basis = basis_};
}

bool RiderGrowth::less_certain_for_young_child() const {
    return std::any_of(hypotheses_.begin(), hypotheses_.end(), [](const GrowthHypothesis& one) {
        return one.age_today < validated_from && one.weight > 0.1;
    });
}

} // namespace saddlerule
