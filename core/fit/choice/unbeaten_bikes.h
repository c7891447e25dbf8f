// The bikes that no other beats on length of use, price and mass at once (the Pareto set), and why each is
// worth a look.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/mass.h"
#include "core/base/quantities/money.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace saddlerule {

/// What is against a bike, whatever its figures say.
struct AgainstABike {
    bool stopped = false; ///< a check says stop: such a bike beats nobody
    bool close_call = false;
    bool unavailable = false;
    bool pauses = false; ///< there is a time in which it does not fit
};

/// What the choice is made on. A figure that is not known counts as the worst there is: it never beats a
/// known one, and two unknown ones are equal. Prices in different currencies are not compared: neither bike
/// beats the other. Nor does a bike beat one that is free of something that is against it.
struct ChoiceFigures {
    std::optional<Days> lasts;
    std::optional<Money> price;
    std::optional<Mass> mass;
    AgainstABike against;
};

enum class Standing {
    unbeaten,               ///< nothing else is at least as good in all and better in one
    beaten,                 ///< all its figures are known
    beaten_as_far_as_known, ///< a figure is missing that might still save it
};

/// Why an unbeaten bike is worth a look, among those with nothing more against them. More than one may hold; ties count for
/// all who share them.
enum class Worth {
    lasts_longest,
    cheapest, ///< of its currency
    lightest,
    balance,            ///< none of these: whatever beats it in one thing is behind in another
    nothing_to_compare, ///< none of its figures is known, nor any of the others
};

struct ChoiceStanding {
    Standing standing = Standing::unbeaten;
    std::vector<Worth> worth;             ///< of an unbeaten bike, never empty
    std::optional<std::size_t> beaten_by; ///< index of one unbeaten bike that beats it
};

/// One standing per bike, in the given order. Time grows as n log n.
std::vector<ChoiceStanding> choice_standings(std::span<const ChoiceFigures> bikes);

/// The stable name: `unbeaten`.
std::string_view name_of(Standing standing);

/// The stable name: `lasts_longest`.
std::string_view name_of(Worth worth);

} // namespace saddlerule
