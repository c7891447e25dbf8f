// Riders left: why somebody has no bike, and how near one came.
#pragma once

#include "core/base/quantities/length.h"
#include "core/fit/verdict/fit_verdict.h"

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace saddlerule {

/// From what is nearest to a bike down to what is furthest.
enum class LeftBecause {
    not_measured, ///< nothing is known of the rider's size
    all_taken,    ///< bikes would fit, and others ride them
    ruled_out,    ///< the ones that would fit are not for this rider: somebody said so
    away,         ///< the ones that would fit are absent
    check_stops,  ///< the saddle of one would suit, and a check says stop
    none_fits,
};

/// `not_measured`, `all_taken` and so on.
std::string_view name_of(LeftBecause reason);

/// How a bike misses a rider.
struct NearestMiss {
    std::size_t bike = 0;
    Verdict verdict = Verdict::not_measured;
    Length by; ///< zero where it is within both edges, and too narrow to be sure
};

struct RiderLeft {
    std::size_t rider = 0;
    LeftBecause because = LeftBecause::not_measured;
    /// The bikes that the reason is about.
    std::vector<std::size_t> bikes;
    /// Of none_fits: the bike that comes nearest, where one of the right kind is there and measured.
    std::optional<NearestMiss> nearest;
    /// Of none_fits: bikes that might fit, of which the end that decides was not measured.
    std::vector<std::size_t> to_measure;
};

} // namespace saddlerule
