#include "core/fit/choice/first_choice.h"

#include "core/base/sorting/sorting.h"
#include "core/fit/choice/assessment.h"
#include "core/fit/choice/bike_order.h"
#include "core/fit/verdict/saddle_window.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace saddlerule {
namespace {

auto kind_and_span(const Bike& bike) {
    return std::tie(bike.kind, bike.saddle_lowest, bike.saddle_highest);
}

/// The facts of a bike of which only the fit is known, as if all else spoke for it.
OrderFacts hoped_facts(const JudgedBike& judged) {
    OrderFacts facts = order_facts(judged);
    facts.use = Days::years(1000.0);
    facts.cost_per_month = Amount::main_units(-1e9);
    return facts;
}

class Search {
public:
    Search(const FitQuestion& question, std::span<const Bike* const> bikes)
        : bikes_(bikes), wants_(question.wants), judge_(question),
          rule_(question.wants.order,
                saddle_window(judge_.inseam().mean, question.rider.stage, question.rider.confidence).target) {
    }

    void look_at(std::span<const std::size_t> alike) {
        const Bike& one = *bikes_[alike.front()];
        JudgedBike judged{.bike = &one,
                          .suits_stage = judge_.suits_stage(one),
                          .fit = judge_.fit(one),
                          .life = {},
                          .cost = CostGap::no_forecast,
                          .checks = {},
                          .standing = {},
                          .beaten_by = nullptr,
                          .not_offered = {}};
        bool lives = false;
        for (const std::size_t number : alike) {
            judged.bike = bikes_[number];
            const OrderFacts hoped = hoped_facts(judged);
            if (!may_be_first_choice(hoped))
                return; // nor may any other of them: it is the fit that forbids it
            if (!comes_first(hoped, number) || !reasons_against(*judged.bike, wants_).empty())
                continue;
            if (!lives)
                judged.life = judge_.life(one);
            lives = true;
            consider(judged, number);
            judged.checks = {};
        }
    }

    std::optional<std::size_t> found() const { return found_; }

private:
    bool comes_first(const OrderFacts& facts, std::size_t number) const {
        if (!found_)
            return true;
        const int order = rule_.compared(facts, facts_);
        return order != 0 ? order < 0 : number < *found_;
    }

    void consider(JudgedBike& judged, std::size_t number) {
        judged.cost = judge_.cost(*judged.bike, judged.life);
        if (!comes_first(order_facts(judged), number))
            return;
        judge_.check(*judged.bike, judged.fit, results_);
        judged.checks = check_counts(results_);
        const OrderFacts facts = order_facts(judged);
        if (!may_be_first_choice(facts))
            return;
        facts_ = facts;
        found_ = number;
    }

    std::span<const Bike* const> bikes_;
    const Wants& wants_;
    RiderJudge judge_;
    BikeOrder rule_;
    std::vector<CheckResult> results_;
    std::optional<std::size_t> found_;
    OrderFacts facts_;
};

} // namespace

FirstChoice::FirstChoice(std::span<const Bike> list, std::span<const Bike> taped) {
    for (const auto& part : {list, taped}) {
        for (const Bike& bike : part)
            bikes_.push_back(&bike);
    }
    std::vector<std::size_t> numbers(bikes_.size());
    std::iota(numbers.begin(), numbers.end(), std::size_t{0});
    heap_sort(numbers, [&](std::size_t a, std::size_t b) {
        const auto of_a = kind_and_span(*bikes_[a]);
        const auto of_b = kind_and_span(*bikes_[b]);
        return of_a != of_b ? of_a < of_b : a < b;
    });
    for (const std::size_t number : numbers) {
        if (alike_.empty() || kind_and_span(*bikes_[alike_.back().front()]) != kind_and_span(*bikes_[number]))
            alike_.emplace_back();
        alike_.back().push_back(number);
    }
}

std::optional<std::size_t> FirstChoice::of(const FitQuestion& question) const {
    Search search(question, bikes_);
    for (const std::vector<std::size_t>& alike : alike_)
        search.look_at(alike);
    return search.found();
}

} // namespace saddlerule
