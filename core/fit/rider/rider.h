// Rider: the child, as far as the family has said, and the readings of one day taken together.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"

#include <optional>
#include <vector>

namespace saddlerule {

/// How the rider rides today.
enum class Stage {
    gliding,     ///< balance bike, feet push
    side_wheels, ///< training wheels
    starting,    ///< alone but new
    riding,      ///< starts, brakes and stops with confidence
};

/// Matters on side wheels only: where in the window the saddle goes.
enum class Confidence { wary, usual, bold };

enum class Sex { girl, boy };

/// Whose children the legs are guessed from where they were not measured: children of one stature have longer or
/// shorter legs from country to country.
enum class Population {
    us,  ///< United States, survey of 1977
    gb,  ///< Great Britain, reference of 1990
    nl,  ///< the Netherlands, survey of 1997
    any, ///< not known: a mixture of the three, wider than each
};

/// One dated inseam measurement.
struct Reading {
    CalendarDate on;
    Length inseam;
    bool shoes = true;
};

/// What a reading is worth. Each can be set by whoever knows better.
struct ReadingAccuracy {
    /// Thickness of a child's sole, added to a reading without shoes (from memory).
    Length sole = Length::millimetres(20.0);
    Length sole_sd = Length::millimetres(5.0);
    /// One home reading with book and tape (assumption; erring upward keeps forecast bands honest).
    Length reading_sd = Length::millimetres(8.0);
};

/// However often a child is measured in one day, one error is common to all readings (a tilted book is tilted every
/// time): their mean is no surer than this share of a single reading's sd (assumption; 4 mm unless said).
inline constexpr double shared_error_share = 0.5;

/// A tape at the height of a child's head (assumption).
inline constexpr Length stature_sd = Length::millimetres(10.0);

struct Rider {
    std::vector<Reading> readings; ///< in any order
    ReadingAccuracy accuracy;
    std::optional<CalendarDate> born; ///< the middle of the month where only the month is known
    std::optional<Sex> sex;
    Population population = Population::any;
    std::optional<Length> stature;
    std::optional<Mass> mass;
    Stage stage = Stage::starting;
    Confidence confidence = Confidence::usual;
    /// When the stage moves on (side_wheels to starting, starting to riding).
    std::optional<CalendarDate> riding_from;
    /// When a child that glides gets pedals. Plans over years ask for it; nothing else looks so far.
    std::optional<CalendarDate> pedals_from;
};

/// All readings of one day as one, in shoes.
struct DayReading {
    CalendarDate on;
    Length inseam; ///< mean of the day
    Length
        sd; ///< of that mean: tape errors average out to a floor, the sole's does not, contradictions widen it
    Length spread; ///< largest less smallest, in shoes
    int count = 0;
};

/// The rider's readings pooled by day, oldest first.
std::vector<DayReading> pooled_by_day(const Rider& rider);

} // namespace saddlerule
