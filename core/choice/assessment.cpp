#include "core/choice/assessment.h"

#include "core/choice/bike_order.h"
#include "core/growth/growth_reference.h"
#include "core/lasting/fit_forecast.h"

#include <algorithm>
#include <utility>

namespace saddlerule {
namespace {

/// The reference median for everything the rider may be, by how likely it is.
Mass median_mass(const RiderGrowth& growth) {
    double kilograms = 0.0;
    for (const GrowthHypothesis& child : growth.hypotheses())
        kilograms += child.weight * weight_reference(child.sex, child.age_today).median.in_kilograms();
    return Mass::kilograms(kilograms);
}

/// Judges any number of bikes for one rider; what depends on the rider alone is worked out once.
class RiderJudge {
public:
    explicit RiderJudge(const FitQuestion& question)
        : stage_(question.rider.stage), resale_share_(question.resale_share),
          with_raises_(question.with_raises),
          offsets_(window_offsets(question.rider.stage, question.rider.confidence)),
          growth_(RiderGrowth::of(question.rider, question.today)), inseam_(growth_.today()),
          forecast_(growth_, question.rider) {
        if (!question.rider.mass)
            assumed_mass_ = median_mass(growth_);
        const auto estimated = assumed_mass_ ? std::optional(EstimatedMass{*assumed_mass_}) : std::nullopt;
        checked_ = CheckedRider::of(question.rider, inseam_.mean, estimated);
        checked_.off_road = question.wants.off_road;
    }

    const InseamToday& inseam() const { return inseam_; }
    const std::optional<Mass>& assumed_mass() const { return assumed_mass_; }
    InseamEstimate estimate() const { return {inseam_.mean, inseam_.sd}; }
    const WindowOffsets& offsets() const { return offsets_; }

    Verdict verdict(const Bike& bike) const {
        return fit_of(SaddleSpan::of(bike), estimate(), offsets_).verdict;
    }

    JudgedBike judge(const Bike& bike) const {
        const SaddleSpan span = SaddleSpan::of(bike);
        JudgedBike judged{.bike = &bike,
                          .suits_stage = suits_stage(bike, stage_),
                          .fit = fit_of(span, estimate(), offsets_),
                          .life = life_of_fit(forecast_, span),
                          .cost = CostGap::no_forecast,
                          .checks = {},
                          .raises = {},
                          .standing = {},
                          .beaten_by = nullptr,
                          .not_offered = {}};
        judged.cost = cost_per_month(bike.price, time_of_fit(judged.life), resale_share_);
        check_bike({.rider = checked_, .bike = bike, .saddle_setting = setting_of(judged.fit)},
                   judged.checks);
        if (with_raises_ && judged.fit.setting)
            judged.raises = raise_list(forecast_, span);
        return judged;
    }

private:
    static std::optional<TimeOfFit> time_of_fit(const LifeOfFit& life) {
        if (!life.months_of_fit)
            return std::nullopt;
        const MonthsOfFit& months = *life.months_of_fit;
        return TimeOfFit{Days::months(months.mean), Days::months(months.p10), Days::months(months.p90)};
    }

    static std::optional<Length> setting_of(const Fit& fit) {
        return fit.setting ? std::optional(fit.setting->above_floor) : std::nullopt;
    }

