// Every limit that a check holds a figure against, each with its source and the reason for its value.
#pragma once

#include "core/base/quantities/angle.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/fit/checks/figure.h"

#include <span>
#include <string_view>

namespace saddlerule {

/// A limit and where it comes from. `name` is its name in answers.
template <typename Quantity>
struct Stated {
    std::string_view name;
    Quantity value;
    std::string_view source;
    std::string_view reason;
};

/// The same with its unit as a tag, for lists of all limits.
using StatedFigure = Stated<Figure>;

namespace limits {

using namespace literals;

constexpr Stated<Length> standover_room{"standover_room", 25_mm, "common practice",
                                        "room to come off the saddle on level ground"};
constexpr Stated<Length> standover_room_off_road{
    "standover_room_off_road", 50_mm, "common practice",
    "on rough ground the feet may come down lower than the wheels"};

constexpr Stated<double> bike_mass_look{
    "bike_mass_look", 0.30, "common practice, from memory",
    "bike by rider's weight: above it starting and steering become hard work"};
constexpr Stated<double> bike_mass_stop{
    "bike_mass_stop", 0.40, "common practice, from memory",
    "bike by rider's weight: above it a child cannot hold a bike that tips"};

constexpr Stated<double> estimated_mass_margin{"estimated_mass_margin", 1.25,
                                               "CDC 2000 growth charts, spread of weight for age",
                                               "nine children in ten weigh less than this times the median: "
                                               "an estimate closer than that settles nothing"};

constexpr Stated<Angle> knee_flexion_least{"knee_flexion_least", Angle::degrees(25.0),
                                           "Holmes, Pruitt and Whalen 1994, adults, from memory",
                                           "practised adults, pedal down; only a guide"};
constexpr Stated<Angle> knee_flexion_most{"knee_flexion_most", Angle::degrees(35.0),
                                          "Holmes, Pruitt and Whalen 1994, adults, from memory",
                                          "practised adults, pedal down; only a guide"};

constexpr Stated<double> saddle_height_factor{
    "saddle_height_factor", 1.09, "Hamley and Thomas 1967, adults, from memory",
    "saddle to pedal axle along the seat tube, pedal down, by inside leg without shoes; only a guide"};

constexpr Stated<double> crank_share_least{"crank_share_least", 0.18, "common practice, from memory",
                                           "crank by inside leg without shoes; only a guide"};
constexpr Stated<double> crank_share_most{"crank_share_most", 0.22, "common practice, from memory",
                                          "crank by inside leg without shoes; only a guide"};

constexpr Stated<Length> lever_reach{"lever_reach", 75_mm, "ISO 8098:2014",
                                     "grip to lever: what the fingers of a young child span"};
constexpr Stated<Length> lever_reach_us_sidewalk{"lever_reach_us_sidewalk", 76_mm, "16 CFR 1512.5(b)(3)",
                                                 "the US limit for sidewalk bicycles"};
constexpr Stated<Length> lever_reach_us{"lever_reach_us", 89_mm, "16 CFR 1512.5(b)(3)",
                                        "the US limit for all other bicycles: the widest of all rules"};

constexpr Stated<Length> toy_highest_saddle{"toy_highest_saddle", 435_mm, "ISO 8098:2023, scope",
                                            "up to here, itself included, a ride-on toy"};
constexpr Stated<Length> young_children_highest_saddle{
    "young_children_highest_saddle", 635_mm, "ISO 8098:2023 and ISO 4210-1:2023, scope",
    "below it a bicycle for young children; from there on ISO 4210 applies"};
constexpr Stated<Length> young_adult_highest_saddle{
    "young_adult_highest_saddle", 750_mm, "ISO 4210-2:2023, scope", "below it a young adult bicycle"};
constexpr Stated<Length> us_sidewalk_highest_saddle{
    "us_sidewalk_highest_saddle", 635_mm, "16 CFR 1512.2(b)",
    "up to here, itself included, a sidewalk bicycle in the US"};

constexpr Stated<Length> top_of_post{
    "top_of_post", 10_mm, "16 CFR 1512.15(b)",
    "too close to the highest for a tape measure to tell: check the mark itself"};

constexpr Stated<Figure> easy_cadence{"easy_cadence", Figure::turns_per_minute(60.0), "common practice",
                                      "a child that rolls along"};
constexpr Stated<Figure> brisk_cadence{"brisk_cadence", Figure::turns_per_minute(80.0), "common practice",
                                       "a child in a hurry"};

} // namespace limits

/// All of the above, in that order.
std::span<const StatedFigure> stated_limits();

} // namespace saddlerule
