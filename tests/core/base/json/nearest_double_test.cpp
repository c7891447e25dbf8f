// Figures as doubles. The outside check is the C library's strtod, which rounds as IEEE 754 wants it (glibc and musl).
#include "core/base/json/nearest_double.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <limits>
#include <string>

using saddlerule::nearest_double;
using saddlerule::testing::RepeatableRandom;

namespace {

std::uint64_t bits_of(double value) {
    std::uint64_t bits = 0;
    std::memcpy(&bits, &value, sizeof bits);
    return bits;
}

void check_beside_library(const std::string& figure) {
    CAPTURE(figure);
    CHECK(bits_of(nearest_double(figure)) == bits_of(std::strtod(figure.c_str(), nullptr)));
}

std::uint64_t below(RepeatableRandom& random, double limit) {
    return static_cast<std::uint64_t>(random.uniform() * limit);
}

std::string printed(const char* form, double value) {
    std::string text(1200, '\0');
    text.resize(static_cast<std::size_t>(std::snprintf(text.data(), text.size(), form, value)));
    return text;
}

} // namespace

TEST_CASE("figures of every form are the doubles that the C library makes of them", "[json]") {
    for (const char* figure : {"0",
                               "-0",
                               "0.0",
                               "-0.000e5",
                               "1",
                               "-1",
                               "49.5",
                               "305",
                               "0.1",
                               "16.299999999999997",
                               "1e22",
                               "1e23",
                               "-1E-22",
                               "1e+308",
                               "1.7976931348623157e308",
                               "1.7976931348623158e308",
                               "1.7976931348623159e308",
                               "1e309",
                               "-1e400",
                               "123456789012345678901234567890",
                               "9007199254740993",
                               "9007199254740992.5",
                               "2.2250738585072014e-308",
                               "2.2250738585072011e-308",
                               "4.9406564584124654e-324",
                               "2.4703282292062327e-324",
                               "2.4703282292062328e-324",
                               "2e-324",
                               "1e-400",
                               "1e999999999999",
                               "1e-999999999999",
                               "0e999999999999",
                               "0.00000000000000000000000001e30"})
        check_beside_library(figure);
}

TEST_CASE("figures at random are the doubles that the C library makes of them", "[json]") {
    RepeatableRandom random(20261125);
    for (int round = 0; round < 20'000; ++round) {
        std::string figure = random.uniform() < 0.5 ? "-" : "";
        const auto digits = 1 + below(random, 30.0);
        const auto point = below(random, static_cast<double>(digits) * 2.0);
        for (std::uint64_t i = 0; i < digits; ++i) {
            figure += static_cast<char>('0' + below(random, 10.0));
            if (i == point && i + 1 < digits)
                figure += '.';
        }
        if (random.uniform() < 0.7)
            figure += 'e' + std::to_string(static_cast<int>(random.uniform() * 700.0) - 350);
        check_beside_library(figure);
    }
}

TEST_CASE("what is halfway between two doubles, and a last digit beside it, is rounded as the C library does",
          "[json]") {
    RepeatableRandom random(7);
    for (int round = 0; round < 1'000; ++round) {
        std::uint64_t bits = static_cast<std::uint64_t>(random.uniform() * 0x1p32) << 32U;
        bits |= static_cast<std::uint64_t>(random.uniform() * 0x1p32);
        bits &= std::numeric_limits<std::uint64_t>::max() >> 1U; // no sign
        double lower = 0.0;
        std::memcpy(&lower, &bits, sizeof lower);
        if (!std::isfinite(lower) || lower > 1e300)
            continue;
        if (round % 3 == 0)
            lower = std::ldexp(1.0 + random.uniform(), -1'060); // below the smallest that is normal
        // The figure of 53 bits and one more, written out: a long double holds it where that is wide enough.
        const double upper = std::nextafter(lower, std::numeric_limits<double>::infinity());
        check_beside_library(printed("%.17g", lower));
        check_beside_library(printed("%.1100f", lower + (upper - lower) / 2.0));
        check_beside_library(printed("%.766e", lower));
        const std::string longer = printed("%.800e", lower);
        check_beside_library(longer.substr(0, longer.find('e')) + "1" + longer.substr(longer.find('e')));
    }
    // 2^53 + 1 and neighbours of the smallest double: halfway, a trifle more, a trifle less.
    for (const std::string& halfway : {std::string("9007199254740993"), std::string("9007199254740995")}) {
        check_beside_library(halfway + "." + std::string(900, '0'));
        check_beside_library(halfway + "." + std::string(900, '0') + "1");
        check_beside_library(halfway.substr(0, 15) + (halfway.back() == '3' ? "2" : "4") + "." +
                             std::string(900, '9'));
    }
}
