// Functions of the C library as the shipped engine needs them. The library's own read figures in 128-bit arithmetic and
// print every form of them, which takes 10 kB of the packed engine. Their one caller is nlohmann_json's reader.
#include "core/json/nearest_double.h"

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

/// Prints nothing: the reader's own words for a fault are read by nobody (see core/json/json_fault.h).
int snprintf(char* __restrict text, std::size_t size, const char* __restrict /*form*/, ...) {
    if (size > 0)
        *text = '\0';
    return 0;
}
}
