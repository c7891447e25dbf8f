// PlanePoint: a place in the side view of a bike, which faces right.
#pragma once

#include "core/base/quantities/length.h"

namespace saddlerule {

/// x forward, y up from the floor. Where x starts is said by whoever gives the point.
struct PlanePoint {
    Length x;
    Length y;
};

} // namespace saddlerule