    Stage stage_;
    double resale_share_;
    bool with_raises_;
    WindowOffsets offsets_;
    RiderGrowth growth_;
    InseamToday inseam_;
    FitForecast forecast_;
    std::optional<Mass> assumed_mass_;
    CheckedRider checked_;
};

std::optional<Days> use_of(const JudgedBike& judged) {
    if (!judged.life.months_of_fit)
        return std::nullopt;
    return Days::months(judged.life.months_of_fit->mean);
}

OrderFacts facts_of(const JudgedBike& judged) {
    OrderFacts facts{.verdict = judged.fit.verdict,
                     .suits_stage = judged.suits_stage,
                     .use = use_of(judged),
                     .fits_from = {},
                     .room = {},
                     .margin = judged.fit.margin,
                     .lowest = judged.bike->saddle_lowest,
                     .mass = judged.bike->mass,
                     .cost_per_month = {}};
    if (judged.life.fits_from)
        facts.fits_from = judged.life.fits_from->p50;
    if (judged.fit.setting)
        facts.room = judged.fit.setting->below_highest;
    if (const auto* cost = std::get_if<CostPerMonth>(&judged.cost))
        facts.cost_per_month = cost->expected.without_currency();
    return facts;
}

void put_in_order(std::vector<JudgedBike>& bikes, Order order, Length target) {
    std::vector<OrderFacts> facts;
    facts.reserve(bikes.size());
    for (const JudgedBike& judged : bikes)
        facts.push_back(facts_of(judged));
    std::vector<JudgedBike> ordered;
    ordered.reserve(bikes.size());
    for (const std::size_t place : order_of(facts, order, target))
        ordered.push_back(std::move(bikes[place]));
    bikes = std::move(ordered);
}

/// Among the bikes worth trying: which are beaten by another on length of use, price and mass.
void give_standings(std::vector<JudgedBike>& bikes) {
    std::vector<JudgedBike*> worth_trying;
    std::vector<ChoiceFigures> figures;
    for (JudgedBike& judged : bikes) {
        const Verdict verdict = judged.fit.verdict;
        if (!judged.suits_stage || (verdict != Verdict::fits_now && verdict != Verdict::close_call))
            continue;
        worth_trying.push_back(&judged);
        figures.push_back({.lasts = use_of(judged), .price = judged.bike->price, .mass = judged.bike->mass});
    }
    std::vector<ChoiceStanding> standings = choice_standings(figures);
    for (std::size_t i = 0; i < worth_trying.size(); ++i) {
        if (standings[i].beaten_by)
            worth_trying[i]->beaten_by = worth_trying[*standings[i].beaten_by]->bike;
        worth_trying[i]->standing = std::move(standings[i]);
    }
}

void say_why_not_offered(std::vector<JudgedBike>& bikes) {
    const auto stops = [](const CheckResult& result) { return result.finding.state == CheckState::stop; };
    for (JudgedBike& judged : bikes) {
        const Standing standing = judged.standing ? judged.standing->standing : Standing::unbeaten;
        const bool stopped = std::any_of(judged.checks.begin(), judged.checks.end(), stops);
        judged.not_offered = reason_not_offered({.unwanted = {},
                                                 .suits_stage = judged.suits_stage,
                                                 .verdict = judged.fit.verdict,
                                                 .checks = judged.checks,
                                                 .standing = standing,
                                                 .offered = judged.suits_stage && !stopped &&
                                                            judged.fit.verdict == Verdict::fits_now &&
                                                            standing == Standing::unbeaten});
    }
}

/// The wheel sizes that suit are a fact of the list, whatever else the family wants; bikes of the wrong kind
/// say nothing.
std::vector<JudgedWheel> wheels_of(std::span<const Bike> list, const RiderJudge& judge, Stage stage) {
    std::vector<JudgedWheel> wheels;
    for (const Bike& bike : list) {
        if (bike.wheel && suits_stage(bike, stage))
            wheels.push_back({bike.wheel->nominal_inches(), judge.verdict(bike)});
    }
    return wheels;
}

} // namespace

bool suits_stage(const Bike& bike, Stage stage) {
    return (bike.kind == BikeKind::balance) == (stage == Stage::gliding);
}

Assessment assess(const FitQuestion& question, std::span<const Bike> list, std::span<const Bike> taped) {
    const Rider& rider = question.rider;
    const RiderJudge judge(question);
    Assessment assessment{.inseam = judge.inseam(),
                          .window = saddle_window(judge.inseam().mean, rider.stage, rider.confidence),
                          .wheel_sizes = suitable_wheel_sizes(wheels_of(list, judge, rider.stage),
                                                              judge.estimate(), judge.offsets()),
                          .bikes = {},
                          .left_out = {},
                          .assumed_mass = judge.assumed_mass()};
    for (const auto& bikes : {list, taped}) {
        for (const Bike& bike : bikes) {
            std::vector<Unwanted> because = reasons_against(bike, question.wants);
            if (because.empty())
                assessment.bikes.push_back(judge.judge(bike));
            else
                assessment.left_out.push_back({&bike, std::move(because)});
        }
    }
    put_in_order(assessment.bikes, question.wants.order, assessment.window.target);
    give_standings(assessment.bikes);
    say_why_not_offered(assessment.bikes);
    return assessment;
}

} // namespace saddlerule
