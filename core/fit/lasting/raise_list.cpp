#include "core/fit/lasting/raise_list.h"

#include "core/fit/lasting/life_of_fit.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

/// Small enough to follow the child, large enough to be worth a spanner (design choice).
constexpr Length raise_step = Length::millimetres(10.0);

constexpr int horizon_days = static_cast<int>(horizon_months * Days::per_month);

/// The median inseam, read day after day.
class MedianByDay {
public:
    explicit MedianByDay(const FitForecast& forecast)
        : months_(forecast.months()), inseams_(forecast.median_inseams()) {}

    /// Days must not go back.
    Length on(int day) {
        const double month = Days(day).in_months();
        while (next_ + 1 < months_.size() && months_[next_] < month)
            ++next_;
        const double fraction = (month - months_[next_ - 1]) / (months_[next_] - months_[next_ - 1]);
        return inseams_[next_ - 1] + (inseams_[next_] - inseams_[next_ - 1]) * fraction;
    }

private:
    const std::vector<double>& months_;
    const std::vector<Length>& inseams_;
    std::size_t next_ = 1;
};

/// The median child on one bike, day by day.
class SaddleDiary {
public:
    SaddleDiary(const FitForecast& forecast, Length lowest, Length highest)
        : forecast_(forecast), lowest_(lowest), highest_(highest),
          life_(life_of_fit(forecast, {lowest, highest})), stage_(forecast.stages().begin()) {
        setting_ = reachable(forecast.inseam_today()) ? wanted(forecast.inseam_today()) : lowest;
    }

    std::vector<SaddleRaise> entries() && {
        MedianByDay median(forecast_);
        for (int day = 1; day <= horizon_days && !outgrown_on(day); ++day) {
            move_on_to(day);
            const Length inseam = median.on(day);
            if (!fits_on(day, inseam))
                set_anew_ = set_anew_ || has_fitted_;
            else if (set_anew_)
                set_anew(day, inseam);
            else
                follow(day, inseam);
        }
        return std::move(entries_);
    }

private:
    CalendarDate date_of(int day) const { return forecast_.asked_on().plus(Days(day)); }

    bool outgrown_on(int day) const { return life_.outgrown->p50 && *life_.outgrown->p50 <= date_of(day); }

    bool fits_on(int day, Length inseam) {
        const CalendarDate date = date_of(day);
        const bool pausing =
            std::any_of(life_.pauses.begin(), life_.pauses.end(),
                        [&](const PauseInFit& pause) { return pause.from <= date && date < pause.to; });
        const bool fits = !pausing && reachable(inseam);
        has_fitted_ = has_fitted_ || fits;
        return fits;
    }

    ClosedRange<Length> window(Length inseam) const { return stage_->offsets.range.shifted_by(inseam); }

    /// Where the saddle can be set and suits.
    std::optional<ClosedRange<Length>> reachable(Length inseam) const {
        const ClosedRange<Length> range = window(inseam);
        return ClosedRange<Length>::between(std::max(lowest_, range.low()), std::min(highest_, range.high()));
    }

    /// The setting nearest the target; the bike must be within reach.
    Length wanted(Length inseam) const {
        return reachable(inseam)->nearest_to(inseam + stage_->offsets.target);
    }

    void move_on_to(int day) {
        const auto next = stage_ + 1;
        if (next == forecast_.stages().end() ||
            Days::months(forecast_.months()[next->first_day]) > Days(day + 0.5))
            return;
        stage_ = next;
        new_stage_ = next->stage;
        set_anew_ = true;
    }

    /// A new stage, or the end of a pause: the whole way at once, up or down.
    void set_anew(int day, Length inseam) {
        const Length height = wanted(inseam);
        const Length change = height > setting_ ? height - setting_ : setting_ - height;
        if (change >= raise_step || !reachable(inseam)->contains(setting_)) {
            if (!entries_.empty() && day - last_day_ < least_days)
                entries_.pop_back();
            enter(day, height);
        }
        set_anew_ = false;
        new_stage_.reset();
    }

    void follow(int day, Length inseam) {
        if (day - last_day_ < least_days)
            return;
        const Length top = std::min(inseam + stage_->offsets.target, highest_);
        const double steps = std::floor((top - setting_) / raise_step);
        if (steps >= 1.0)
            enter(day, std::max(setting_ + raise_step * steps, window(inseam).low()));
    }

    void enter(int day, Length height) {
        setting_ = height;
        last_day_ = day;
        entries_.push_back({date_of(day), height, new_stage_});
    }

    static constexpr int least_days = static_cast<int>(least_time_between_raises.count());

    const FitForecast& forecast_;
    Length lowest_;
    Length highest_;
    LifeOfFit life_;
    std::vector<StageOfForecast>::const_iterator stage_;
    Length setting_;
    int last_day_ = 0; ///< of the last step; today counts as one
    bool has_fitted_ = false;
    bool set_anew_ = false;
    std::optional<Stage> new_stage_; ///< begun since the saddle was last set
    std::vector<SaddleRaise> entries_;
};

} // namespace

std::vector<SaddleRaise> raise_list(const FitForecast& forecast, const SaddleSpan& span) {
    if (!span.lowest || !span.highest)
        return {};
    return SaddleDiary(forecast, *span.lowest, *span.highest).entries();
}

} // namespace saddlerule
