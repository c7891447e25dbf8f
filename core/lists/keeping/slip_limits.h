// Slip limits: what a length of a bike may well be. Narrower than what a list may hold at all, so that a figure
// beyond them is worth a question, and no more.
#pragma once

#include "core/fit/bike/bike.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace saddlerule {

/// A length of a bike with the range in which it is believed without a question. Sources: the sizes in which
/// bikes from 10 inch balance bikes to adults' bikes are sold (common practice, from memory).
struct UsualLength {
    std::string_view field;
    std::optional<Length> Bike::*member;
    Length low;
    Length high;
    /// The same by the wheel's diameter with its tyre, where that is known: times and times.
    double low_by_wheel;
    double high_by_wheel;
};

/// Wheels say more than the ranges of all bikes: a saddle is never much below the top of its wheels, nor higher
/// than a folding bike has it (common practice). A frame that one steps through is lower.
inline constexpr std::array<UsualLength, 6> usual_lengths{{
    {"saddle_lowest", &Bike::saddle_lowest, Length::millimetres(250), Length::millimetres(1000), 0.7, 2.2},
    {"saddle_highest", &Bike::saddle_highest, Length::millimetres(300), Length::millimetres(1150), 0.7, 2.9},
    {"standover", &Bike::standover, Length::millimetres(200), Length::millimetres(950), 0.45, 1.8},
    {"lever_reach", &Bike::lever_reach, Length::millimetres(35), Length::millimetres(100), 0.0, 1.0},
    {"crank", &Bike::crank, Length::millimetres(74), Length::millimetres(185), 0.0, 1.0},
    {"bottom_bracket_height", &Bike::bottom_bracket_height, Length::millimetres(135),
     Length::millimetres(340), 0.0, 1.2},
}};

/// Two lengths of one bike, by their places in usual_lengths, and how many times the second the first may be without a
/// question. Children's bikes and adults', step-through and folding ones keep within (common practice, from memory).
struct UsualRatio {
    std::size_t of;
    std::size_t to;
    double low;
    double high;
};

inline constexpr std::array<UsualRatio, 3> usual_ratios{{
    {1, 0, 1.0, 1.7},   // saddle_highest to saddle_lowest
    {2, 0, 0.42, 1.15}, // standover to saddle_lowest
    {0, 5, 1.4, 4.2},   // saddle_lowest to bottom_bracket_height
}};

/// A saddle that moves by less was probably measured once and written twice (common practice).
inline constexpr Length narrowest_span = Length::millimetres(10);
/// No post is longer (common practice: the longest children's posts are 350 mm).
inline constexpr Length widest_span = Length::millimetres(400);

/// How far a bike's lowest saddle may be from those of all others of its wheel size: sizes of one wheel differ by
/// less (assumption, wide on purpose).
inline constexpr Length farthest_from_others = Length::millimetres(100);
/// From how many others on that says something (assumption).
inline constexpr int fewest_others = 3;

} // namespace saddlerule
