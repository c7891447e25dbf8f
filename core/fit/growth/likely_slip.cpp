#include "core/fit/growth/likely_slip.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace saddlerule {
namespace {

using namespace literals;

/// A correction must land at least this far inside the band to be worth naming.
constexpr double easy_to_believe = 0.75;
/// Shoes change little, so they are named where they bring the reading inside at all.
constexpr double believable = 1.0;

/// By how much the seam of a pair of trousers is usually shorter than the inside leg: it hangs below the
/// crotch and ends above the floor (common practice, from memory).
constexpr Length seam_shortfall = 75_mm;

/// The length with two neighbouring digits of its millimetres swapped, if that is easier to believe than
/// anything else of the kind. A swap in the centimetres is one in the millimetres too.
std::optional<Length> with_digits_swapped(Length inseam, const PlausibleBand& band) {
    std::optional<Length> best;
    const long figure = std::lround(inseam.in_millimetres());
    for (long place = 1; place * 10 <= figure; place *= 10) {
        const long low = figure / place % 10;
        const long high = figure / (place * 10) % 10;
        const long swapped = figure + (low - high) * place * 10 + (high - low) * place;
        const Length candidate = Length::millimetres(static_cast<double>(swapped));
        if (low != high && (!best || band.oddness(candidate) < band.oddness(*best)))
            best = candidate;
    }
    return best;
}

} // namespace

double PlausibleBand::oddness(Length inseam) const {
    return inseam < middle ? (middle - inseam) / (middle - low) : (inseam - middle) / (high - middle);
}

LikelySlip likely_slip(Length inseam, bool shoes, Length sole, const PlausibleBand& band) {
    const bool short_side = inseam < band.middle;
    const auto within = [&](Length corrected, double oddness) { return band.oddness(corrected) <= oddness; };

    struct Factor {
        double factor;
        ProblemWord word;
    };
    const std::array<Factor, 4> factors{{
        {0.1, ProblemWord::mm_as_cm},
        {10.0, ProblemWord::cm_as_mm},
        {1.0 / 2.54, ProblemWord::cm_as_inches},
        {2.54, ProblemWord::inches_as_cm},
    }};
    for (const auto& [factor, word] : factors) {
        if (within(inseam * factor, easy_to_believe))
            return {word, inseam * factor};
    }
    if (shoes && short_side && within(inseam + sole, believable))
        return {ProblemWord::shoes_off, inseam + sole};
    if (!shoes && !short_side && within(inseam - sole, believable))
        return {ProblemWord::shoes_on, inseam - sole};
    if (short_side && within(inseam + seam_shortfall, easy_to_believe))
        return {ProblemWord::trouser_seam, {}};
    const auto swapped = with_digits_swapped(inseam, band);
    if (swapped && within(*swapped, easy_to_believe))
        return {ProblemWord::digits_swapped, swapped};
    return {ProblemWord::misread, {}};
}

} // namespace saddlerule
