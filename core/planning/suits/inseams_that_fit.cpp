#include "core/planning/suits/inseams_that_fit.h"

#include "core/base/statistics/normal_distribution.h"

#include <cmath>

namespace saddlerule {
namespace {

/// Nearer to a tenth of a millimetre than this, the verdict itself is asked on which side it falls.
constexpr double doubt_mm = 1e-6;
/// An edge that many standard deviations away takes nothing from a chance, to the last bit.
constexpr double out_of_reach = 8.5;

Length from_tenths(long long tenths) {
    return Length::millimetres(static_cast<double>(tenths) / 10.0);
}

} // namespace

Length usual_reading_sd() {
    return ReadingAccuracy().reading_sd;
}

InseamFinder::InseamFinder(Stage stage, Length reading_sd)
    : offsets_(window_offsets(stage, Confidence::usual)), reading_sd_(reading_sd),
      sd_mm_(std::hypot(reading_sd.in_millimetres(), bike_measurement_sd.in_millimetres())),
      usual_depth_mm_(sd_mm_ * normal::quantile(surely)) {}

bool InseamFinder::fits(const SaddleSpan& span, long long tenths) const {
    return fit_of(span, {from_tenths(tenths), reading_sd_}, offsets_).verdict == Verdict::fits_now;
}

std::optional<double> InseamFinder::least_depth_mm(double room_mm) const {
    if (room_mm - usual_depth_mm_ > out_of_reach * sd_mm_)
        return usual_depth_mm_;
    // The chance is largest half way between the edges.
    const auto chance = [&](double depth_mm) {
        return normal::cdf(depth_mm / sd_mm_) + normal::cdf((room_mm - depth_mm) / sd_mm_) - 1.0;
    };
    double outside = 0.0;
    double inside = room_mm / 2.0;
    if (inside <= 0.0 || chance(inside) < surely)
        return std::nullopt;
    while (inside - outside > 1e-9) {
        const double middle = (inside + outside) / 2.0;
        (chance(middle) >= surely ? inside : outside) = middle;
    }
    return inside;
}

/// The first tenth at the edge or inside of it.
long long InseamFinder::settled(const SaddleSpan& span, double edge_mm, int inwards) const {
    const double tenths = edge_mm * 10.0;
    auto at = static_cast<long long>(inwards > 0 ? std::ceil(tenths) : std::floor(tenths));
    if (std::fabs(tenths - std::round(tenths)) > doubt_mm * 10.0)
        return at;
    at = std::llround(tenths);
    if (fits(span, at - inwards))
        return at - inwards;
    return fits(span, at) ? at : at + inwards;
}

std::optional<InseamRange> InseamFinder::of(const SaddleSpan& span) const {
    if (!span.lowest && !span.highest)
        return std::nullopt;
    // Of a bike with one end measured fit_of is sure where its saddle fits at that end already.
    const double lowest = (span.lowest ? *span.lowest : *span.highest).in_millimetres();
    const double highest = (span.highest ? *span.highest : *span.lowest).in_millimetres();
    const double low = offsets_.range.low().in_millimetres();
    const double high = offsets_.range.high().in_millimetres();
    const auto depth = least_depth_mm(highest - lowest + high - low);
    if (!depth)
        return std::nullopt;
    const long long from = settled(span, lowest - high + *depth, 1);
    const long long to = settled(span, highest - low - *depth, -1);
    if (from > to)
        return std::nullopt;
    InseamRange range;
    (span.lowest ? range.from : range.surely_from) = from_tenths(from);
    (span.highest ? range.to : range.surely_to) = from_tenths(to);
    return range;
}

} // namespace saddlerule
