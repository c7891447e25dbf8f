// strtod for the shipped engine. The C library's own reads figures in emulated 128-bit arithmetic, and with it a list in JSON
// takes three times as long to read; its caller here is nlohmann_json's reader.
#include "core/base/json/nearest_double.h"

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
}
