#include "core/planning/club/club_day.h"

#include "core/base/sorting/sorting.h"
#include "core/planning/assignment/assignment.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

namespace saddlerule {
namespace {

/// Chances count in the millionths that answers give: what is equal there is equal here, and finer differences mean nothing.
constexpr double chance_units = 1e6;
constexpr std::int64_t least_chance = 500'000;

/// A bike that misses the window by so much is left out unjudged; nearer to its edge the verdict itself decides.
constexpr Length surely_outside = Length::millimetres(1.0);

std::int64_t grams(Mass mass) {
    return std::llround(mass.in_kilograms() * 1000.0);
}

/// The chance, where the bike's saddle can be set for the rider and the chance is one half or more.
std::optional<std::int64_t> seating_chance(const Fit& fit) {
    if (!fit.probability || !fit.setting)
        return std::nullopt;
    const std::int64_t chance = std::llround(*fit.probability * chance_units);
    return chance >= least_chance ? std::optional(chance) : std::nullopt;
}

/// Pairs to be looked up, by rider and then by bike.
class PairSet {
public:
    explicit PairSet(std::vector<ClubPair> pairs) : pairs_(std::move(pairs)) {
        heap_sort(pairs_, [](const ClubPair& a, const ClubPair& b) {
            return std::pair(a.rider, a.bike) < std::pair(b.rider, b.bike);
        });
    }

    const ClubPair* find(std::size_t rider, std::size_t bike) const {
        const auto at = std::lower_bound(
            pairs_.begin(), pairs_.end(), std::pair(rider, bike),
            [](const ClubPair& a, const auto& wanted) { return std::pair(a.rider, a.bike) < wanted; });
        return at != pairs_.end() && at->rider == rider && at->bike == bike ? &*at : nullptr;
    }

private:
    std::vector<ClubPair> pairs_;
};

/// A number that has no effect where it is not known: the difference from the mean of those that are.
std::vector<std::int64_t> from_the_mean(const std::vector<std::optional<std::int64_t>>& amounts) {
    std::int64_t sum = 0;
    std::int64_t count = 0;
    for (const auto& amount : amounts) {
        sum += amount.value_or(0);
        count += amount ? 1 : 0;
    }
    std::vector<std::int64_t> differences;
    differences.reserve(amounts.size());
    for (const auto& amount : amounts)
        differences.push_back(amount ? *amount - sum / count : 0);
    return differences;
}

class Planner {
public:
    explicit Planner(const ClubQuestion& question)
        : question_(question), never_(question.never), before_(question.before),
          seats_of_(question.bikes.size()), would_seat_(question.bikes.size()),
          place_of_(question.riders.size()) {}

    ClubDay run() {
        for (const auto& rider : question_.riders)
            day_.riders.push_back(rider
                                      ? std::optional(RiderToday(*rider, question_.today, question_.off_road))
                                      : std::nullopt);
        weigh();
        take_locked();
        assign();
        seat();
        list_left();
        list_spare();
        return std::move(day_);
    }

private:
    struct Candidate {
        Choice choice;
        Fit fit;
    };

    const Bike& bike(std::size_t index) const { return question_.bikes[index]; }

    void weigh() {
        std::vector<std::optional<std::int64_t>> of_bikes;
        for (std::size_t i = 0; i < question_.bikes.size(); ++i) {
            const auto& mass = bike(i).mass;
            of_bikes.push_back(mass && !question_.absent[i] ? std::optional(grams(*mass)) : std::nullopt);
        }
        bike_weights_ = from_the_mean(of_bikes);
        std::vector<std::optional<std::int64_t>> of_riders;
        for (std::size_t i = 0; i < question_.riders.size(); ++i) {
            const auto& rider = day_.riders[i];
            of_riders.push_back(rider ? std::optional(grams(question_.riders[i]->mass.value_or(
                                            rider->assumed_mass().value_or(Mass()))))
                                      : std::nullopt);
        }
        rider_weights_ = from_the_mean(of_riders);
    }

    void take_locked() {
        for (std::size_t i = 0; i < question_.bikes.size(); ++i)
            room_.push_back(question_.absent[i] ? 0 : static_cast<std::uint32_t>(question_.rounds));
        for (const ClubPair& pair : question_.locked) {
            place_of_[pair.rider] = pair.bike;
            locked_.push_back(pair.rider);
            if (room_[pair.bike] > 0)
                --room_[pair.bike];
        }
        heap_sort(locked_);
    }

    bool is_locked(std::size_t rider) const {
        return std::binary_search(locked_.begin(), locked_.end(), rider);
    }

    bool stopped(const RiderToday& rider, const Bike& ridden, const Fit& fit) {
        rider.check(ridden, fit, findings_);
        return counts_of(findings_).stops > 0;
    }

