// Bike: one measured bike, as its owner wrote it down. What was not measured is absent, never guessed.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/closed_range.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/base/quantities/money.h"
#include "core/fit/bike/wheel.h"

#include <optional>
#include <string>
#include <vector>

namespace saddlerule {

enum class BikeKind { pedal, balance };

enum class Brake { front_hand, rear_hand, coaster };

/// A field that this version does not know: kept as it was, so that saving loses nothing.
struct UnknownField {
    std::string name;
    std::string json; ///< the value's own JSON text

    friend bool operator==(const UnknownField&, const UnknownField&) = default;
};

/// Saddle heights are from the floor to the top of the saddle, where the seat-post centre line meets it
/// (16 CFR 1512.2(c)); the highest is the one at the minimum-insertion mark.
struct Bike {
    std::string id;            ///< never empty in a list: the name serves where the file gives none
    std::string name;          ///< may be empty
    bool id_from_name = false; ///< no id was given
    BikeKind kind = BikeKind::pedal;
    std::optional<Wheel> wheel;

    std::optional<Length> saddle_lowest; ///< at least one of the two is present, and lowest <= highest
    std::optional<Length> saddle_highest;
    std::optional<Length> standover;
    std::optional<Length> lever_reach;
    std::optional<Length> crank;
    std::optional<Length> bottom_bracket_height;
    std::optional<double> seat_tube_angle_degrees;

    std::optional<Mass> mass;
    std::optional<Mass> rider_mass_limit;

    std::optional<std::vector<Brake>> brakes; ///< empty when it is known to have none
    std::optional<int> gears;
    std::optional<int> chainring; ///< teeth
    std::optional<int> sprocket;  ///< teeth

    std::optional<Money> price;
    std::vector<std::string> colours;
    std::string condition;
    std::optional<bool> available;
    std::string notes;

    std::vector<UnknownField> unknown_fields;
};

} // namespace saddlerule
