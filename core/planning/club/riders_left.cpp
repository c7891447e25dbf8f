#include "core/planning/club/riders_left.h"

#include <array>

namespace saddlerule {

std::string_view name_of(LeftBecause reason) {
    constexpr std::array<std::string_view, 6> names{"not_measured", "all_taken",   "ruled_out",
                                                    "away",         "check_stops", "none_fits"};
    return names[static_cast<std::size_t>(reason)];
}

} // namespace saddlerule
