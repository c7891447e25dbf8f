// Inseams that fit: the verdict turned round. From a bike and a way of riding to the inside legs that it fits now.
#pragma once

#include "core/base/quantities/length.h"
#include "core/fit/rider/rider.h"
#include "core/fit/verdict/fit_verdict.h"

#include <optional>

namespace saddlerule {

/// Inseams in shoes. An end that is absent was not measured: the bike may fit further than is known.
struct InseamRange {
    std::optional<Length> from;
    std::optional<Length> to;
    /// The longest inseam known to fit where `to` is absent, and the shortest where `from` is. Absent: none is known for sure.
    std::optional<Length> surely_from;
    std::optional<Length> surely_to;
};

/// How surely a rider's inseam is known: one home reading, unless somebody knows better.
Length usual_reading_sd();

/// Turns the verdict of one way of riding round, for readings of one accuracy.
class InseamFinder {
public:
    InseamFinder(Stage stage, Length reading_sd);

    /// The shortest and the longest inseam, in tenths of a millimetre as answers give lengths, of which fit_of says `fits_now`;
    /// a tenth beyond either it says something else. Nothing where the range of the saddle is too short for any rider to be sure, or
    /// where nothing was measured.
    std::optional<InseamRange> of(const SaddleSpan& span) const;

private:
    bool fits(const SaddleSpan& span, long long tenths) const;
    /// How far inside the nearer edge an inseam must be, where saddle and window together leave `room` between both edges.
    std::optional<double> least_depth_mm(double room_mm) const;
    long long settled(const SaddleSpan& span, double edge_mm, int inwards) const;

    WindowOffsets offsets_;
    Length reading_sd_;
    double sd_mm_;
    double usual_depth_mm_;
};

} // namespace saddlerule
