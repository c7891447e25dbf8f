// Club day request: the riders of a morning, what was settled before, and the bikes that are not there.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/planning/club/club_day.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace saddlerule {

/// One rider of the request.
struct ClubRider {
    std::string id;
    bool stage_assumed = false; ///< nobody said how this child rides
    std::vector<Problem> notes; ///< questions about the figures, with their place in the request
};

/// The request with all that its question points into.
struct ClubDayRequest {
    std::vector<ClubRider> names;
    std::vector<std::optional<Rider>> riders;
    ClubQuestion question;
};

/// No morning has more.
inline constexpr std::size_t most_club_riders = 5000;
inline constexpr double most_rounds = 50.0;

/// Reads `today`, `riders`, `absent`, `available_only`, `locked`, `not`, `before`, `rounds` and `off_road`. A rider without reading, stature and
/// date of birth is one of whom nothing is known, which is no problem; one who rides nobody knows how counts as new at riding
/// alone, the most careful guess. Pairs in `before` of riders or bikes that are gone are passed over.
///
/// Problems are reported to `fields`: the codes club_*, request_* and figure_*. The result is only good where there are none.
ClubDayRequest club_day_request(RequestFields& fields, std::span<const Bike> bikes);

} // namespace saddlerule
