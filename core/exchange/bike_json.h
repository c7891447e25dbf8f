// Bikes, wheels and prices as JSON: facts only, in millimetres and kilograms.
#pragma once

#include "core/exchange/json_writer.h"
#include "core/fit/bike/bike.h"

#include <string_view>

namespace saddlerule {

std::string_view kind_name(BikeKind kind);

/// `price` and `currency`, null where there is no price.
void price_fields(JsonWriter& json, const std::optional<Money>& price);

/// `wheel`: as it was written, nominal size, bead seat and tyre.
void wheel_field(JsonWriter& json, const std::optional<Wheel>& wheel);

/// Inches; null for a wheel of no common size.
std::optional<double> nominal_inches(const std::optional<Wheel>& wheel);
void nominal_field(JsonWriter& json, std::string_view name, const std::optional<double>& inches);

/// Everything that is known of a bike.
void write_bike_facts(JsonWriter& json, const Bike& bike);

} // namespace saddlerule
