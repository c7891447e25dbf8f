#include "core/fit/choice/assessment.h"

#include <algorithm>
#include <utility>

namespace saddlerule {
namespace {

std::optional<Days> use_of(const JudgedBike& judged) {
    if (!judged.life.months_of_fit)
        return std::nullopt;
    return Days::months(judged.life.months_of_fit->mean);
}

void put_in_order(std::vector<JudgedBike>& bikes, Order order, Length target) {
    std::vector<OrderFacts> facts;
    facts.reserve(bikes.size());
    for (const JudgedBike& judged : bikes)
        facts.push_back(order_facts(judged));
    std::vector<JudgedBike> ordered;
    ordered.reserve(bikes.size());
    for (const std::size_t place : order_of(facts, order, target))
        ordered.push_back(std::move(bikes[place]));
    bikes = std::move(ordered);
}

/// Among the bikes worth trying: which are beaten by another, no worse one on length of use, price and mass.
void give_standings(std::vector<JudgedBike>& bikes) {
    std::vector<JudgedBike*> worth_trying;
    std::vector<ChoiceFigures> figures;
    for (JudgedBike& judged : bikes) {
        const Verdict verdict = judged.fit.verdict;
        if (!judged.suits_stage || (verdict != Verdict::fits_now && verdict != Verdict::close_call))
            continue;
        worth_trying.push_back(&judged);
        figures.push_back({.lasts = use_of(judged),
                           .price = judged.bike->price,
                           .mass = judged.bike->mass,
                           .against = {.stopped = judged.checks.stops > 0,
                                       .close_call = verdict == Verdict::close_call,
                                       .unavailable = !is_available(*judged.bike),
                                       .pauses = !judged.life.pauses.empty()}});
    }
    std::vector<ChoiceStanding> standings = choice_standings(figures);
    for (std::size_t i = 0; i < worth_trying.size(); ++i) {
        if (standings[i].beaten_by)
            worth_trying[i]->beaten_by = worth_trying[*standings[i].beaten_by]->bike;
        worth_trying[i]->standing = std::move(standings[i]);
    }
}

void say_why_not_offered(std::vector<JudgedBike>& bikes) {
    for (JudgedBike& judged : bikes) {
        const Standing standing = judged.standing ? judged.standing->standing : Standing::unbeaten;
        const bool stopped = judged.checks.stops > 0;
        judged.not_offered = reason_not_offered(
            {.unwanted = {},
             .suits_stage = judged.suits_stage,
             .verdict = judged.fit.verdict,
             .stopped = stopped,
             .available = is_available(*judged.bike),
             .standing = standing,
             .offered = judged.suits_stage && !stopped && is_available(*judged.bike) &&
                        judged.fit.verdict == Verdict::fits_now && standing == Standing::unbeaten});
    }
}

/// The wheel sizes that suit are a fact of the list, whatever else the family wants; bikes of the wrong kind say nothing.
std::vector<JudgedWheel> wheels_of(std::span<const Bike> list, const RiderJudge& judge) {
    std::vector<JudgedWheel> wheels;
    for (const Bike& bike : list) {
        if (bike.wheel && judge.suits_stage(bike))
            wheels.push_back({bike.wheel->nominal_inches(), judge.fit(bike).verdict});
    }
    return wheels;
}

/// Everything about one bike that does not depend on the others.
JudgedBike judged_by(const RiderJudge& judge, const Bike& bike, std::vector<CheckResult>& scratch) {
    JudgedBike judged{.bike = &bike,
                      .suits_stage = judge.suits_stage(bike),
                      .fit = judge.fit(bike),
                      .life = judge.life(bike),
                      .cost = CostGap::no_forecast,
                      .checks = {},
                      .standing = {},
                      .beaten_by = nullptr,
                      .not_offered = {}};
    judged.cost = judge.cost(bike, judged.life);
    judge.check(bike, judged.fit, scratch);
    judged.checks = check_counts(scratch);
    return judged;
}

} // namespace

CheckCounts check_counts(const std::vector<CheckResult>& checks) {
    const auto in_state = [&](CheckState state) {
        return static_cast<int>(std::count_if(checks.begin(), checks.end(), [&](const CheckResult& result) {
            return result.finding.state == state;
        }));
    };
    return {.stops = in_state(CheckState::stop), .looks = in_state(CheckState::look)};
}

OrderFacts order_facts(const JudgedBike& judged) {
    OrderFacts facts{.verdict = judged.fit.verdict,
                     .suits_stage = judged.suits_stage,
                     .stopped = judged.checks.stops > 0,
                     .available = is_available(*judged.bike),
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

Assessment assess(const FitQuestion& question, std::span<const Bike> list, std::span<const Bike> taped) {
    const Rider& rider = question.rider;
    Assessment assessment{.judge = RiderJudge(question),
                          .window = {window_offsets(rider.stage, rider.confidence).range, {}},
                          .wheel_sizes = {},
                          .bikes = {},
                          .left_out = {},
                          .filters = {}};
    const RiderJudge& judge = assessment.judge;
    assessment.window = saddle_window(judge.inseam().mean, rider.stage, rider.confidence);
    assessment.wheel_sizes =
        suitable_wheel_sizes(wheels_of(list, judge), judge.kind(), judge.estimate(), judge.offsets());
    std::vector<CheckResult> scratch;
    FilterCounter filters(list, taped, question.wants, assessment.filters);
    for (const auto& bikes : {list, taped}) {
        for (const Bike& bike : bikes) {
            std::vector<Unwanted> because = reasons_against(bike, question.wants);
            filters.count(bike, because);
            if (because.empty())
                assessment.bikes.push_back(judged_by(judge, bike, scratch));
            else
                assessment.left_out.push_back({&bike, std::move(because)});
        }
    }
    filters.finish();
    put_in_order(assessment.bikes, question.wants.order, assessment.window.target);
    give_standings(assessment.bikes);
    say_why_not_offered(assessment.bikes);
    return assessment;
}

} // namespace saddlerule
