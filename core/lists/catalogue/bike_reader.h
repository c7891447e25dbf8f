// Bike reader: one entry of a list, or of a request, from JSON to a bike.
#pragma once

#include "core/base/json/located_json.h"
#include "core/base/outcomes/result.h"
#include "core/base/typed_text/length_text.h"
#include "core/fit/bike/bike.h"
#include "core/lists/catalogue/catalogue.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/entry_places.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace saddlerule {

constexpr std::size_t longest_text = 2000; ///< Unicode characters
constexpr std::size_t most_fields = 100;   ///< of one bike, known or not

/// What surrounds an entry.
struct BikeContext {
    std::string_view text; ///< that the value was read from
    /// What bare numbers count in. Without it every length needs its own unit.
    std::optional<LengthUnit> units;
    /// Without it a price is kept as an unknown field and not taken for money.
    std::optional<Currency> currency;
    /// Places problems in the file; null in requests, which have a path only.
    EntryPlaces* places = nullptr;
    std::size_t origin = no_origin; ///< of this entry, for `places`
    /// The fields of the entry's members, null where not known; empty where they are to be found by name.
    std::span<const CatalogueField* const> fields = {};
};

/// Reads one bike into `bike`, which is a fresh one. Fields that are not known are kept as they are. The id may come back empty (see
/// bike_ids.h); null counts as not given.
///
/// Problems: the codes bike_* and figure_*. `where` is the path inside the entry ("saddle_highest",
/// "brakes[1]"), empty for the entry itself.
std::optional<Problem> read_bike_into(Bike& bike, const JsonValue& value, const BikeContext& context);
Result<Bike> read_bike(const JsonValue& value, const BikeContext& context);

/// A length that means one thing in millimetres and another in inches: a number, in quotes or not, without a
/// unit.
bool is_bare_length(const JsonValue& value);

/// The entry as it is set aside, with its id and name as far as they can be read.
SetAside set_aside_entry(const JsonValue& value, std::size_t number, Problem problem, std::string_view text);

} // namespace saddlerule
