#include "core/planning/years/future_rider.h"

#include "core/base/statistics/normal_distribution.h"
#include "core/fit/growth/growth_reference.h"
#include "core/fit/verdict/saddle_window.h"

#include <algorithm>
#include <cmath>

namespace saddlerule {
namespace {

Rider with_pedals(Rider rider, CalendarDate today) {
    const bool ahead = rider.pedals_from && *rider.pedals_from > today;
    if (rider.stage == Stage::gliding && !ahead)
        rider.pedals_from = today.plus_months(usual_months_gliding);
    return rider;
}

Mass median_mass(const RiderGrowth& growth, Days later) {
    double kilograms = 0.0;
    for (const GrowthHypothesis& child : growth.hypotheses()) {
        const Mass median = weight_reference(child.sex, child.age_today + later).median;
        kilograms += child.weight * median.in_kilograms();
    }
    return Mass::kilograms(kilograms);
}

/// The inseam of which that score is passed on a tabulated day.
Length inseam_of(const ScoreTable& table, std::size_t day, double score) {
    const InseamGrid& grid = table.grid();
    std::size_t low = 0;
    std::size_t high = grid.count - 1;
    while (high - low > 1) {
        const std::size_t middle = (low + high) / 2;
        (table.row_of(grid.at(middle)).on(day) <= score ? low : high) = middle;
    }
    const double below = table.row_of(grid.at(low)).on(day);
    const double rise = table.row_of(grid.at(high)).on(day) - below;
    const double fraction = rise > 0.0 ? std::clamp((score - below) / rise, 0.0, 1.0) : 0.0;
    return grid.at(low) + grid.step * fraction;
}

} // namespace

FutureRider::FutureRider(const Rider& rider, CalendarDate today, int months)
    : rider_(with_pedals(rider, today)), growth_(RiderGrowth::of(rider_, today)),
      forecast_(growth_, rider_, std::max(months, 1)) {
    const std::vector<double>& days = forecast_.months();
    for (int month = 0; month < months; ++month) {
        Moment moment;
        moment.day =
            static_cast<std::size_t>(std::lower_bound(days.begin(), days.end(), month) - days.begin());
        for (const StageFrom& stage : forecast_.timeline()) {
            if ((stage.from - today).in_months() <= month)
                moment.stage = stage.stage;
        }
        moment.inseam = month == 0 ? forecast_.inseam_today() : forecast_.median_inseams()[moment.day];
        moment.median_mass = median_mass(growth_, Days::months(month));
        moments_.push_back(moment);
    }
}

std::optional<std::vector<FitLimits>> FutureRider::limits(const Bike& bike) const {
    if (!bike.saddle_lowest || !bike.saddle_highest)
        return std::nullopt;
    std::vector<FitLimits> limits(moments_.size());
    fit_limits(forecast_, *bike.saddle_lowest, *bike.saddle_highest, limits);
    return limits;
}

std::optional<int> FutureRider::first_fit(const Bike& bike, double least_chance) const {
    const auto all = limits(bike);
    for (int month = 0; all && month < months(); ++month) {
        if (pedals(month) == (bike.kind == BikeKind::pedal) &&
            (*all)[static_cast<std::size_t>(month)].chance() >= least_chance)
            return month;
    }
    return std::nullopt;
}

std::vector<FitRun> FutureRider::runs(const Bike& bike, double least_chance) const {
    const auto all = limits(bike);
    std::vector<FitRun> runs;
    if (!all)
        return runs;
    const auto fits = [&](int month) {
        return month < months() && pedals(month) == (bike.kind == BikeKind::pedal) &&
               (*all)[static_cast<std::size_t>(month)].chance() >= least_chance;
    };
    for (int month = 0; month < months(); ++month) {
        if (!fits(month))
            continue;
        int first = month;
        while (fits(month + 1))
            ++month;
        int last = month;
        leave_out_stops(bike, first, last);
        if (first > last)
            continue;
        FitRun run{.first = first, .chances = {}};
        for (int on = first; on <= last; ++on)
            run.chances.push_back(
                static_cast<std::uint32_t>(std::lround((*all)[static_cast<std::size_t>(on)].chance() * 1e6)));
        runs.push_back(std::move(run));
    }
    return runs;
}

CheckedRider FutureRider::checked(int month) const {
    const Moment& then = moments_[static_cast<std::size_t>(month)];
    Rider rider = rider_;
    std::optional<EstimatedMass> estimated;
    if (rider.mass)
        rider.mass =
            Mass::kilograms(rider.mass->in_kilograms() * (then.median_mass / moments_[0].median_mass));
    else
        estimated = EstimatedMass{then.median_mass};
    return CheckedRider::of(rider, then.inseam, estimated);
}

std::vector<CheckResult> FutureRider::checks(const Bike& bike, int month) const {
    const CheckedRider rider = checked(month);
    return check_bike({.rider = rider, .bike = bike, .saddle_setting = saddle(bike, month)});
}

bool FutureRider::stops(const Check& check, const Bike& bike, int month) const {
    const CheckedRider rider = checked(month);
    const auto finding = check.judge({.rider = rider, .bike = bike, .saddle_setting = saddle(bike, month)});
    return finding && finding->state == CheckState::stop;
}

void FutureRider::leave_out_stops(const Bike& bike, int& first, int& last) const {
    for (const Check& check : all_checks()) {
        if (first > last)
            return;
        const bool at_first = stops(check, bike, first);
        const bool at_last = stops(check, bike, last);
        if (!at_first && !at_last)
            continue;
        if (at_first && at_last) {
            first = last + 1;
            return;
        }
        int before = first;
        int after = last;
        while (after - before > 1) {
            const int middle = (before + after) / 2;
            (stops(check, bike, middle) == at_first ? before : after) = middle;
        }
        if (at_first)
            first = after;
        else
            last = before;
    }
}

Length FutureRider::saddle(const Bike& bike, int month) const {
    const Moment& then = moments_[static_cast<std::size_t>(month)];
    const Length target = then.inseam + window_offsets(then.stage, rider_.confidence).target;
    const Length lowest = bike.saddle_lowest ? *bike.saddle_lowest : *bike.saddle_highest;
    const Length highest = bike.saddle_highest ? *bike.saddle_highest : *bike.saddle_lowest;
    return std::clamp(target, lowest, highest);
}

Length FutureRider::lowest_at_most(int from, int to, double share) const {
    Length lowest = Length::metres(100.0);
    for (int month = from; month < to; ++month) {
        const Moment& then = moments_[static_cast<std::size_t>(month)];
        lowest = std::min(lowest, inseam_of(forecast_.inseams(), then.day, normal::quantile(share)) +
                                      window_offsets(then.stage, rider_.confidence).range.high());
    }
    return lowest;
}

Length FutureRider::highest_at_least(int to, double share) const {
    Length highest;
    for (int month = 0; month < to; ++month) {
        const Moment& then = moments_[static_cast<std::size_t>(month)];
        highest = std::max(highest, inseam_of(forecast_.inseams(), then.day, normal::quantile(1.0 - share)) +
                                        window_offsets(then.stage, rider_.confidence).range.low());
    }
    return highest;
}

} // namespace saddlerule
