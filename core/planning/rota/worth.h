// Rota worth: how good a plan is, as whole numbers that add up month by month and are compared from the first to the last.
#pragma once

#include <compare>
#include <cstdint>

namespace saddlerule {

/// Less is better. `major` holds months without a bike and money, `minor` changes of bike and chances of fitting; see
/// WorthScale. Worths add up and are ordered, and that is all that shortest paths and bounds need.
struct RotaWorth {
    std::int64_t major = 0;
    std::int64_t minor = 0;

    friend constexpr RotaWorth operator+(RotaWorth a, RotaWorth b) {
        return {a.major + b.major, a.minor + b.minor};
    }
    friend constexpr RotaWorth operator-(RotaWorth a, RotaWorth b) {
        return {a.major - b.major, a.minor - b.minor};
    }
    constexpr RotaWorth& operator+=(RotaWorth other) { return *this = *this + other; }
    constexpr RotaWorth& operator-=(RotaWorth other) { return *this = *this - other; }

    friend constexpr bool operator==(RotaWorth, RotaWorth) = default;
    friend constexpr bool operator<(RotaWorth a, RotaWorth b) {
        return a.major != b.major ? a.major < b.major : a.minor < b.minor;
    }
    friend constexpr bool operator>(RotaWorth a, RotaWorth b) { return b < a; }
    friend constexpr bool operator<=(RotaWorth a, RotaWorth b) { return !(b < a); }
    friend constexpr bool operator>=(RotaWorth a, RotaWorth b) { return !(a < b); }
};

/// Worse than any plan, and far enough from the end of the numbers that a few may be added.
inline constexpr RotaWorth worst{std::int64_t{1} << 60, 0};

/// Chances are counted in millionths.
inline constexpr std::int64_t sure_chance = 1'000'000;

/// What one change of bike weighs beside chances: more than all chances of a plan together (ten riders for ten years are
/// 1.2e9 millionths).
inline constexpr std::int64_t change_weight = std::int64_t{1} << 31;

} // namespace saddlerule
