#include "core/fit/choice/rider_judge.h"

#include "core/fit/growth/growth_reference.h"

namespace saddlerule {
namespace {

/// The reference median for everything the rider may be, by how likely it is.
Mass median_mass(const RiderGrowth& growth) {
    double kilograms = 0.0;
    for (const GrowthHypothesis& child : growth.hypotheses())
        kilograms += child.weight * weight_reference(child.sex, child.age_today).median.in_kilograms();
    return Mass::kilograms(kilograms);
}

/// A reading that says less than this of today, because it is old, counts as a guess: twice the error of a home reading
/// (design choice).
constexpr Length least_measured = 2.0 * ReadingAccuracy().reading_sd;

std::optional<Length> setting_of(const Fit& fit) {
    return fit.setting ? std::optional(fit.setting->above_floor) : std::nullopt;
}

} // namespace

RiderJudge::RiderJudge(const FitQuestion& question)
    : stage_(question.rider.stage), resale_share_(question.resale_share),
      offsets_(window_offsets(question.rider.stage, question.rider.confidence)),
      growth_(RiderGrowth::of(question.rider, question.today)), inseam_(growth_.today()),
      forecast_(growth_, question.rider) {
    if (!question.rider.mass)
        assumed_mass_ = median_mass(growth_);
    const auto estimated = assumed_mass_ ? std::optional(EstimatedMass{*assumed_mass_}) : std::nullopt;
    checked_ = CheckedRider::of(question.rider, inseam_.mean, estimated);
    if (inseam_.basis != InseamBasis::measured || inseam_.sd > least_measured)
        checked_.guessed_inseam_sd = inseam_.sd;
    checked_.off_road = question.wants.off_road;
}

BikeKind RiderJudge::kind() const {
    return stage_ == Stage::gliding ? BikeKind::balance : BikeKind::pedal;
}

bool RiderJudge::suits_stage(const Bike& bike) const {
    return bike.kind == kind();
}

Fit RiderJudge::fit(const Bike& bike) const {
    return fit_of(SaddleSpan::of(bike), estimate(), offsets_);
}

LifeOfFit RiderJudge::life(const Bike& bike) const {
    return life_of_fit(forecast_, SaddleSpan::of(bike));
}

std::variant<CostPerMonth, CostGap> RiderJudge::cost(const Bike& bike, const LifeOfFit& life) const {
    std::optional<TimeOfFit> time;
    if (life.months_of_fit)
        time = TimeOfFit{Days::months(life.months_of_fit->mean), Days::months(life.months_of_fit->p10),
                         Days::months(life.months_of_fit->p90)};
    return cost_per_month(bike.price, time, resale_share_);
}

void RiderJudge::check(const Bike& bike, const Fit& fit, std::vector<CheckResult>& results) const {
    check_bike({.rider = checked_, .bike = bike, .saddle_setting = setting_of(fit)}, results);
}

std::vector<SaddleRaise> RiderJudge::raises(const Bike& bike, const Fit& fit) const {
    if (!fit.setting)
        return {};
    return raise_list(forecast_, SaddleSpan::of(bike));
}

} // namespace saddlerule
