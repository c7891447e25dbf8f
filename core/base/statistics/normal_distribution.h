// The standard normal distribution: the only distribution the engine computes with.
#pragma once

namespace saddlerule::normal {

/// P(Z <= z). Error below 1e-15 absolutely (through the C library's erfc).
double cdf(double z);

/// The z with P(Z <= z) = p, for 0 < p < 1; minus or plus infinity at 0 and 1, NaN outside. Error below 1e-13
/// relative for 1e-300 < p < 1 - 1e-12: Acklam's rational start, then Halley steps on the cdf.
double quantile(double p);

/// The same to 1.2e-9 relative, without the polish and several times as fast, for 0 < p < 1 only.
double rough_quantile(double p);

/// The density at z.
double density(double z);

} // namespace saddlerule::normal
