#include "core/fit/choice/what_would_change.h"

namespace saddlerule {
namespace {

const Bike* first_of(const Assessment& assessment) {
    for (const JudgedBike& judged : assessment.bikes) {
        if (may_be_first_choice(order_facts(judged)))
            return judged.bike;
    }
    return nullptr;
}

FitQuestion changed(FitQuestion question, const Supposition& supposition) {
    for (Reading& reading : question.rider.readings)
        reading.inseam += supposition.reading_shift;
    if (supposition.next_stage)
        question.rider.stage = stage_after(question.rider.stage).value_or(question.rider.stage);
    if (supposition.budget)
        question.wants.max_price = supposition.budget;
    return question;
}

std::vector<Amount> prices_of(const Assessment& assessment) {
    std::vector<Amount> prices;
    const auto add = [&](const Bike& bike) {
        if (bike.price)
            prices.push_back(bike.price->without_currency());
    };
    for (const JudgedBike& judged : assessment.bikes)
        add(*judged.bike);
    for (const LeftOutBike& left_out : assessment.left_out)
        add(*left_out.bike);
    return prices;
}

} // namespace

std::optional<Stage> stage_after(Stage stage) {
    switch (stage) {
    case Stage::gliding:
    case Stage::side_wheels:
        return Stage::starting;
    case Stage::starting:
        return Stage::riding;
    case Stage::riding:
        break;
    }
    return std::nullopt;
}

AnswerChanges what_would_change(const FitQuestion& question, std::span<const Bike> list,
                                std::span<const Bike> taped) {
    std::vector<const Bike*> bikes;
    for (const auto& part : {list, taped}) {
        for (const Bike& bike : part)
            bikes.push_back(&bike);
    }
    const auto index_of = [&](const Bike* wanted) -> std::optional<std::size_t> {
        for (std::size_t i = 0; i < bikes.size(); ++i) {
            if (bikes[i] == wanted)
                return i;
        }
        return std::nullopt;
    };
    const FirstBike first_bike = [&](const Supposition& supposition) {
        return index_of(first_of(assess(changed(question, supposition), list, taped)));
    };

    const Assessment now = assess(question, list, taped);
    const std::vector<Amount> prices = prices_of(now);
    AnswerChanges result{.first = first_of(now), .changes = {}};
    ChangeSearch search;
    if (question.rider.readings.empty())
        search.furthest_reading_shift = Length();
    search.has_next_stage = stage_after(question.rider.stage).has_value();
    search.budget = question.wants.max_price;
    search.prices = prices;
    if (result.first && result.first->price)
        search.first_price = result.first->price->without_currency();
    for (const AnswerChange& change : smallest_changes(first_bike, search))
        result.changes.push_back({change.kind, change.supposition, bikes[change.first]});
    return result;
}

} // namespace saddlerule
