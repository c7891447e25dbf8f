// Measure: a figure that a check needs and does not have, so that somebody can go and get it.
#pragma once

#include <array>
#include <cstdint>
#include <initializer_list>
#include <string_view>

namespace saddlerule {

/// In the order in which a person with tape and scale meets them.
enum class Measure : std::uint8_t {
    saddle_lowest,
    saddle_highest,
    standover,
    bottom_bracket_height,
    seat_tube_angle,
    crank,
    lever_reach,
    brakes,
    wheel,
    chainring,
    sprocket,
    bike_mass,
    rider_mass_limit,
    rider_mass,
};

constexpr int measure_count = 14;

/// The field that would hold it: of the catalogue (`saddle_highest`, `mass_kg`) or, with `rider.` in front,
/// of the rider (`rider.mass_kg`).
std::string_view field_of(Measure measure);

/// A small set of them.
class MeasureSet {
public:
    constexpr MeasureSet() = default;
    constexpr MeasureSet(std::initializer_list<Measure> measures) {
        for (const Measure measure : measures)
            add(measure);
    }

    constexpr void add(Measure measure) { bits_ = static_cast<std::uint16_t>(bits_ | bit(measure)); }
    constexpr bool contains(Measure measure) const { return (bits_ & bit(measure)) != 0; }
    constexpr bool empty() const { return bits_ == 0; }

    /// Calls `visit` with each one in order.
    template <typename Visit>
    constexpr void for_each(Visit visit) const {
        for (int i = 0; i < measure_count; ++i) {
            if (contains(static_cast<Measure>(i)))
                visit(static_cast<Measure>(i));
        }
    }

    friend constexpr bool operator==(MeasureSet, MeasureSet) = default;

private:
    static constexpr unsigned bit(Measure measure) { return 1U << static_cast<unsigned>(measure); }

    std::uint16_t bits_ = 0;
};

} // namespace saddlerule