    void assign() {
        ChoiceTable table;
        std::vector<std::size_t> askers;
        for (std::size_t i = 0; i < question_.riders.size(); ++i) {
            if (!day_.riders[i])
                continue;
            if (is_locked(i))
                find_candidates(i, *day_.riders[i]); // for what spare bikes would fit
            else
                askers.push_back(i);
        }
        for (const std::size_t rider : askers) {
            add_choices(table, rider, askers.size());
            table.next_asker();
        }
        const auto places = cheapest_assignment(table, room_);
        for (std::size_t i = 0; i < askers.size(); ++i)
            place_of_[askers[i]] = places[i] ? std::optional<std::size_t>(*places[i]) : std::nullopt;
    }

    /// The bikes that fit the rider. The best ones do: with as many as there are askers, others can never take all of them.
    void add_choices(ChoiceTable& table, std::size_t rider, std::size_t askers) {
        const RiderToday& today = *day_.riders[rider];
        find_candidates(rider, today);
        if (candidates_.size() > askers)
            heap_sort(candidates_, [](const Candidate& a, const Candidate& b) {
                const LayeredCost first = a.choice.cost();
                const LayeredCost second = b.choice.cost();
                return first == second ? a.choice.place < b.choice.place : first < second;
            });
        std::size_t taken = 0;
        for (const Candidate& candidate : candidates_) {
            if (taken == askers)
                break;
            if (stopped(today, bike(candidate.choice.place), candidate.fit))
                continue;
            table.add(candidate.choice);
            ++taken;
        }
    }

    void find_candidates(std::size_t rider, const RiderToday& today) {
        candidates_.clear();
        const SaddleWindow window = today.window();
        for (std::size_t i = 0; i < question_.bikes.size(); ++i) {
            const Bike& offered = bike(i);
            // Nothing that misses the window has an even chance; this spares most bikes the judging.
            const bool misses =
                (offered.saddle_lowest && *offered.saddle_lowest > window.range.high() + surely_outside) ||
                (offered.saddle_highest && *offered.saddle_highest < window.range.low() - surely_outside);
            if (misses || question_.absent[i] || !today.suits_stage(offered) || never_.find(rider, i))
                continue;
            const Fit fit = today.fit(offered);
            const auto chance = seating_chance(fit);
            if (!chance)
                continue;
            would_seat_[i].push_back(rider);
            if (room_[i] == 0)
                continue;
            const double off = std::fabs((fit.setting->above_floor - window.target).in_millimetres());
            candidates_.push_back({.choice = {.place = static_cast<std::uint32_t>(i),
                                              .first = static_cast<std::int32_t>(-*chance),
                                              .second = static_cast<std::int32_t>(std::lround(off * 10.0)),
                                              .third = -bike_weights_[i] * rider_weights_[rider],
                                              .fourth = before_.find(rider, i) ? -1 : 0},
                                   .fit = fit});
        }
    }

    void seat() {
        for (std::size_t rider = 0; rider < place_of_.size(); ++rider) {
            if (!place_of_[rider])
                continue;
            const std::size_t ridden = *place_of_[rider];
            SeatedRider seated{.rider = rider,
                               .bike = ridden,
                               .round = -1,
                               .locked = is_locked(rider),
                               .fit = {},
                               .checks = {}};
            if (const auto& today = day_.riders[rider]) {
                seated.fit = today->fit(bike(ridden));
                today->check(bike(ridden), seated.fit, findings_);
                seated.checks = counts_of(findings_);
            }
            seats_of_[ridden].push_back(day_.seated.size());
            day_.seated.push_back(seated);
        }
        for (const auto& seats : seats_of_)
            give_rounds(seats);
    }

    /// Rounds that were fixed, then those of last time, then the earliest that are free.
    void give_rounds(const std::vector<std::size_t>& seats) {
        std::vector<bool> taken(static_cast<std::size_t>(question_.rounds));
        const auto take = [&](SeatedRider& seated, const ClubPair* pair) {
            if (seated.round >= 0 || !pair || !pair->round || *pair->round >= question_.rounds)
                return;
            const auto wanted = static_cast<std::size_t>(*pair->round);
            if (taken[wanted])
                return;
            taken[wanted] = true;
            seated.round = *pair->round;
        };
        if (seats.size() == 1 && question_.rounds == 1) {
            day_.seated[seats.front()].round = 0;
            return;
        }
        for (const std::size_t seat : seats) {
            for (const ClubPair& pair : question_.locked) {
                if (pair.rider == day_.seated[seat].rider)
                    take(day_.seated[seat], &pair);
            }
        }
        for (const std::size_t seat : seats)
            take(day_.seated[seat], before_.find(day_.seated[seat].rider, day_.seated[seat].bike));
        for (const std::size_t seat : seats) {
            SeatedRider& seated = day_.seated[seat];
            if (seated.round >= 0)
                continue;
            const auto free = std::find(taken.begin(), taken.end(), false);
            // More riders than rounds can only come of pairs that were fixed.
            seated.round =
                free == taken.end() ? question_.rounds - 1 : static_cast<int>(free - taken.begin());
            if (free != taken.end())
                *free = true;
        }
    }

