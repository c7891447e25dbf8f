// Suits: a list of bikes turned round, from each bike and each wheel size to the inside legs that it fits.
#pragma once

#include "core/base/quantities/length.h"
#include "core/fit/bike/bike.h"
#include "core/planning/suits/inseams_that_fit.h"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace saddlerule {

inline constexpr std::array every_stage{Stage::gliding, Stage::side_wheels, Stage::starting, Stage::riding};

/// Of one bike; stages that it is not made for, and those in which nobody surely fits it, have nothing.
struct BikeSuits {
    const Bike* bike = nullptr;
    std::array<std::optional<InseamRange>, every_stage.size()> stages; ///< as in `every_stage`
};

/// From the shortest to the longest inseam that so many bikes fit, and the stretches between them that fewer do.
struct SharedRange {
    Length from;
    Length to;
    std::vector<std::pair<Length, Length>> gaps;
};

/// The bikes of one wheel size in one way of riding. Only those with both ends measured count.
struct WheelStage {
    std::size_t bikes = 0;           ///< made for that way of riding
    std::size_t measured = 0;        ///< of those: both ends
    std::optional<SharedRange> any;  ///< at least one fits
    std::optional<SharedRange> half; ///< at least half of the measured ones do
};

struct WheelSuits {
    double nominal_inches = 0.0;
    std::array<WheelStage, every_stage.size()> stages;
};

struct Suits {
    std::vector<BikeSuits> bikes;   ///< by wheel size, unknown ones last, then by lowest saddle
    std::vector<WheelSuits> wheels; ///< small to large
};

/// Whether a bike of that kind is ridden that way.
bool made_for(BikeKind kind, Stage stage);

/// The bikes must outlive the result.
Suits whom_they_suit(std::span<const Bike> bikes, Length reading_sd);

} // namespace saddlerule
