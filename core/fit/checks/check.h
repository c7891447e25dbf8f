// The one interface of every check beyond the saddle: a rider and a bike in, a finding out.
//
// How to add a check: its file in each/ (with its line in CMakeLists.txt), its line in check_list.inc, its
// reasons in check_reason.h with their codes in check_reason.cpp and their sentences in wasm-bindings/english.json, and its test.
#pragma once

#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/fit/bike/bike.h"
#include "core/fit/checks/check_reason.h"
#include "core/fit/checks/figure.h"
#include "core/fit/checks/measure.h"
#include "core/fit/rider/rider.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// What stands in for the weight of a rider who was not weighed: the reference median for age and sex (CDC
/// 2000 growth charts). Half of all children weigh more.
struct EstimatedMass {
    Mass median;
};

/// The rider as the checks need it. Worked out once, used for every bike.
struct CheckedRider {
    Length inseam_in_shoes; ///< both inseams are above zero
    Length inseam_without_shoes;
    Length sole; ///< of the shoes
    /// How far the inseam may be off, as a standard deviation, where it is a guess; a measured one is taken as it is.
    std::optional<Length> guessed_inseam_sd;
    std::optional<Length> stature;
    std::optional<Mass> mass;
    std::optional<EstimatedMass> estimated_mass; ///< used where `mass` is absent, and said so
    bool off_road = false;                       ///< asks for more room above the top tube

    /// All of it from the rider and the inseam in shoes that the fit was judged with.
    static CheckedRider of(const Rider& rider, Length inseam_in_shoes,
                           std::optional<EstimatedMass> estimated_mass);

    /// The inseam in shoes of a child with shorter or longer legs than nine in ten of those that it may be; of a measured
    /// one the inseam itself.
    Length short_inseam_in_shoes() const;
    Length long_inseam_in_shoes() const;
};

/// One rider on one bike.
struct CheckCase {
    const CheckedRider& rider;
    const Bike& bike;
    std::optional<Length> saddle_setting; ///< floor to top of saddle; absent while the saddle cannot be set
};

enum class CheckState : std::uint8_t {
    ok,
    look,    ///< have a look at it before you decide
    stop,    ///< stop and think: as it is, the bike is not for this rider
    unknown, ///< a figure is missing; never counts as ok
};

/// `ok`, `look`, `stop`, `unknown`.
std::string_view name_of(CheckState state);

/// What a figure is held against. Both ends may be absent.
struct CheckLimit {
    std::optional<Figure> at_least;
    std::optional<Figure> at_most;
};

/// A further figure of the reason, by the name it has in the sentence.
struct NamedFigure {
    std::string_view name;
    Figure figure;
};

/// What a finding rests on beside measured figures.
enum class FindingBasis : std::uint8_t {
    measured,
    estimated_rider_mass,
    estimated_stature,
    estimated_inseam, ///< from stature, age, or readings that say too little of today
};

/// `measured`, `estimated_rider_mass`, `estimated_stature`, `estimated_inseam`.
std::string_view name_of(FindingBasis basis);

/// What a check finds, in codes and figures.
struct Finding {
    CheckState state = CheckState::unknown;
    CheckReason reason = CheckReason::figure_missing;
    FindingBasis basis = FindingBasis::measured;
    std::optional<Figure> figure;
    CheckLimit limit;
    std::array<NamedFigure, 3> further{}; ///< unused ones have no name
    MeasureSet to_measure;                ///< of an unknown: what to measure
};

/// A check: its name on the wire, where its limits come from, and how it judges. A check that does not apply
/// to a bike (gears of a balance bike) finds nothing, which is not the same as unknown.
struct Check {
    std::string_view what;
    std::string_view source;
    std::optional<Finding> (*judge)(const CheckCase&);
};

/// Every check, in the order in which they are shown.
std::span<const Check> all_checks();

/// A finding with the check that made it.
struct CheckResult {
    const Check* check = nullptr;
    Finding finding;
};

/// All that apply, in that order.
std::vector<CheckResult> check_bike(const CheckCase& checked);
/// The same into a vector that is used again: cleared first.
void check_bike(const CheckCase& checked, std::vector<CheckResult>& results);

} // namespace saddlerule