    void list_left() {
        std::vector<Unseated> unseated;
        for (std::size_t rider = 0; rider < place_of_.size(); ++rider) {
            if (place_of_[rider])
                continue;
            const auto& today = day_.riders[rider];
            if (!today) {
                day_.left.push_back({.rider = rider,
                                     .because = LeftBecause::not_measured,
                                     .bikes = {},
                                     .nearest = {},
                                     .to_measure = {}});
                continue;
            }
            day_.left.push_back(reason_of(rider, *today));
            unseated.push_back({.rider = rider,
                                .inseam = today->estimate(),
                                .offsets = today->offsets(),
                                .kind = today->kind()});
        }
        insertion_sort(day_.left, [&](const RiderLeft& a, const RiderLeft& b) {
            return age_of(a.rider) < age_of(b.rider);
        });
        day_.to_get = bikes_to_get(unseated, question_.rounds);
    }

    /// As the growth model has it: from the date of birth, or else the likeliest of what was measured. Last: of whom nothing is
    /// known.
    Days age_of(std::size_t rider) const {
        const auto& today = day_.riders[rider];
        if (!today)
            return Days::years(1000.0);
        double years = 0.0;
        for (const GrowthHypothesis& child : today->growth().hypotheses())
            years += child.weight * child.age_today.in_years();
        return Days::years(years);
    }

    RiderLeft reason_of(std::size_t rider, const RiderToday& today) {
        std::vector<std::size_t> taken;
        std::vector<std::size_t> ruled_out;
        std::vector<std::size_t> away;
        std::vector<std::size_t> stopped_by;
        RiderLeft left{
            .rider = rider, .because = LeftBecause::none_fits, .bikes = {}, .nearest = {}, .to_measure = {}};
        std::optional<Length> nearest_margin;
        for (std::size_t i = 0; i < question_.bikes.size(); ++i) {
            const Bike& offered = bike(i);
            if (!today.suits_stage(offered))
                continue;
            const Fit fit = today.fit(offered);
            const bool in_play = !question_.absent[i] && !never_.find(rider, i);
            if (seating_chance(fit)) {
                const bool stops = stopped(today, offered, fit);
                auto& list = stops                              ? stopped_by
                             : question_.absent[i]              ? away
                             : never_.find(rider, i) != nullptr ? ruled_out
                                                                : taken;
                list.push_back(i);
            } else if (in_play && fit.verdict == Verdict::not_measured) {
                left.to_measure.push_back(i);
            } else if (in_play && fit.margin && (!nearest_margin || *fit.margin > *nearest_margin)) {
                nearest_margin = fit.margin;
                left.nearest =
                    NearestMiss{.bike = i, .verdict = fit.verdict, .by = std::max(-*fit.margin, Length())};
            }
        }
        const auto settle = [&](LeftBecause because, std::vector<std::size_t>& bikes) {
            if (left.because != LeftBecause::none_fits || bikes.empty())
                return;
            left.because = because;
            left.bikes = std::move(bikes);
            left.nearest.reset();
            left.to_measure.clear();
        };
        settle(LeftBecause::all_taken, taken);
        settle(LeftBecause::ruled_out, ruled_out);
        settle(LeftBecause::away, away);
        settle(LeftBecause::check_stops, stopped_by);
        return left;
    }

    void list_spare() {
        for (std::size_t i = 0; i < question_.bikes.size(); ++i) {
            if (question_.absent[i] || !seats_of_[i].empty())
                continue;
            std::vector<std::size_t>& riders = would_seat_[i];
            std::erase_if(riders, [&](std::size_t rider) {
                const RiderToday& today = *day_.riders[rider];
                return stopped(today, bike(i), today.fit(bike(i)));
            });
            day_.spare.push_back({.bike = i, .would_fit = std::move(riders)});
        }
    }

    const ClubQuestion& question_;
    PairSet never_;
    PairSet before_;
    std::vector<std::int64_t> bike_weights_;
    std::vector<std::int64_t> rider_weights_;
    std::vector<std::uint32_t> room_;
    std::vector<std::size_t> locked_;
    std::vector<std::vector<std::size_t>> seats_of_;   ///< of each bike, places in `day_.seated`
    std::vector<std::vector<std::size_t>> would_seat_; ///< of each bike, riders whom its saddle suits
    std::vector<std::optional<std::size_t>> place_of_;
    ClubDay day_;
    // Used again and again.
    std::vector<Candidate> candidates_;
    std::vector<CheckResult> findings_;
};

} // namespace

ClubDay plan_club_day(const ClubQuestion& question) {
    return Planner(question).run();
}

} // namespace saddlerule
