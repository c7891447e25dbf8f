// Rota problem: riders, months and bikes as numbers: who may ride what when, and what it costs.
#pragma once

#include "core/planning/rota/worth.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace saddlerule {

/// Riders are bits of a mask in the search.
inline constexpr int most_rota_riders = 10;

/// Of a month, a rider or a year in a table: they are counted from 0.
constexpr std::size_t place_of(int number) {
    return static_cast<std::size_t>(number);
}

struct RotaBike {
    std::int64_t price = 0; ///< paid in the month of its first use; thousandths of the main unit; owned: 0
    std::int64_t net = 0;   ///< the price less what comes back in the end, 0 <= net <= price
    bool owned = false;
    bool kept = false; ///< stays in the shed after its last use
};

/// Months in a row in which a rider may ride a bike. A rider and a bike have one, or, where growth and stages leave a
/// pause, several.
struct RotaRide {
    int rider = 0;
    std::uint32_t bike = 0;
    int first = 0;
    int last = 0;            ///< included
    std::size_t chances = 0; ///< where the chances of its months begin
};

struct RotaProblem {
    int riders = 0;
    int months = 0;
    std::vector<RotaBike> bikes;
    std::vector<RotaRide> rides;
    std::vector<std::uint32_t> chances; ///< of fitting, in millionths
    std::vector<int> counted_from; ///< for each rider, the month from which a month without a bike counts

    std::vector<int> year_of_month;
    std::optional<std::int64_t> most_per_year; ///< money for purchases in a calendar year
    std::optional<int> most_bikes;             ///< in the shed in any month, those in use included

    std::int64_t chance(const RotaRide& ride, int month) const {
        return chances[ride.chances + static_cast<std::size_t>(month - ride.first)];
    }
};

/// A rider's time on a bike: from its first month to the one before `to`.
struct RotaStretch {
    int rider = 0;
    std::uint32_t bike = 0;
    int from = 0;
    int to = 0;

    friend bool operator==(const RotaStretch&, const RotaStretch&) = default;
};

/// What a plan is worth, piece by piece.
struct RotaValue {
    std::int64_t gap_months = 0;
    std::int64_t net = 0;     ///< thousandths
    std::int64_t changes = 0; ///< times somebody gets on another bike, the first one included
    std::int64_t chances = 0; ///< millionths, summed over the months

    friend bool operator==(const RotaValue&, const RotaValue&) = default;
};

/// Puts a month without a bike and money on one scale: a month outweighs all money that a plan can cost, many times.
class WorthScale {
public:
    explicit WorthScale(const RotaProblem& problem);

    std::int64_t month() const { return month_; }
    /// The bound on gap months and money that a worth says. A rest beyond all money is another month.
    RotaValue lowest(RotaWorth worth) const;
    RotaValue value(RotaWorth worth) const;

private:
    std::int64_t all_money_ = 0;
    std::int64_t month_ = 1;
};

/// In order of rider and month.
using Rota = std::vector<RotaStretch>;

RotaValue value_of(const RotaProblem& problem, const Rota& rota);

/// For every bike the month of its first use and the month after its last one; nothing where it is not used.
struct BikeUse {
    int from = 0;
    int to = 0;
};
std::vector<std::optional<BikeUse>> uses_of(const RotaProblem& problem, const Rota& rota);

/// Whether a rota keeps every rule: for tests, and before a plan is given out.
bool keeps_rules(const RotaProblem& problem, const Rota& rota);

} // namespace saddlerule
