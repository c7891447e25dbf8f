// The answer to `side_view`: points and lines to draw one bike with the rider's setting and leg, in
// millimetres.
#pragma once

#include "core/fit/drawing/side_view.h"
#include "core/fit/rider/rider.h"

#include <string>

namespace saddlerule {

/// Everything is drawn for the inseam given; the rider says of which body.
std::string side_view_answer(const SideView& view, const Rider& rider, Length inseam_in_shoes);

} // namespace saddlerule
