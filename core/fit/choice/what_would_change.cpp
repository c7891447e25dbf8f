#include "core/fit/choice/what_would_change.h"

#include "core/fit/choice/first_choice.h"

namespace saddlerule {
namespace {

FitQuestion changed(FitQuestion question, const Supposition& supposition) {
    for (Reading& reading : question.rider.readings)
        reading.inseam += supposition.reading_shift;
    if (supposition.next_stage)
        question.rider.stage = stage_after(question.rider.stage).value_or(question.rider.stage);
    if (supposition.budget)
        question.wants.max_price = supposition.budget;
    return question;
}

std::vector<Amount> prices_of(std::span<const Bike* const> bikes) {
    std::vector<Amount> prices;
    for (const Bike* bike : bikes) {
        if (bike->price)
            prices.push_back(bike->price->without_currency());
    }
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
    const FirstChoice choice(list, taped);
    const auto bikes = choice.bikes();
    const FirstBike first_bike = [&](const Supposition& supposition) {
        return choice.of(changed(question, supposition));
    };

    const auto first = first_bike({});
    const std::vector<Amount> prices = prices_of(bikes);
    AnswerChanges result{.first = first ? bikes[*first] : nullptr, .changes = {}};
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
