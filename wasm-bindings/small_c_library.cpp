// Functions of the C library as the shipped engine needs them. The library's own read figures in 128-bit arithmetic and
// print every form of them, which takes 10 kB of the packed engine; their one caller is nlohmann_json's reader. For sines of
// angles beyond a million it brings along the digits of two by pi, for exponentials a table of them, which nothing packs: 5 kB.
#include "core/base/json/nearest_double.h"
#include "core/base/statistics/exponential.h"

#include <cstddef>
#include <cstring>

extern "C" {

/// Of a figure and nothing behind it, which is all that JSON hands over.
double strtod(const char* __restrict figure, char** __restrict end) {
    const std::size_t length = std::strlen(figure);
    if (end)
        *end = const_cast<char*>(figure) + length;
    return saddlerule::nearest_double({figure, length});
}

float strtof(const char* __restrict figure, char** __restrict end) {
    return static_cast<float>(strtod(figure, end));
}

long double strtold(const char* __restrict figure, char** __restrict end) {
    return strtod(figure, end);
}

/// What the library's sines and cosines call for such angles, of which there are none: the engine's come from lines of a bike.
// NOLINTNEXTLINE(bugprone-reserved-identifier)
int __rem_pio2_large(double* /*angle*/, double* /*rest*/, int /*exponent*/, int /*parts*/,
                     int /*precision*/) {
    __builtin_trap();
}

double exp(double x) {
    return saddlerule::exponential(x);
}

/// Prints nothing: the reader's own words for a fault are read by nobody (see core/base/json/json_fault.h).
int snprintf(char* __restrict text, std::size_t size, const char* __restrict /*form*/, ...) {
    if (size > 0)
        *text = '\0';
    return 0;
}
}
