#include "core/fit/growth/reading_plausibility.h"

#include "core/fit/growth/growth_limits.h"
#include "core/fit/growth/growth_reference.h"
#include "core/fit/growth/likely_slip.h"
#include "core/fit/growth/population.h"
#include "core/fit/growth/rider_history.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <initializer_list>
#include <optional>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

using namespace growth_limits;

/// Where nothing else is known of the child.
PlausibleBand any_child(Stage stage) {
    return {.low = stage == Stage::gliding ? shortest_glider_inseam : shortest_pedaller_inseam,
            .middle = middle_inseam,
            .high = longest_inseam};
}

Number in_centimetres(Length length) {
    return {.value = length.in_centimetres(), .unit = "cm", .decimals = 1};
}

std::initializer_list<Sex> possible_sexes(const std::optional<Sex>& sex) {
    static constexpr std::initializer_list<Sex> girl{Sex::girl};
    static constexpr std::initializer_list<Sex> boy{Sex::boy};
    static constexpr std::initializer_list<Sex> either{Sex::girl, Sex::boy};
    return !sex ? either : *sex == Sex::girl ? girl : boy;
}

/// One band that holds several, for a child who may be any of them.
class BandUnion {
public:
    void add(const PlausibleBand& band) {
        low_ = count_ == 0 ? band.low : std::min(low_, band.low);
        high_ = count_ == 0 ? band.high : std::max(high_, band.high);
        middles_ += band.middle;
        ++count_;
    }
    bool empty() const { return count_ == 0.0; }
    PlausibleBand whole() const { return {.low = low_, .middle = middles_ / count_, .high = high_}; }

private:
    Length low_;
    Length high_;
    Length middles_;
    double count_ = 0.0;
};

/// Inseams in shoes of children of an age.
PlausibleBand band_for_age(const Rider& rider, Sex sex, Days age) {
    const Lms<Length> legs = leg_length_reference(sex, age);
    const ScoreEstimate usual = legs_before_reading(rider.population, sex, age);
    const double slope = legs.shape.slope(legs.shape.ratio(usual.mean));
    const double far =
        central_99 * std::hypot(std::sqrt(usual.variance), rider.accuracy.reading_sd / legs.median * slope);
    return {.low = legs.value(usual.mean - far) + rider.accuracy.sole,
            .middle = legs.value(usual.mean) + rider.accuracy.sole,
            .high = legs.value(usual.mean + far) + rider.accuracy.sole};
}

/// Inseams in shoes of children of an age and a stature.
PlausibleBand band_for_stature(const Rider& rider, Sex sex, Days age) {
    const LegShare share = leg_share(rider.population, sex, age);
    const ReadingAccuracy& accuracy = rider.accuracy;
    const Length stature = *rider.stature;
    const Length middle = stature * share.mean;
    const double measuring =
        central_99 * std::hypot(accuracy.reading_sd.in_millimetres(), crotch_doubt.in_millimetres(),
                                (stature_sd * share.mean).in_millimetres());
    const auto reach = [&](double percentile) {
        const Length of_children =
            stature * std::fabs(percentile - share.mean) * (central_99 / last_percentile);
        return Length::millimetres(std::hypot(of_children.in_millimetres(), measuring));
    };
    return {.low = middle - reach(share.first_percentile) + accuracy.sole,
            .middle = middle + accuracy.sole,
            .high = middle + reach(share.last_percentile) + accuracy.sole};
}

/// Asks about one rider's figures and collects the questions.
class Questions {
public:
    Questions(const Rider& rider, CalendarDate today)
        : rider_(rider), today_(today), history_(rider_history(rider, today)), notes_(history_.notes) {}

    std::vector<Problem> all() && {
        ask_about_stature();
        for (std::size_t i = 0; i < rider_.readings.size(); ++i)
            ask_about_reading(i);
        for (std::size_t day = 0; day < history_.days.size(); ++day) {
            ask_about_spread(history_.days[day]);
            if (day > 0)
                ask_about_growth(history_.days[day - 1], history_.days[day]);
        }
        return std::move(notes_);
    }

private:
    void ask_about_stature() {
        if (!rider_.stature)
            return;
        const auto far_out = [&](Sex sex) {
            return history_.born ? stature_score(sex, today_ - *history_.born) > far_out_stature
                                 : *rider_.stature < shortest_rider || *rider_.stature > tallest_rider;
        };
        const auto sexes = possible_sexes(rider_.sex);
        stature_doubtful_ = std::all_of(sexes.begin(), sexes.end(), far_out);
        if (stature_doubtful_)
            note(history_.born ? ProblemCode::rider_stature_doubtful : ProblemCode::rider_stature_unlikely,
                 "stature", {{"stature", in_centimetres(*rider_.stature)}});
    }

