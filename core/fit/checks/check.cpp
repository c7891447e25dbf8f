#include "core/fit/checks/check.h"

#include "core/fit/checks/each_check.h"

#include <algorithm>
#include <array>

namespace saddlerule {
namespace {

constexpr std::array checks{
#define SADDLERULE_CHECK(name, source) Check{#name, source, each_check::name},
#include "core/fit/checks/check_list.inc"
#undef SADDLERULE_CHECK
};

} // namespace

CheckedRider CheckedRider::of(const Rider& rider, Length inseam_in_shoes,
                              std::optional<EstimatedMass> estimated_mass) {
    return {.inseam_in_shoes = inseam_in_shoes,
            .inseam_without_shoes = inseam_in_shoes - rider.accuracy.sole,
            .sole = rider.accuracy.sole,
            .guessed_inseam_sd = {},
            .stature = rider.stature,
            .mass = rider.mass,
            .estimated_mass = estimated_mass,
            .off_road = false};
}

namespace {

/// The normal score of nine in ten.
constexpr double score_of_nine_in_ten = 1.2815515655446004;

} // namespace

Length CheckedRider::short_inseam_in_shoes() const {
    const Length least = 0.5 * inseam_in_shoes; // of a guess so wide that it says nothing
    return std::max(inseam_in_shoes - score_of_nine_in_ten * guessed_inseam_sd.value_or(Length()), least);
}

Length CheckedRider::long_inseam_in_shoes() const {
    return inseam_in_shoes + score_of_nine_in_ten * guessed_inseam_sd.value_or(Length());
}

std::string_view name_of(CheckState state) {
    constexpr std::array<std::string_view, 4> names{"ok", "look", "stop", "unknown"};
    return names[static_cast<std::size_t>(state)];
}

std::string_view name_of(FindingBasis basis) {
    constexpr std::array<std::string_view, 4> names{"measured", "estimated_rider_mass", "estimated_stature",
                                                    "estimated_inseam"};
    return names[static_cast<std::size_t>(basis)];
}

std::span<const Check> all_checks() {
    return checks;
}

void check_bike(const CheckCase& checked, std::vector<CheckResult>& results) {
    results.clear();
    results.reserve(checks.size());
    for (const Check& check : checks) {
        if (const auto finding = check.judge(checked))
            results.push_back({.check = &check, .finding = *finding});
    }
}

std::vector<CheckResult> check_bike(const CheckCase& checked) {
    std::vector<CheckResult> results;
    check_bike(checked, results);
    return results;
}

} // namespace saddlerule
