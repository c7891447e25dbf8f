#include "core/choice/assessment.h"

#include "core/choice/bike_order.h"
#include "core/lasting/fit_forecast.h"

#include <algorithm>
#include <utility>

namespace saddlerule {
namespace {

/// Judges any number of bikes for one rider; what depends on the rider alone is worked out once.
class RiderJudge {
public:
    RiderJudge(const Rider& rider, CalendarDate today)
        : stage_(rider.stage), offsets_(window_offsets(rider.stage, rider.confidence)),
          growth_(RiderGrowth::of(rider, today)), inseam_(growth_.today()), forecast_(growth_, rider) {}

    const InseamToday& inseam() const { return inseam_; }
    InseamEstimate estimate() const { return {inseam_.mean, inseam_.sd}; }
    const WindowOffsets& offsets() const { return offsets_; }

    JudgedBike judge(const Bike& bike) const {
        const SaddleSpan span = SaddleSpan::of(bike);
        JudgedBike judged{.bike = &bike,
                          .suits_stage = suits_stage(bike, stage_),
                          .fit = fit_of(span, estimate(), offsets_),
                          .life = life_of_fit(forecast_, span),
                          .raises = {}};
        if (judged.fit.setting)
            judged.raises = raise_list(forecast_, span);
        return judged;
    }

private:
    Stage stage_;
    WindowOffsets offsets_;
    RiderGrowth growth_;
    InseamToday inseam_;
    FitForecast forecast_;
};

OrderFacts facts_of(const JudgedBike& judged) {
    OrderFacts facts{.verdict = judged.fit.verdict,
                     .suits_stage = judged.suits_stage,
                     .use = {},
                     .fits_from = {},
                     .room = {},
                     .margin = judged.fit.margin,
                     .lowest = judged.bike->saddle_lowest,
                     .mass = judged.bike->mass,
                     .cost_per_month = {}};
    if (judged.life.months_of_fit)
        facts.use = Days::months(judged.life.months_of_fit->mean);
    if (judged.life.fits_from)
        facts.fits_from = judged.life.fits_from->p50;
    if (judged.fit.setting)
        facts.room = judged.fit.setting->below_highest;
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

/// The wheel sizes that suit are a fact of the list, whatever else the family wants; bikes of the wrong kind
/// say nothing.
std::vector<JudgedWheel> wheels_of(std::span<const Bike* const> bikes, const RiderJudge& judge, Stage stage) {
    std::vector<JudgedWheel> wheels;
    for (const Bike* bike : bikes) {
        if (!bike->wheel || !suits_stage(*bike, stage))
            continue;
        const Fit fit = fit_of(SaddleSpan::of(*bike), judge.estimate(), judge.offsets());
        wheels.push_back({bike->wheel->nominal_inches(), fit.verdict});
    }
    return wheels;
}

} // namespace

bool suits_stage(const Bike& bike, Stage stage) {
    return (bike.kind == BikeKind::balance) == (stage == Stage::gliding);
}

Assessment assess(const Rider& rider, CalendarDate today, std::span<const Bike* const> bikes,
                  const Wants& wants) {
    const RiderJudge judge(rider, today);
    Assessment assessment{.inseam = judge.inseam(),
                          .window = saddle_window(judge.inseam().mean, rider.stage, rider.confidence),
                          .wheel_sizes = suitable_wheel_sizes(wheels_of(bikes, judge, rider.stage),
                                                              judge.estimate(), judge.offsets()),
                          .notes = {},
                          .bikes = {},
                          .left_out = {}};
    for (const Bike* bike : bikes) {
        std::vector<Unwanted> because = reasons_against(*bike, wants);
        if (because.empty())
            assessment.bikes.push_back(judge.judge(*bike));
        else
            assessment.left_out.push_back({bike, std::move(because)});
    }
    put_in_order(assessment.bikes, wants.order, assessment.window.target);
    return assessment;
}

} // namespace saddlerule
