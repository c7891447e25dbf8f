// CPU time of a piece of work in milliseconds. A machine that does other work adds little to it, and much to the clock's.
#pragma once

#include <algorithm>
#include <ctime>

namespace saddlerule {

inline double cpu_ms_since(std::clock_t start) {
    return 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

/// The best of three turns. A turn does the work again and again until what the clock cannot tell is less than a hundredth:
/// as wasm under Node it counts in whole milliseconds.
template <typename Work>
double cpu_ms(Work work) {
    constexpr double long_enough = 100.0;
    double best = 1e9;
    for (int turn = 0; turn < 3; ++turn) {
        const std::clock_t start = std::clock();
        int times = 0;
        do {
            work();
            ++times;
        } while (cpu_ms_since(start) < long_enough);
        best = std::min(best, cpu_ms_since(start) / times);
    }
    return best;
}

} // namespace saddlerule
