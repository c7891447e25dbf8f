#include "core/fit/lasting/raise_list.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

/// Small enough to follow the child, large enough to be worth a spanner (design choice).
constexpr Length raise_step = Length::millimetres(10.0);

/// The median child on one bike.
class SaddleDiary {
public:
    SaddleDiary(const FitForecast& forecast, Length lowest, Length highest)
        : forecast_(forecast), lowest_(lowest), highest_(highest) {
        setting_ = within(forecast.inseam_today() + forecast.stages().front().offsets.target);
    }

    std::vector<SaddleRaise> entries() && {
        for (std::size_t i = 0; i < forecast_.stages().size(); ++i) {
            const StageOfForecast& stage = forecast_.stages()[i];
            if (i > 0)
                change_to(wanted(stage, stage.first_day), forecast_.months()[stage.first_day]);
            for (std::size_t day = stage.first_day + 1; day <= stage.last_day; ++day)
                follow(stage, day);
        }
        return std::move(entries_);
    }

private:
    Length within(Length height) const { return std::clamp(height, lowest_, highest_); }

    Length wanted(const StageOfForecast& stage, std::size_t day) const {
        return forecast_.median_inseams()[day] + stage.offsets.target;
    }

    /// A new stage: all steps at once, up or down.
    void change_to(Length height, double month) {
        const double steps = (within(height) - setting_) / raise_step;
        const double whole_steps = std::floor(steps); // rather a step too low than one too high
        if (whole_steps == 0.0)
            return;
        setting_ = within(setting_ + raise_step * whole_steps);
        enter(month);
    }

    /// One month within a stage: each step when it is due.
    void follow(const StageOfForecast& stage, std::size_t day) {
        const Length before = wanted(stage, day - 1);
        const Length after = wanted(stage, day);
        while (setting_ + raise_step <= highest_ && setting_ + raise_step <= after) {
            setting_ += raise_step;
            const Length growth = after - before;
            const double due = growth > Length() ? std::clamp((setting_ - before) / growth, 0.0, 1.0) : 0.0;
            const auto& months = forecast_.months();
            enter(months[day - 1] + due * (months[day] - months[day - 1]));
        }
    }

    /// Two entries of one day are one.
    void enter(double month) {
        const CalendarDate tomorrow = forecast_.asked_on().plus(Days(1.0));
        const CalendarDate on = std::max(forecast_.asked_on().plus(Days::months(month)), tomorrow);
        if (!entries_.empty() && entries_.back().on == on)
            entries_.pop_back();
        entries_.push_back({on, setting_});
    }

    const FitForecast& forecast_;
    Length lowest_;
    Length highest_;
    Length setting_;
    std::vector<SaddleRaise> entries_;
};

} // namespace

std::vector<SaddleRaise> raise_list(const FitForecast& forecast, const SaddleSpan& span) {
    if (!span.lowest || !span.highest)
        return {};
    return SaddleDiary(forecast, *span.lowest, *span.highest).entries();
}

} // namespace saddlerule
