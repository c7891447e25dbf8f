// The drift filter against the same model solved as one joint normal distribution, conditioned by matrix
// algebra.
#include "core/fit/growth/drift_filter.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

struct ScoreReading {
    Days age;
    ScoreEstimate score;
};

/// Solves a x = b for a symmetric positive definite matrix, by Gauss elimination.
std::vector<double> solved(std::vector<std::vector<double>> a, std::vector<double> b) {
    const std::size_t n = b.size();
    for (std::size_t pivot = 0; pivot < n; ++pivot) {
        for (std::size_t row = pivot + 1; row < n; ++row) {
            const double factor = a[row][pivot] / a[pivot][pivot];
            for (std::size_t column = pivot; column < n; ++column)
                a[row][column] -= factor * a[pivot][column];
            b[row] -= factor * b[pivot];
        }
    }
    for (std::size_t row = n; row-- > 0;) {
        for (std::size_t column = row + 1; column < n; ++column)
            b[row] -= a[row][column] * b[column];
        b[row] /= a[row][row];
    }
    return b;
}

/// How early or late children mature: written down here once more, from the README beside the filter.
double maturing_variance(Sex sex) {
    return sex == Sex::boy ? 0.78 * 0.78 : 1.12 * 1.12;
}

/// What the readings say about the score at an age: z(a) = u(a) + tau G(a), all jointly normal. Covariances
/// are written down from the model: that of u at two ages is the prior's plus the drift up to the earlier
/// one.
ScoreEstimate conditioned(Sex sex, const std::vector<ScoreReading>& readings, Days age, double prior_mean,
                          double prior_variance) {
    const Days start = readings.front().age;
    const auto covariance = [&](Days a, Days b) {
        return prior_variance + drift_variance(sex, start, std::min(a, b)) +
               maturing_variance(sex) * maturing_curve(sex, a) * maturing_curve(sex, b);
    };
    const std::size_t n = readings.size();
    std::vector<std::vector<double>> among(n, std::vector<double>(n));
    std::vector<double> with_wanted(n);
    std::vector<double> scores(n);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < n; ++j)
            among[i][j] = covariance(readings[i].age, readings[j].age);
        among[i][i] += readings[i].score.variance;
        with_wanted[i] = covariance(readings[i].age, age);
        scores[i] = readings[i].score.mean - prior_mean;
    }
    const std::vector<double> weights = solved(among, with_wanted);
    ScoreEstimate result{.mean = prior_mean, .variance = covariance(age, age)};
    for (std::size_t i = 0; i < n; ++i) {
        result.mean += weights[i] * scores[i];
        result.variance -= weights[i] * with_wanted[i];
    }
    return result;
}

constexpr ScoreEstimate usual_legs{.mean = -0.4, .variance = 1.1 * 1.1};

std::vector<ScoreReading> some_readings(RepeatableRandom& random, int count, double from_age) {
    std::vector<ScoreReading> readings;
    double age = from_age;
    for (int i = 0; i < count; ++i) {
        readings.push_back({.age = Days::years(age),
                            .score = {.mean = random.normal(), .variance = random.uniform(0.02, 0.2)}});
        age += random.uniform(0.05, 1.5);
    }
    return readings;
}

} // namespace

// Checkpoints published with the model, to its three decimals.
TEST_CASE("the maturing curve passes its published checkpoints", "[growth]") {
    const auto at = [](Sex sex, double years) { return maturing_curve(sex, Days::years(years)); };
    CHECK(at(Sex::boy, 10) == Approx(0.085).margin(0.0006));
    CHECK(at(Sex::boy, 12) == Approx(0.405).margin(0.0006));
    CHECK(at(Sex::boy, 14) == Approx(0.325).margin(0.0006));
    CHECK(at(Sex::boy, 16) == Approx(-0.160).margin(0.0006));
    CHECK(at(Sex::boy, 18) == Approx(-0.290).margin(0.0006));
    CHECK(at(Sex::girl, 8) == Approx(0.056).margin(0.0006));
    CHECK(at(Sex::girl, 10) == Approx(0.358).margin(0.0006));
    CHECK(at(Sex::girl, 12) == Approx(0.390).margin(0.0006));
    CHECK(at(Sex::girl, 14) == Approx(-0.107).margin(0.0006));
    CHECK(at(Sex::girl, 16) == Approx(-0.288).margin(0.0006));
    CHECK(at(Sex::boy, 8) == 0.0);
    CHECK(at(Sex::boy, 3) == 0.0);
    CHECK(at(Sex::boy, 40) == Approx(at(Sex::boy, 18)));
}

