// LayeredCost: a cost with several layers, of which a later one matters only where all before it are equal.
//
// Whole numbers, compared layer by layer, add up exactly and keep their order when something is added to both sides. That is all
// an assignment needs of its costs, so no layer has to be squeezed into another one's rounding.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace saddlerule {

class LayeredCost {
public:
    static constexpr std::size_t layers = 5;

    constexpr LayeredCost() = default;
    constexpr explicit LayeredCost(const std::array<std::int64_t, layers>& amounts) : amounts_(amounts) {}

    constexpr std::int64_t layer(std::size_t index) const { return amounts_[index]; }

    friend constexpr LayeredCost operator+(LayeredCost a, const LayeredCost& b) {
        for (std::size_t i = 0; i < layers; ++i)
            a.amounts_[i] += b.amounts_[i];
        return a;
    }
    friend constexpr LayeredCost operator-(LayeredCost a, const LayeredCost& b) {
        for (std::size_t i = 0; i < layers; ++i)
            a.amounts_[i] -= b.amounts_[i];
        return a;
    }
    friend constexpr bool operator<(const LayeredCost& a, const LayeredCost& b) {
        for (std::size_t i = 0; i < layers; ++i) {
            if (a.amounts_[i] != b.amounts_[i])
                return a.amounts_[i] < b.amounts_[i];
        }
        return false;
    }
    friend constexpr bool operator==(const LayeredCost&, const LayeredCost&) = default;

private:
    std::array<std::int64_t, layers> amounts_{};
};

} // namespace saddlerule
