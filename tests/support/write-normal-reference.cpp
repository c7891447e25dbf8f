// Writes tests/core/base/statistics/normal_reference.h from Boost.Math. To run again:
//   g++ -std=c++20 tests/support/write-normal-reference.cpp -o /tmp/write && /tmp/write >
//   tests/core/base/statistics/normal_reference.h
#include <boost/math/distributions/normal.hpp>

#include <boost/version.hpp>
#include <cstdio>

int main() {
    const boost::math::normal_distribution<double> standard;
    std::printf("// Written by tests/support/write-normal-reference.cpp with Boost.Math %d.%d (Debian "
                "libboost-math-dev).\n",
                BOOST_VERSION / 100000, BOOST_VERSION / 100 % 1000);
    std::printf("#pragma once\n\n// clang-format off\n");
    std::printf("struct NormalPair { double argument; double value; };\n\n");
    std::printf("constexpr NormalPair normal_cdf_reference[] = {\n");
    for (int i = -64; i <= 64; ++i)
        std::printf("    {%.17g, %.17g},\n", i / 8.0, boost::math::cdf(standard, i / 8.0));
    std::printf("};\n\nconstexpr NormalPair normal_quantile_reference[] = {\n");
    for (const double p : {1e-300, 1e-100, 1e-30, 1e-15, 1e-10, 1e-6, 1e-4, 0.024, 0.0243, 0.025})
        std::printf("    {%.17g, %.17g},\n", p, boost::math::quantile(standard, p));
    for (int i = 1; i < 100; ++i)
        std::printf("    {%.17g, %.17g},\n", i / 100.0, boost::math::quantile(standard, i / 100.0));
    for (const double p : {0.9999, 0.999999, 1.0 - 1e-9})
        std::printf("    {%.17g, %.17g},\n", p, boost::math::quantile(standard, p));
    std::printf("};\n// clang-format on\n");
}
