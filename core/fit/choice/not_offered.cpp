#include "core/fit/choice/not_offered.h"

#include <array>

namespace saddlerule {
namespace {

std::optional<NotOffered> reason_in(Verdict verdict) {
    switch (verdict) {
    case Verdict::too_tall:
        return NotOffered::too_tall;
    case Verdict::outgrown:
        return NotOffered::outgrown;
    case Verdict::not_measured:
        return NotOffered::not_measured;
    case Verdict::fits_now:
    case Verdict::close_call:
        break;
    }
    return std::nullopt;
}

} // namespace

std::optional<NotOffered> reason_not_offered(const OfferFacts& facts) {
    if (facts.offered)
        return std::nullopt;
    if (!facts.unwanted.empty())
        return NotOffered::not_wanted;
    if (!facts.suits_stage)
        return NotOffered::wrong_stage;
    if (const auto reason = reason_in(facts.verdict))
        return reason;
    if (facts.stopped)
        return NotOffered::check_stops;
    if (!facts.available)
        return NotOffered::not_available;
    if (facts.verdict == Verdict::close_call)
        return NotOffered::close_call;
    return facts.standing == Standing::unbeaten ? NotOffered::behind_in_order : NotOffered::beaten;
}

std::string_view name_of(NotOffered reason) {
    constexpr std::array<std::string_view, 10> names{
        "not_wanted",  "wrong_stage",   "too_tall",   "outgrown", "not_measured",
        "check_stops", "not_available", "close_call", "beaten",   "behind_in_order"};
    return names[static_cast<std::size_t>(reason)];
}

} // namespace saddlerule
