// Rider against bike: does the saddle reach the rider's window, how surely, and where to set it.
#pragma once

#include "core/base/quantities/length.h"
#include "core/fit/bike/bike.h"
#include "core/fit/verdict/saddle_window.h"

#include <optional>

namespace saddlerule {

/// What is known of the inseam in shoes on some day: a normal distribution.
struct InseamEstimate {
    Length mean;
    Length sd;
};

/// The heights a bike's saddle can be at, as far as they were measured. At least one is known.
struct SaddleSpan {
    std::optional<Length> lowest;
    std::optional<Length> highest;

    static SaddleSpan of(const Bike& bike) { return {bike.saddle_lowest, bike.saddle_highest}; }
};

enum class Verdict {
    fits_now,
    close_call, ///< try it with the child
    too_tall,   ///< or, of a short span under a wide doubt, more likely that than outgrown
    outgrown,
    not_measured, ///< the end of the span that was not measured decides
};

/// Where to set the saddle: the point of span and window nearest the target.
struct SaddleSetting {
    Length above_floor;
    std::optional<Length> above_lowest;
    std::optional<Length> below_highest;
};

struct Fit {
    Verdict verdict = Verdict::not_measured;
    /// That the saddle can be inside the window, given the errors of reading and bike. Absent when not
    /// measured.
    std::optional<double> probability;
    /// How far inside the nearer edge; negative: how far it misses. Absent when not measured.
    std::optional<Length> margin;
    /// When the bike fits or is a close call, and its span, as measured, meets the window.
    std::optional<SaddleSetting> setting;
};

/// Error of one measurement on a bike, one standard deviation (assumption).
constexpr Length bike_measurement_sd = Length::millimetres(5.0);

/// Between these two probabilities, both excluded, nobody should rely on figures: the child has to try.
constexpr double surely_not = 0.2;
constexpr double surely = 0.8;

/// The verdict for a bike whose span, window offsets and rider are given.
///
/// The probability is P(lowest <= window high) + P(highest >= window low) - 1. It is exact but for the chance
/// that a bike is too tall and outgrown at once; with spans and windows that are at least 10 mm and 35 mm
/// wide together, and a reading's sd of 8 mm, that is below 0.001.
///
/// An end that was not measured leaves the probability between two bounds (a highest saddle is at least the
/// lowest). When both bounds lead to the same verdict that one is given with the cautious bound, and
/// not_measured otherwise.
Fit fit_of(const SaddleSpan& span, const InseamEstimate& inseam, const WindowOffsets& offsets);

} // namespace saddlerule
