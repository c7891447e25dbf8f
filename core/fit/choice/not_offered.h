// Why a bike is not among those offered: one reason each, the weightiest.
#pragma once

#include "core/fit/choice/unbeaten_bikes.h"
#include "core/fit/choice/wants.h"
#include "core/fit/verdict/fit_verdict.h"

#include <optional>
#include <span>
#include <string_view>

namespace saddlerule {

/// From the weightiest down.
enum class NotOffered {
    not_wanted,  ///< does not answer what was asked for; wants.h says in what
    wrong_stage, ///< pedals where the rider glides, or none where the rider pedals
    too_tall,
    outgrown,
    not_measured,
    check_stops,     ///< a check says stop
    not_available,   ///< the list says that it cannot be had now
    close_call,      ///< offered only to try
    beaten,          ///< another one lasts as long, costs no more and weighs no more
    behind_in_order, ///< fits, and nothing is against it; others come first
};

/// What is known about one bike in one answer.
struct OfferFacts {
    std::span<const Unwanted> unwanted;
    bool suits_stage = true; ///< pedals where the rider pedals, none where the rider glides
    Verdict verdict = Verdict::not_measured;
    bool stopped = false; ///< a check says stop
    bool available = true;
    Standing standing = Standing::unbeaten;
    bool offered = false; ///< among those put forward
};

/// Nothing for a bike that is offered.
std::optional<NotOffered> reason_not_offered(const OfferFacts& facts);

/// The stable name: `too_tall`.
std::string_view name_of(NotOffered reason);

} // namespace saddlerule
