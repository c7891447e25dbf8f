// Wants: what the family asks of a bike beside the fit, and why a bike does not answer it.
#pragma once

#include "core/base/quantities/mass.h"
#include "core/base/quantities/money.h"
#include "core/fit/bike/bike.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

enum class BrakeWish { any, two_hand, coaster };
enum class KindWish { any, pedal, balance };
enum class GearsWish { any, single, several };

enum class Order {
    lasts,   ///< longest use first
    cost,    ///< least cost a month first
    light,   ///< lightest first
    closest, ///< lowest saddle nearest the target from below (common practice)
};

struct Wants {
    std::optional<Amount> max_price; ///< in the currency of each bike's own price
    std::optional<Mass> max_mass;
    BrakeWish brakes = BrakeWish::any;
    KindWish kind = KindWish::any;
    GearsWish gears = GearsWish::any;
    bool available_only = false;
    std::optional<double> wheel_nominal_inches;
    std::optional<std::string> colour; ///< compared without regard to case (ASCII letters)
    bool off_road = false;             ///< asks for more room above the top tube; leaves no bike out
    Order order = Order::lasts;
};

/// Why a bike is left out. What is not known does not count as wanted: a limit on price leaves out bikes
/// without one.
enum class Unwanted {
    price_over,
    price_unknown,
    mass_over,
    mass_unknown,
    brakes,
    brakes_unknown,
    kind,
    not_available,
    wheel,
    colour,
    gears,
    gears_unknown,
};

constexpr std::size_t unwanted_count = 12;

/// The name on the wire.
std::string_view name_of(Unwanted reason);

/// What each reason comes from. A bike has at most one reason of each.
enum class Filter { price, mass, brakes, kind, available, wheel, colour, gears };

constexpr std::size_t filter_count = 8;

Filter filter_of(Unwanted reason);

/// Whether the bike is what is wished; one of which that is not known is not, unless any will do.
bool answers(const Bike& bike, BrakeWish wish);
bool answers(const Bike& bike, KindWish wish);
bool answers(const Bike& bike, GearsWish wish);
/// A list that does not say whether a bike is there is a list of bikes that are there.
bool is_available(const Bike& bike);

/// Every reason why the bike is not wanted; none when it is.
std::vector<Unwanted> reasons_against(const Bike& bike, const Wants& wants);

} // namespace saddlerule
