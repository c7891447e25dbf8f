// Side view: where to draw the parts of one bike, to scale, with the rider's saddle setting on it.
#pragma once

#include "core/base/quantities/angle.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/plane_point.h"
#include "core/fit/bike/bike.h"
#include "core/fit/verdict/fit_verdict.h"

#include <optional>
#include <string_view>
#include <vector>

namespace saddlerule {

struct WheelOutline {
    PlanePoint axle;
    Length radius; ///< to the tread
    Length rim;    ///< to the bead seat
};

struct Tube {
    PlanePoint from;
    PlanePoint to;
};

/// How the foot meets the floor from the saddle.
enum class FootOnFloor {
    flat,   ///< up to the high edge of the window for starting: saddle and tyres give under a child
    ball,   ///< up to the low edge of the window for riding
    tiptoe, ///< up to its high edge
    off_the_floor,
};

/// Lines to draw; `x` starts at the rear axle. What was not measured is filled in with a common shape, for
/// the eye only, and named in `assumed`.
struct SideView {
    WheelOutline rear_wheel;
    WheelOutline front_wheel;
    PlanePoint bottom_bracket;
    std::optional<Length> crank; ///< none on a balance bike
    Angle seat_tube_angle;       ///< from the horizontal, open to the front
    Tube seat_tube;              ///< bottom bracket to the collar that holds the post
    std::optional<PlanePoint> saddle_lowest;
    std::optional<PlanePoint> saddle_highest;
    std::optional<PlanePoint> saddle_setting;
    Tube head; ///< lower to upper end
    PlanePoint grip;
    Tube top_tube; ///< seat tube to head
    std::optional<FootOnFloor> foot;
    std::vector<std::string_view> assumed; ///< catalogue field names
};

SideView side_view(const Bike& bike, const Fit& fit, Length inseam_in_shoes);

/// How a foot meets the floor from a saddle of that height (common practice: the edges of the saddle windows).
FootOnFloor foot_on_floor(Length saddle, Length inseam_in_shoes);

} // namespace saddlerule
