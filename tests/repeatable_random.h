// Repeatable random numbers: the same on every machine and in every build, so that a simulation is a test.
#pragma once

#include "core/base/statistics/normal_distribution.h"

#include <cstdint>

namespace saddlerule::testing {

/// SplitMix64 (Steele, Lea and Flood, OOPSLA 2014).
class RepeatableRandom {
public:
    explicit RepeatableRandom(std::uint64_t seed) : state_(seed) {}

    /// Strictly between 0 and 1.
    double uniform() { return (static_cast<double>(next() >> 11) + 0.5) / 9007199254740992.0; }
    double uniform(double low, double high) { return low + (high - low) * uniform(); }
    double normal() { return normal::quantile(uniform()); }
    bool even_chance() { return uniform() < 0.5; }

private:
    std::uint64_t next() {
        state_ += 0x9e3779b97f4a7c15ULL;
        std::uint64_t mixed = state_;
        mixed = (mixed ^ (mixed >> 30)) * 0xbf58476d1ce4e5b9ULL;
        mixed = (mixed ^ (mixed >> 27)) * 0x94d049bb133111ebULL;
        return mixed ^ (mixed >> 31);
    }

    std::uint64_t state_;
};

} // namespace saddlerule::testing