    /// How far the stature is from the median, in size.
    double stature_score(Sex sex, Days age) const {
        return std::fabs(stature_reference(sex, age).score(*rider_.stature));
    }

    PlausibleBand band_on(CalendarDate day) const {
        const bool stature_holds = rider_.stature && !stature_doubtful_ && today_ - day <= stature_holds_for;
        BandUnion bands;
        for (const Sex sex : possible_sexes(rider_.sex)) {
            if (history_.born && stature_holds)
                bands.add(band_for_stature(rider_, sex, day - *history_.born));
            else if (history_.born)
                bands.add(band_for_age(rider_, sex, day - *history_.born));
            for (int years = 2; stature_holds && !history_.born && years <= 18; ++years) {
                if (stature_score(sex, Days::years(years)) < usual_stature)
                    bands.add(band_for_stature(rider_, sex, Days::years(years)));
            }
        }
        return bands.empty() ? any_child(rider_.stage) : bands.whole();
    }

    void ask_about_reading(std::size_t index) {
        const Reading& reading = rider_.readings[index];
        const CalendarDate day = std::min(reading.on, today_);
        if (history_.born && day < *history_.born)
            return; // noted already, and left out
        const Length sole = rider_.accuracy.sole;
        const Length in_shoes = reading.shoes ? reading.inseam : reading.inseam + sole;
        const PlausibleBand band = band_on(day);
        if (band.oddness(in_shoes) <= 1.0)
            return;
        // Slips happen to the figure as it was read, so the band moves to that figure.
        const Length moved = reading.inseam - in_shoes;
        const PlausibleBand as_read{
            .low = band.low + moved, .middle = band.middle + moved, .high = band.high + moved};
        const LikelySlip slip = likely_slip(reading.inseam, reading.shoes, sole, as_read);
        Figures figures{{"inseam", in_centimetres(reading.inseam)}, {"slip", slip.word}};
        if (slip.corrected)
            figures.add("corrected", in_centimetres(*slip.corrected));
        note(ProblemCode::reading_outside_plausible, place_of(index), std::move(figures));
    }

    void ask_about_spread(const DayReading& day) {
        if (day.spread <= usual_spread)
            return;
        note(ProblemCode::readings_spread, place_of(first_reading_of(day)),
             {{"on", day.on}, {"spread", in_centimetres(day.spread)}});
    }

    void ask_about_growth(const DayReading& before, const DayReading& after) {
        const Length difference = after.inseam - before.inseam;
        const Length error = Length::millimetres(
            beyond_chance * std::hypot(before.sd.in_millimetres(), after.sd.in_millimetres()));
        const Length most =
            Length::millimetres(fastest_growth_mm_per_year * (after.on - before.on).in_years()) + error;
        const bool shrunk = difference < -error;
        if (!shrunk && difference <= most)
            return;
        note(shrunk ? ProblemCode::reading_below_earlier : ProblemCode::reading_grown_too_fast,
             place_of(first_reading_of(after)),
             {{"inseam", in_centimetres(after.inseam)},
              {"on", after.on},
              {"before", in_centimetres(before.inseam)},
              {"before_on", before.on},
              {"difference", in_centimetres(shrunk ? -difference : difference)}});
    }

    std::size_t first_reading_of(const DayReading& day) const {
        const auto& readings = rider_.readings;
        const auto found = std::find_if(readings.begin(), readings.end(), [&](const Reading& reading) {
            return std::min(reading.on, today_) == day.on;
        });
        return static_cast<std::size_t>(found - readings.begin());
    }

    static std::string place_of(std::size_t index) {
        return "readings[" + std::to_string(index) + "].inseam";
    }

    void note(ProblemCode code, std::string where, Figures figures) {
        notes_.push_back(
            {.code = code, .figures = std::move(figures), .where = std::move(where), .position = {}});
    }

    const Rider& rider_;
    CalendarDate today_;
    RiderHistory history_;
    std::vector<Problem> notes_;
    bool stature_doubtful_ = false;
};

} // namespace

std::vector<Problem> rider_notes(const Rider& rider, CalendarDate today) {
    return Questions(rider, today).all();
}

} // namespace saddlerule
