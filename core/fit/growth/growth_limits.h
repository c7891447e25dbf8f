// The limits and assumptions of the growth model and of the questions about a rider's figures, beside the figures
// of its references (tables) and of the drift filter (drift_constants.h).
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"

namespace saddlerule::growth_limits {

/// Where the age is unknown, ages between these at the newest reading are evenly likely.
inline constexpr Days youngest_pedaller = Days::years(1.25);
inline constexpr Days youngest_glider = Days::years(1.0);
inline constexpr Days oldest_guess = Days::years(16.0);

/// Under this age the spread of growth was fitted on stature, not on legs.
inline constexpr Days validated_from = Days::years(8.0);

/// No child of the given age has legs so many standard deviations from the median: the date of birth or the
/// reading is wrong, so the forecast does without the age.
inline constexpr double impossible_score = 5.0;

/// A hypothesis with a smaller share of the whole is left out.
inline constexpr double negligible_weight = 1e-5;

/// Shorter legs than this cannot be scored sensibly; a reading of that kind is questioned anyway.
inline constexpr Length shortest_leg = Length::millimetres(50.0);

/// No tape is better than this, whatever was typed.
inline constexpr Length least_reading_sd = Length::millimetres(0.5);

/// Readings contradict each other beyond so many standard deviations of their difference.
inline constexpr double beyond_chance = 2.0;

/// How long a newest reading is taken for what the child is today without a question: in half a year a child of three to
/// twelve grows two centimetres, more than twice the error of the tape.
inline constexpr Days fresh_for = Days::months(6.5);

/// Half the central 99 % of a normal distribution, and the 99th percentile, in standard deviations.
inline constexpr double central_99 = 2.5758;
inline constexpr double last_percentile = 2.3263;

/// Stature is a figure of today: readings older than this are held against the age instead.
inline constexpr Days stature_holds_for = Days(90.0);
/// A stature farther out than this is questioned. Well-grown populations are one standard deviation above the
/// reference.
inline constexpr double far_out_stature = 4.0;
/// Where the age is unknown: ages at which a stature is farther out than this are not tried.
inline constexpr double usual_stature = 3.0;
/// No child who rides is shorter or taller: the third centile at one year is about 700 mm, the 99th of grown Dutch men
/// about 2,000 (from memory).
inline constexpr Length shortest_rider = Length::millimetres(680.0);
inline constexpr Length tallest_rider = Length::millimetres(2050.0);

/// Inseams in shoes where nothing else is known of the child. The third centile at one year is about 260 mm; one who pedals
/// is two or more, where it is above 320.
inline constexpr Length shortest_glider_inseam = Length::millimetres(260.0);
inline constexpr Length shortest_pedaller_inseam = Length::millimetres(320.0);
inline constexpr Length middle_inseam = Length::millimetres(600.0);
inline constexpr Length longest_inseam = Length::millimetres(1000.0);

/// Faster than legs grow at any age past the first year: medians stay below 70 mm a year.
inline constexpr double fastest_growth_mm_per_year = 100.0;

/// Readings of one day that are farther apart ask for another one: about two standard deviations of the difference of
/// two home readings.
inline constexpr Length usual_spread = Length::millimetres(15.0);

} // namespace saddlerule::growth_limits
