#include "core/fit/growth/reading_plausibility.h"

#include "core/base/outcomes/figure_text.h"
#include "core/fit/growth/growth_reference.h"
#include "core/fit/growth/likely_slip.h"
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

using namespace literals;

/// Half the central 99 % of a normal distribution, and the 99th percentile, in standard deviations.
constexpr double central_99 = 2.5758;
constexpr double last_percentile = 2.3263;

/// Spread of leg length among real children, a little wider than the reference's own (as in the growth
/// model's prior).
constexpr double population_sd = 1.1;

/// Stature is a figure of today: readings older than this are held against the age instead.
constexpr Days stature_holds_for = Days(90.0);
/// A stature farther out than this is questioned. Well-grown populations lie one standard deviation above the
/// reference.
constexpr double far_out_stature = 4.0;

/// Where nothing else is known of the child: no child who rides has an inseam outside.
constexpr PlausibleBand any_child{.low = 200_mm, .middle = 600_mm, .high = 1000_mm};

/// Faster than legs grow at any age past the first year: medians stay below 70 mm a year.
constexpr double fastest_growth_mm_per_year = 100.0;
/// Two readings contradict each other beyond so many standard deviations of their difference.
constexpr double beyond_error = 2.0;

std::string in_centimetres(Length length) {
    return figure_text(length.in_centimetres(), 1) + " cm";
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
    PlausibleBand whole() const { return {.low = low_, .middle = middles_ / count_, .high = high_}; }

private:
    Length low_;
    Length high_;
    Length middles_;
    double count_ = 0.0;
};

/// Inseams in shoes of children of an age.
PlausibleBand band_for_age(Sex sex, Days age, const ReadingAccuracy& accuracy) {
    const Lms<Length> legs = leg_length_reference(sex, age);
    const double reading_sd = accuracy.reading_sd / legs.median * legs.shape.slope(1.0);
    const double far = central_99 * std::hypot(population_sd, reading_sd);
    return {.low = legs.value(-far) + accuracy.sole,
            .middle = legs.median + accuracy.sole,
            .high = legs.value(far) + accuracy.sole};
}

/// Inseams in shoes of children of an age and a stature.
PlausibleBand band_for_stature(Sex sex, Days age, Length stature, const ReadingAccuracy& accuracy) {
    const LegShare share = leg_share_reference(sex, age);
    const Length middle = stature * share.mean;
    const double measuring = central_99 * std::hypot(accuracy.reading_sd.in_millimetres(),
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
        if (!rider_.stature || !history_.born)
            return;
        const Days age = today_ - *history_.born;
        const auto far_out = [&](Sex sex) {
            return std::fabs(stature_reference(sex, age).score(*rider_.stature)) > far_out_stature;
        };
        const auto sexes = possible_sexes(rider_.sex);
        stature_doubtful_ = std::all_of(sexes.begin(), sexes.end(), far_out);
        if (stature_doubtful_)
            note(ProblemCode::rider_stature_doubtful, "stature",
                 {{"stature", in_centimetres(*rider_.stature)}});
    }

    PlausibleBand band_on(CalendarDate day) const {
        const bool stature_holds = rider_.stature && !stature_doubtful_ && today_ - day <= stature_holds_for;
        BandUnion bands;
        for (const Sex sex : possible_sexes(rider_.sex)) {
            if (history_.born && stature_holds)
                bands.add(band_for_stature(sex, day - *history_.born, *rider_.stature, rider_.accuracy));
            else if (history_.born)
                bands.add(band_for_age(sex, day - *history_.born, rider_.accuracy));
            for (int years = 2; stature_holds && !history_.born && years <= 18; ++years)
                bands.add(band_for_stature(sex, Days::years(years), *rider_.stature, rider_.accuracy));
        }
        return history_.born || stature_holds ? bands.whole() : any_child;
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
        Figures figures{
            {"inseam", in_centimetres(reading.inseam)}, {"slip", slip.sentence}, {"slip_code", slip.code}};
        if (slip.corrected)
            figures.add("corrected", in_centimetres(*slip.corrected));
        note(ProblemCode::reading_outside_plausible, place_of(index), std::move(figures));
    }

    void ask_about_spread(const DayReading& day) {
        if (day.spread <= usual_spread)
            return;
        note(ProblemCode::readings_spread, place_of(first_reading_of(day)),
             {{"on", day.on.to_iso()}, {"spread", in_centimetres(day.spread)}});
    }

    void ask_about_growth(const DayReading& before, const DayReading& after) {
        const Length difference = after.inseam - before.inseam;
        const Length error = Length::millimetres(
            beyond_error * std::hypot(before.sd.in_millimetres(), after.sd.in_millimetres()));
        const Length most =
            Length::millimetres(fastest_growth_mm_per_year * (after.on - before.on).in_years()) + error;
        const bool shrunk = difference < -error;
        if (!shrunk && difference <= most)
            return;
        note(shrunk ? ProblemCode::reading_below_earlier : ProblemCode::reading_grown_too_fast,
             place_of(first_reading_of(after)),
             {{"inseam", in_centimetres(after.inseam)},
              {"on", after.on.to_iso()},
              {"before", in_centimetres(before.inseam)},
              {"before_on", before.on.to_iso()},
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