TEST_CASE("drift adds up over the ages it was fitted on", "[growth]") {
    const auto between = [](Sex sex, double from, double to) {
        return drift_variance(sex, Days::years(from), Days::years(to));
    };
    const auto squared = [](double x) { return x * x; };
    CHECK(between(Sex::boy, 2, 3) == Approx(squared(0.30)));
    CHECK(between(Sex::girl, 8, 10) == Approx(2 * squared(1.12 * 0.19)));
    CHECK(between(Sex::boy, 2, 18) ==
          Approx(squared(0.30) + squared(0.25) + 2 * (squared(0.20) + squared(0.17)) +
                 2 * squared(0.78) *
                     (squared(0.16) + squared(0.13) + squared(0.19) + squared(0.16) + squared(0.27))));
    CHECK(between(Sex::girl, 9.3, 9.3) == Approx(0.0).margin(1e-12));
    CHECK(between(Sex::girl, 1, 2) == Approx(0.42 * 0.42));
    CHECK(between(Sex::girl, 18, 21) == Approx(3 * squared(1.12 * 0.05)));
    CHECK(between(Sex::girl, 21, 60) == Approx(0.0).margin(1e-12));
}

TEST_CASE("the filter agrees with joint normal conditioning over any number of readings", "[growth]") {
    RepeatableRandom random(20050812);
    for (int trial = 0; trial < 200; ++trial) {
        const Sex sex = random.even_chance() ? Sex::girl : Sex::boy;
        const auto readings = some_readings(random, 1 + trial % 7, random.uniform(2.0, 12.0));
        LegGrowth growth = LegGrowth::before_readings(sex, readings.front().age, usual_legs);
        for (const ScoreReading& reading : readings)
            growth.update(reading.age, reading.score);
        for (const double later : {0.0, 0.5, 2.0, 8.0}) {
            const Days age = readings.back().age + Days::years(later);
            const ScoreEstimate filtered = growth.at(age);
            const ScoreEstimate joint = conditioned(sex, readings, age, usual_legs.mean, usual_legs.variance);
            CHECK(filtered.mean == Approx(joint.mean).margin(1e-9));
            CHECK(filtered.variance == Approx(joint.variance).margin(1e-9));
        }
    }
}

TEST_CASE("starting from the first reading is the limit of a prior that says nothing", "[growth]") {
    RepeatableRandom random(19920711);
    for (int trial = 0; trial < 100; ++trial) {
        const Sex sex = random.even_chance() ? Sex::girl : Sex::boy;
        const auto readings = some_readings(random, 1 + trial % 4, random.uniform(2.0, 13.0));
        LegGrowth growth = LegGrowth::from_first_reading(sex, readings.front().age, readings.front().score);
        for (std::size_t i = 1; i < readings.size(); ++i)
            growth.update(readings[i].age, readings[i].score);
        const Days age = readings.back().age + Days::years(1.0);
        const ScoreEstimate joint = conditioned(sex, readings, age, 0.0, 1e6);
        CHECK(growth.at(age).mean == Approx(joint.mean).margin(1e-5));
        CHECK(growth.at(age).variance == Approx(joint.variance).margin(1e-5));
    }
}

TEST_CASE("the likelihood of a reading is the density the filter foresees for it", "[growth]") {
    LegGrowth growth = LegGrowth::before_readings(Sex::boy, Days::years(6), usual_legs);
    growth.update(Days::years(6), {.mean = 1.0, .variance = 0.1});
    const ScoreEstimate foreseen = growth.at(Days::years(7));
    double mass = 0.0;
    const double step = 0.01;
    for (double z = -8.0; z < 8.0; z += step)
        mass += step * std::exp(growth.log_likelihood(Days::years(7), {.mean = z, .variance = 0.1}));
    CHECK(mass == Approx(1.0).margin(1e-6));
    CHECK(growth.log_likelihood(Days::years(7), {.mean = foreseen.mean, .variance = 0.1}) >
          growth.log_likelihood(Days::years(7), {.mean = foreseen.mean + 0.5, .variance = 0.1}));
}

TEST_CASE("a reading pulls the estimate towards itself and narrows it", "[growth]") {
    LegGrowth growth = LegGrowth::before_readings(Sex::girl, Days::years(5), usual_legs);
    const ScoreEstimate before = growth.at(Days::years(5));
    growth.update(Days::years(5), {.mean = 2.0, .variance = 0.07});
    const ScoreEstimate after = growth.at(Days::years(5));
    CHECK(after.mean > before.mean);
    CHECK(after.mean < 2.0);
    CHECK(after.variance < before.variance);
    CHECK(after.variance < 0.07);
}
