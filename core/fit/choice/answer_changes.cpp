#include "core/fit/choice/answer_changes.h"

#include "core/base/sorting/sorting.h"

#include <algorithm>
#include <array>

namespace saddlerule {
namespace {

/// The question with its answer as it is, and a way to ask it changed.
class Question {
public:
    explicit Question(const FirstBike& first_bike) : first_bike_(first_bike), first_(first_bike({})) {}

    /// The bike that comes first after the change, where it is another one.
    std::optional<std::size_t> another_first(const Supposition& supposition) const {
        const auto first = first_bike_(supposition);
        return first == first_ ? std::nullopt : first;
    }

    std::optional<AnswerChange> change(ChangeKind kind, const Supposition& supposition) const {
        const auto first = another_first(supposition);
        if (!first)
            return std::nullopt;
        return AnswerChange{.kind = kind, .supposition = supposition, .first = *first};
    }

private:
    const FirstBike& first_bike_;
    std::optional<std::size_t> first_;
};

Supposition with_reading(Length shift) {
    return {.reading_shift = shift, .next_stage = false, .budget = {}};
}

Supposition with_budget(Amount budget) {
    return {.reading_shift = {}, .next_stage = false, .budget = budget};
}

std::optional<AnswerChange> reading_change(const Question& question, const ChangeSearch& search,
                                           ChangeKind kind) {
    const double direction = kind == ChangeKind::longer_reading ? 1.0 : -1.0;
    Length same; // the furthest shift up to which the answer was found to hold
    for (int stride = 1; stride * search.reading_stride <= search.furthest_reading_shift; ++stride) {
        const Length reached = stride * search.reading_stride;
        if (question.another_first(with_reading(direction * reached))) {
            for (int step = 1; same + step * search.reading_step < reached; ++step) {
                const Length shift = same + step * search.reading_step;
                if (const auto change = question.change(kind, with_reading(direction * shift)))
                    return change;
            }
            return question.change(kind, with_reading(direction * reached));
        }
        same = reached;
    }
    return std::nullopt;
}

std::optional<AnswerChange> higher_budget_change(const Question& question, const ChangeSearch& search) {
    if (!search.budget)
        return std::nullopt;
    std::vector<Amount> above;
    std::copy_if(search.prices.begin(), search.prices.end(), std::back_inserter(above),
                 [&](Amount price) { return price > *search.budget; });
    heap_sort(above);
    const auto enough = std::partition_point(above.begin(), above.end(), [&](Amount price) {
        return !question.another_first(with_budget(price));
    });
    if (enough == above.end())
        return std::nullopt;
    return question.change(ChangeKind::higher_budget, with_budget(*enough));
}

std::optional<AnswerChange> lower_budget_change(const Question& question, const ChangeSearch& search) {
    if (!search.first_price || (search.budget && *search.budget < *search.first_price))
        return std::nullopt;
    constexpr double smallest_amount = 0.01;
    const Amount just_below = Amount::main_units(search.first_price->in_main_units() - smallest_amount);
    return question.change(ChangeKind::lower_budget, with_budget(just_below));
}

} // namespace

std::string_view name_of(ChangeKind kind) {
    constexpr std::array<std::string_view, 5> names{"longer_reading", "shorter_reading", "next_stage",
                                                    "higher_budget", "lower_budget"};
    return names[static_cast<std::size_t>(kind)];
}

std::vector<AnswerChange> smallest_changes(const FirstBike& first_bike, const ChangeSearch& search) {
    const Question question(first_bike);
    std::vector<AnswerChange> changes;
    const auto keep = [&](const std::optional<AnswerChange>& change) {
        if (change)
            changes.push_back(*change);
    };
    keep(reading_change(question, search, ChangeKind::longer_reading));
    keep(reading_change(question, search, ChangeKind::shorter_reading));
    if (search.has_next_stage)
        keep(
            question.change(ChangeKind::next_stage, {.reading_shift = {}, .next_stage = true, .budget = {}}));
    keep(higher_budget_change(question, search));
    keep(lower_budget_change(question, search));
    return changes;
}

} // namespace saddlerule
