// ClosedRange: the one window type of the engine, for saddle windows, spans and plausible bands.
#pragma once

#include <algorithm>
#include <optional>

namespace saddlerule {

/// All values from `low` to `high`, both included. A range with `low > high` cannot be built, so there is no
/// empty range: an intersection that is empty is `std::nullopt`.
template <typename Quantity>
class ClosedRange {
public:
    /// Nothing when `low > high`, or when either is not a number.
    static constexpr std::optional<ClosedRange> between(Quantity low, Quantity high) {
        if (!(low <= high))
            return std::nullopt;
        return ClosedRange(low, high);
    }

    constexpr Quantity low() const { return low_; }
    constexpr Quantity high() const { return high_; }
    constexpr Quantity width() const { return high_ - low_; }

    constexpr bool contains(Quantity value) const { return low_ <= value && value <= high_; }
    constexpr Quantity nearest_to(Quantity value) const { return std::clamp(value, low_, high_); }
    constexpr ClosedRange shifted_by(Quantity offset) const {
        return ClosedRange(low_ + offset, high_ + offset);
    }
    constexpr std::optional<ClosedRange> intersection(const ClosedRange& other) const {
        return between(std::max(low_, other.low_), std::min(high_, other.high_));
    }

    friend constexpr bool operator==(const ClosedRange&, const ClosedRange&) = default;

private:
    constexpr ClosedRange(Quantity low, Quantity high) : low_(low), high_(high) {}

    Quantity low_;
    Quantity high_;
};

} // namespace saddlerule
