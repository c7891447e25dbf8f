// Bikes, wheels and prices as JSON: facts only, in millimetres and kilograms.
#pragma once

#include "core/bike/bike.h"
#include "core/exchange/answer_json.h"

#include <string_view>

namespace saddlerule {

std::string_view kind_name(BikeKind kind);

Json price_json(const std::optional<Money>& price);
Json currency_json(const std::optional<Money>& price);
Json nominal_json(const std::optional<Wheel>& wheel);

/// Everything that is known of a bike.
Json bike_facts(const Bike& bike);

} // namespace saddlerule
