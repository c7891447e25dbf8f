// Catalogue fields: the one table of what a bike in a list may say. Every reader and writer of lists goes by
// it.
#pragma once

#include "core/base/typed_text/length_text.h"
#include "core/fit/bike/bike.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace saddlerule {

/// Where a field's value goes. The type says what the field holds: a length, a mass, a count, a list of
/// texts.
using FieldTarget =
    std::variant<std::string Bike::*, std::optional<Length> Bike::*, std::optional<Mass> Bike::*,
                 std::optional<double> Bike::*, std::optional<int> Bike::*, std::optional<Money> Bike::*,
                 std::optional<bool> Bike::*, std::optional<Wheel> Bike::*, BikeKind Bike::*,
                 std::optional<std::vector<Brake>> Bike::*, std::vector<std::string> Bike::*>;

/// The figures that a field may hold, both ends included: millimetres for a length, kilograms for a mass,
/// degrees for an angle, main units for money. Beyond them no bike was ever built (assumption, wide on
/// purpose).
struct FieldLimits {
    double low = 0.0;
    double high = 0.0;
};

struct CatalogueField {
    std::string_view name; ///< in both forms of a list
    FieldTarget target;
    FieldLimits limits; ///< of figures only
};

/// All fields, in the order in which they are written.
std::span<const CatalogueField> catalogue_fields();

/// The field of that name, or nullptr.
const CatalogueField* field_named(std::string_view name);

/// The field that somebody may have meant by a name that is not known: another spelling, or a slip or two
/// away.
const CatalogueField* field_meant_by(std::string_view name);

/// The letters and digits of a name in lower case: "Saddle Lowest" and "saddle-lowest" are saddle_lowest.
std::string letters_of(std::string_view name);

/// What a list may say of itself beside its bikes, in the order in which it is written.
constexpr std::array<std::string_view, 6> header_fields{"format",      "version", "title",
                                                        "measured_on", "units",   "currency"};

/// The day of measuring, which a list says of all its bikes and a bike of another day of itself: it tells which of two
/// versions of a bike is newer.
constexpr std::string_view day_field = "measured_on";

/// What bare numbers of a list may count in.
constexpr std::array<std::pair<std::string_view, LengthUnit>, 3> unit_names{{
    {"mm", LengthUnit::millimetre},
    {"cm", LengthUnit::centimetre},
    {"in", LengthUnit::inch},
}};

constexpr std::array<std::pair<std::string_view, BikeKind>, 2> kind_names{{
    {"pedal", BikeKind::pedal},
    {"balance", BikeKind::balance},
}};

constexpr std::array<std::pair<std::string_view, Brake>, 3> brake_names{{
    {"front hand", Brake::front_hand},
    {"rear hand", Brake::rear_hand},
    {"coaster", Brake::coaster},
}};

} // namespace saddlerule
