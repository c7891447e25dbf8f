#include "core/fit/choice/rider_judge.h"

namespace saddlerule {

RiderJudge::RiderJudge(const FitQuestion& question)
    : resale_share_(question.resale_share), today_(question.rider, question.today, question.wants.off_road),
      forecast_(today_.growth(), question.rider) {}

LifeOfFit RiderJudge::life(const Bike& bike) const {
    return life_of_fit(forecast_, SaddleSpan::of(bike));
}

std::optional<std::vector<MonthStretch>> RiderJudge::likely_months(const Bike& bike) const {
    if (!suits_stage(bike))
        return std::vector<MonthStretch>();
    const auto curve = fit_curve(forecast_, SaddleSpan::of(bike));
    return curve ? std::optional(saddlerule::likely_months(*curve)) : std::nullopt;
}

std::variant<CostPerMonth, CostGap> RiderJudge::cost(const Bike& bike, const LifeOfFit& life) const {
    std::optional<TimeOfFit> time;
    if (life.months_of_fit)
        time = TimeOfFit{Days::months(life.months_of_fit->mean), Days::months(life.months_of_fit->p10),
                         Days::months(life.months_of_fit->p90)};
    return cost_per_month(bike.price, time, resale_share_);
}

std::vector<SaddleRaise> RiderJudge::raises(const Bike& bike, const Fit& fit) const {
    if (!fit.setting)
        return {};
    return raise_list(forecast_, SaddleSpan::of(bike));
}

} // namespace saddlerule
