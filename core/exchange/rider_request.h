// The rider of a request: from JSON to the engine's own types.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/fit/rider/rider.h"

namespace saddlerule {

constexpr WireName<Stage> stage_names[] = {
    {"gliding", Stage::gliding},
    {"side_wheels", Stage::side_wheels},
    {"starting", Stage::starting},
    {"riding", Stage::riding},
};

constexpr WireName<Confidence> confidence_names[] = {
    {"wary", Confidence::wary},
    {"usual", Confidence::usual},
    {"bold", Confidence::bold},
};

constexpr WireName<Sex> sex_names[] = {
    {"girl", Sex::girl},
    {"boy", Sex::boy},
};

constexpr WireName<Population> population_names[] = {
    {"us", Population::us},
    {"gb", Population::gb},
    {"nl", Population::nl},
    {"any", Population::any},
};

/// Reads a rider at `path`. Needs at least one of a reading, a stature and a birthday up to today.
///
/// Where no `stage` is given, `unsaid_stage` holds; without one the field is required.
///
/// Problems: the codes request_*, figure_* and rider_without_measure, each with the path of its field.
Result<Rider> rider_from_request(const JsonValue& value, const std::string& path, CalendarDate today,
                                 std::optional<Stage> unsaid_stage = std::nullopt);

/// The field `rider` of a request, or a stand-in after the problem was reported.
Rider required_rider(RequestFields& fields, CalendarDate today);

} // namespace saddlerule
