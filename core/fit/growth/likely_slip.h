// Likely slip: what went wrong with a length that is hard to believe, if the usual mistakes explain it.
#pragma once

#include "core/base/outcomes/problem_figure.h"
#include "core/base/quantities/length.h"

#include <optional>

namespace saddlerule {

/// Inseams that are easy to believe: most likely in the middle, hardly any outside the ends.
struct PlausibleBand {
    Length low;
    Length middle;
    Length high;

    /// 0 in the middle, 1 at either end, above 1 outside.
    double oddness(Length inseam) const;
};

struct LikelySlip {
    ProblemWord word;
    std::optional<Length> corrected;
};

/// The first of the usual slips that puts the inseam well inside the band.
LikelySlip likely_slip(Length inseam, bool shoes, Length sole, const PlausibleBand& band);

} // namespace saddlerule
