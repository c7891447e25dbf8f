// The exponential function without a table, for the shipped engine: a C library's own brings 2 kB that nothing packs.
#pragma once

namespace saddlerule {

/// e to the power of `x`, at most one unit in the last place off what is nearest. Infinite beyond the largest double, zero below
/// half of the smallest, and not a number of what is none.
double exponential(double x);

} // namespace saddlerule
