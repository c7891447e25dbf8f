#include "core/planning/rota/rota_search.h"

#include "core/base/sorting/sorting.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <tuple>
#include <utility>
#include <vector>

namespace saddlerule {
namespace {

constexpr std::uint32_t no_ride = 0xffffffff;
constexpr std::uint32_t no_state = 0xffffffff;

/// What is remembered of a bike that somebody can still want: who rode it, and whether it is gone.
struct UsedBike {
    std::uint32_t bike = 0;
    std::uint16_t rode = 0; ///< bits of riders who may not take it up again
    bool sold = false;

    friend bool operator==(const UsedBike&, const UsedBike&) = default;
};

/// All that the months to come depend on, at the beginning of a month.
struct State {
    std::array<std::uint32_t, most_rota_riders> on{}; ///< the ride each rider was on the month before
    std::int64_t spent = 0;                           ///< of this year's money
    std::vector<UsedBike> used;                       ///< by bike
    RotaWorth so_far;
    RotaWorth bound;
    std::uint32_t from = no_state; ///< the step that led here

    bool same_future(const State& other) const {
        return on == other.on && spent == other.spent && used == other.used;
    }
    std::size_t hash() const {
        auto mixed = static_cast<std::size_t>(spent);
        const auto mix = [&](std::size_t value) { mixed = (mixed ^ value) * 0x9e3779b1u + (mixed >> 15); };
        for (const std::uint32_t ride : on)
            mix(ride);
        for (const UsedBike& bike : used)
            mix(bike.bike * 4096u + bike.rode * 2u + (bike.sold ? 1u : 0u));
        return mixed;
    }
    const UsedBike* find(std::uint32_t bike) const {
        const auto found =
            std::lower_bound(used.begin(), used.end(), bike,
                             [](const UsedBike& one, std::uint32_t id) { return one.bike < id; });
        return found != used.end() && found->bike == bike ? &*found : nullptr;
    }
    UsedBike& entry(std::uint32_t bike) {
        const auto found =
            std::lower_bound(used.begin(), used.end(), bike,
                             [](const UsedBike& one, std::uint32_t id) { return one.bike < id; });
        if (found != used.end() && found->bike == bike)
            return *found;
        return *used.insert(found, UsedBike{.bike = bike});
    }
};

/// What everybody did in a month of a state that was kept.
struct Step {
    std::uint32_t before = no_state;
    std::array<std::uint32_t, most_rota_riders> on{};
};

/// What one rider may do next, and by how much that raises the bound.
struct Option {
    std::uint32_t ride = no_ride;
    RotaWorth raise;
    bool gets_on = false;
};

class Search {
public:
    Search(const RotaIndex& index, const RotaBound& bound, RotaWorth to_beat, std::size_t width,
           const KeepGoing& keep_going)
        : index_(index), problem_(index.problem), bound_(bound), to_beat_(to_beat), width_(width),
          keep_going_(keep_going) {
        find_twins();
    }

    RotaSearchResult run() {
        states_.assign(1, State{});
        states_[0].on.fill(no_ride);
        states_[0].bound = bound_of(states_[0], 0);
        for (month_ = 0; month_ < problem_.months && !states_.empty(); ++month_) {
            sort_getting_on();
            next_.clear();
            table_.assign(1024, no_state);
            for (state_ = 0; state_ < states_.size(); ++state_) {
                if (++asked_ % 64 == 0 && keep_going_ && !keep_going_()) {
                    result_.stopped = true;
                    result_.left_out = RotaWorth{};
                    return result_;
                }
                expand(states_[state_]);
            }
            keep_the_best();
        }
        if (!states_.empty())
            finish(*std::min_element(states_.begin(), states_.end(),
                                     [](const State& a, const State& b) { return a.so_far < b.so_far; }));
        return result_;
    }

private:
    // Bikes that nobody can tell apart are bought in order.
    void find_twins() {
        twin_before_.assign(problem_.bikes.size(), no_state);
        std::vector<std::vector<const RotaRide*>> rides(problem_.bikes.size());
        for (const RotaRide& ride : problem_.rides)
            rides[ride.bike].push_back(&ride);
        std::vector<std::uint32_t> order;
        for (std::uint32_t bike = 0; bike < problem_.bikes.size(); ++bike) {
            if (!rides[bike].empty())
                order.push_back(bike);
            if (problem_.bikes[bike].owned && !rides[bike].empty())
                owned_.push_back(bike);
        }
        const auto compared = [&](std::uint32_t a, std::uint32_t b) {
            const RotaBike& x = problem_.bikes[a];
            const RotaBike& y = problem_.bikes[b];
            const auto facts = [](const RotaBike& bike) {
                return std::tuple(bike.price, bike.net, bike.owned, bike.kept);
            };
            if (facts(x) != facts(y))
                return facts(x) < facts(y) ? -1 : 1;
            return compared_rides(rides[a], rides[b]);
        };
        heap_sort(order, [&](std::uint32_t a, std::uint32_t b) {
            const auto order_of_two = compared(a, b);
            return order_of_two == 0 ? a < b : order_of_two < 0;
        });
        for (std::size_t i = 1; i < order.size(); ++i) {
            if (compared(order[i - 1], order[i]) == 0)
                twin_before_[order[i]] = order[i - 1];
        }
    }

    int compared_rides(const std::vector<const RotaRide*>& a, const std::vector<const RotaRide*>& b) const {
        if (a.size() != b.size())
            return a.size() < b.size() ? -1 : 1;
        for (std::size_t i = 0; i < a.size(); ++i) {
            const auto months = [](const RotaRide& ride) {
                return std::tuple(ride.rider, ride.first, ride.last);
            };
            if (months(*a[i]) != months(*b[i]))
                return months(*a[i]) < months(*b[i]) ? -1 : 1;
            for (int month = a[i]->first; month <= a[i]->last; ++month) {
                const std::int64_t difference = problem_.chance(*a[i], month) - problem_.chance(*b[i], month);
                if (difference != 0)
                    return difference < 0 ? -1 : 1;
            }
        }
        return 0;
    }

    RotaWorth bound_of(const State& state, int month) const {
        RotaWorth sum = state.so_far;
        for (int rider = 0; rider < problem_.riders; ++rider)
            sum += state.on[place_of(rider)] == no_ride ? bound_.free(rider, month)
                                                        : bound_.coming(state.on[place_of(rider)], month);
        sum.major -= bound_.profits(month) + bound_.places(month) + bound_.promised_money(month, state.spent);
        if (month >= problem_.months)
            return sum;
        // A bike that is there costs no more, and takes in all that its riders pay.
        for (const UsedBike& used : state.used) {
            sum.major += bound_.profit(used.bike, month);
            if (!used.sold)
                sum.major -= bound_.takings(used.bike, month, ~std::uint32_t{used.rode});
        }
        return sum;
    }

    static void sort(std::vector<Option>& options) {
        heap_sort(options, [](const Option& a, const Option& b) {
            return a.raise != b.raise ? a.raise < b.raise : a.ride < b.ride;
        });
    }

    void sort_getting_on() {
        for (int rider = 0; rider < problem_.riders; ++rider) {
            std::vector<Option>& options = getting_on_[place_of(rider)];
            options.clear();
            for (const std::uint32_t ride : index_.rides_in(rider, month_)) {
                options.push_back({.ride = ride,
                                   .raise = bound_.getting_on(ride) + bound_.riding(ride, month_),
                                   .gets_on = true});
            }
            sort(options);
        }
    }

    void expand(const State& state) {
        slack_ = to_beat_ - state.bound;
        for (int rider = 0; rider < problem_.riders; ++rider) {
            std::vector<Option>& options = options_[place_of(rider)];
            options.clear();
            const std::uint32_t on = state.on[place_of(rider)];
            const RotaWorth now = on == no_ride ? bound_.free(rider, month_) : bound_.coming(on, month_);
            const auto offer = [&](std::uint32_t ride, RotaWorth to_come, bool gets_on) {
                if (to_come - now < slack_)
                    options.push_back({.ride = ride, .raise = to_come - now, .gets_on = gets_on});
            };
            if (on != no_ride && month_ <= problem_.rides[on].last)
                offer(on, bound_.riding(on, month_), false);
            offer(no_ride, bound_.without(rider, month_) + bound_.free(rider, month_ + 1), false);
            for (const Option& option : getting_on_[place_of(rider)]) {
                if (option.raise - now >= slack_)
                    break;
                const UsedBike* used = state.find(problem_.rides[option.ride].bike);
                if (used != nullptr && (used->sold || (used->rode >> rider & 1U) != 0))
                    continue;
                if (options.size() > 4 + width_ / 64) { // their product is gone through
                    result_.left_out = std::min(result_.left_out, state.bound + (option.raise - now));
                    break;
                }
                offer(option.ride, option.raise, true);
            }
            if (many_riders())
                sort(options);
        }
        choices_left_ = std::min(most_choices, 32 * width_);
        choose(state, 0, {});
    }

    /// So many that not all that they could choose in a month can be gone through: the likeliest choices come first then.
    bool many_riders() const { return problem_.riders > 4; }

    void choose(const State& state, int rider, RotaWorth raised) {
        if (rider == problem_.riders) {
            --choices_left_;
            follow(state);
            return;
        }
        for (const Option& option : options_[place_of(rider)]) {
            if (raised + option.raise >= slack_)
                continue;
            if (many_riders() && choices_left_ == 0) {
                result_.left_out = std::min(result_.left_out, state.bound + raised + option.raise);
                return;
            }
            if (option.ride != no_ride) {
                const std::uint32_t bike = problem_.rides[option.ride].bike;
                const bool taken =
                    std::any_of(chosen_.begin(), chosen_.begin() + rider, [&](const Option& other) {
                        return other.ride != no_ride && problem_.rides[other.ride].bike == bike;
                    });
                if (taken)
                    continue;
            }
            chosen_[place_of(rider)] = option;
            choose(state, rider + 1, raised + option.raise);
        }
    }

    bool ridden_now(std::uint32_t bike) const {
        return std::any_of(chosen_.begin(), chosen_.begin() + problem_.riders, [&](const Option& option) {
            return option.ride != no_ride && problem_.rides[option.ride].bike == bike;
        });
    }

    /// The state after what everybody has chosen, where the rules allow it.
    void follow(const State& state) {
        State next = state;
        for (int rider = 0; rider < problem_.riders; ++rider) {
            const Option& option = chosen_[place_of(rider)];
            next.on[place_of(rider)] = option.ride;
            if (option.ride == no_ride) {
                next.so_far += bound_.without(rider, month_);
                continue;
            }
            const RotaRide& ride = problem_.rides[option.ride];
            next.so_far.minor -= problem_.chance(ride, month_);
            if (!option.gets_on)
                continue;
            next.so_far.minor += change_weight;
            const RotaBike& bike = problem_.bikes[ride.bike];
            if (state.find(ride.bike) == nullptr) {
                const std::uint32_t twin = twin_before_[ride.bike];
                if (twin != no_state && state.find(twin) == nullptr && !ridden_now(twin))
                    return;
                next.so_far.major += bike.net;
                next.spent += problem_.most_per_year ? bike.price : 0;
            }
            UsedBike& used = next.entry(ride.bike);
            used.rode = static_cast<std::uint16_t>(used.rode | 1U << rider);
        }
        if (problem_.most_per_year && next.spent > *problem_.most_per_year)
            return;
        if (!problem_.most_bikes) {
            settle(next);
            return;
        }
        make_room(next);
    }

    /// Bikes in the shed that wait for somebody: all of them are counted, and some are sold where there are too many.
    void make_room(State& next) {
        int places = index_.free_places();
        waiting_.clear();
        const auto count = [&](std::uint32_t bike, const UsedBike* used) {
            if (index_.always_in_shed(bike))
                return;
            const RotaBike& one = problem_.bikes[bike];
            if (ridden_now(bike) || (one.kept && !one.owned))
                --places;
            else if ((used == nullptr || !used->sold) && wanted(bike, used))
                waiting_.push_back(bike);
        };
        for (const std::uint32_t bike : owned_) {
            if (next.find(bike) == nullptr)
                count(bike, nullptr);
        }
        for (const UsedBike& used : next.used)
            count(used.bike, &used);
        if (places < 0)
            return;
        sell_down_to(next, 0, static_cast<std::size_t>(places));
    }

    /// Whether anybody may still ride it after this month.
    bool wanted(std::uint32_t bike, const UsedBike* used) const {
        for (std::uint32_t pair = index_.first_pair[bike]; pair < index_.first_pair[bike + 1]; ++pair) {
            const bool rode = used != nullptr && (used->rode >> index_.pairs[pair].rider & 1U) != 0;
            if (!rode && index_.pairs[pair].last > month_)
                return true;
        }
        return false;
    }

    /// Keeps every choice of `places` waiting bikes, each as a state of its own.
    void sell_down_to(State& next, std::size_t from, std::size_t places) {
        if (waiting_.size() - from <= places) {
            State settled = next;
            settle(settled);
            return;
        }
        if (++sales_ % 4096 == 0 && sales_ > most_sales) {
            // Too many ways to clear a shed: left out, with the bound that holds for all of them.
            result_.left_out = std::min(result_.left_out, bound_of(next, month_ + 1));
            return;
        }
        if (places > 0)
            sell_down_to(next, from + 1, places - 1);
        State without = next;
        without.entry(waiting_[from]).sold = true;
        sell_down_to(without, from + 1, places);
    }

    /// Forgets what no longer matters and keeps the state where it may lead to something better.
    void settle(State& next) {
        std::erase_if(next.used, [&](const UsedBike& used) {
            if (problem_.most_bikes && problem_.bikes[used.bike].kept)
                return false;
            for (std::uint32_t pair = index_.first_pair[used.bike]; pair < index_.first_pair[used.bike + 1];
                 ++pair) {
                if (index_.pairs[pair].last > month_)
                    return false;
            }
            return true;
        });
        if (month_ + 1 < problem_.months && index_.year(month_ + 1) != index_.year(month_))
            next.spent = 0;
        next.bound = bound_of(next, month_ + 1);
        if (next.bound >= to_beat_)
            return;
        next.from = state_;
        std::size_t at = next.hash() & (table_.size() - 1);
        while (table_[at] != no_state) {
            State& there = next_[table_[at]];
            if (there.same_future(next)) {
                if (next.so_far < there.so_far)
                    there = std::move(next);
                return;
            }
            at = (at + 1) & (table_.size() - 1);
        }
        table_[at] = static_cast<std::uint32_t>(next_.size());
        next_.push_back(std::move(next));
        if (next_.size() * 2 > table_.size())
            grow_table();
        if (next_.size() > 4 * width_ + 1000)
            shrink(2 * width_);
    }

    void grow_table() { fill_table(table_.size() * 2); }

    void fill_table(std::size_t size) {
        table_.assign(size, no_state);
        for (std::uint32_t i = 0; i < next_.size(); ++i) {
            std::size_t at = next_[i].hash() & (size - 1);
            while (table_[at] != no_state)
                at = (at + 1) & (size - 1);
            table_[at] = i;
        }
    }

    void shrink(std::size_t width) {
        if (next_.size() <= width)
            return;
        // Not the states themselves, which are large; the first of equals, so that every compiler's library keeps the same ones.
        struct Place {
            RotaWorth bound;
            std::uint32_t at;
        };
        std::vector<Place> places;
        places.reserve(next_.size());
        for (std::uint32_t i = 0; i < next_.size(); ++i)
            places.push_back({.bound = next_[i].bound, .at = i});
        std::nth_element(places.begin(), places.begin() + static_cast<std::ptrdiff_t>(width), places.end(),
                         [](const Place& a, const Place& b) {
                             return a.bound < b.bound || (!(b.bound < a.bound) && a.at < b.at);
                         });
        for (std::size_t i = width; i < places.size(); ++i) {
            result_.left_out = std::min(result_.left_out, places[i].bound);
            next_[places[i].at].from = no_state;
        }
        std::erase_if(next_, [](const State& state) { return state.from == no_state; });
        fill_table(table_.size());
    }

    void keep_the_best() {
        shrink(width_);
        const std::size_t steps_before = steps_.size();
        for (std::size_t i = 0; i < next_.size(); ++i) {
            steps_.push_back({.before = states_[next_[i].from].from, .on = next_[i].on});
            next_[i].from = static_cast<std::uint32_t>(steps_before + i);
        }
        std::swap(states_, next_);
    }

    void finish(const State& last) {
        result_.worth = last.so_far;
        std::vector<std::uint32_t> way;
        for (std::uint32_t step = last.from; step != no_state; step = steps_[step].before)
            way.push_back(step);
        std::reverse(way.begin(), way.end());
        Rota rota;
        for (int rider = 0; rider < problem_.riders; ++rider) {
            std::uint32_t on = no_ride;
            for (int month = 0; month < problem_.months; ++month) {
                const std::uint32_t ride = steps_[way[static_cast<std::size_t>(month)]].on[place_of(rider)];
                if (ride != no_ride && ride == on)
                    ++rota.back().to;
                else if (ride != no_ride)
                    rota.push_back(
                        {.rider = rider, .bike = problem_.rides[ride].bike, .from = month, .to = month + 1});
                on = ride;
            }
        }
        result_.rota = std::move(rota);
    }

    static constexpr std::size_t most_sales = 2'000'000;

    const RotaIndex& index_;
    const RotaProblem& problem_;
    const RotaBound& bound_;
    RotaWorth to_beat_;
    std::size_t width_;
    const KeepGoing& keep_going_;
    /// Of what many riders choose between them in a month, in one state.
    static constexpr std::size_t most_choices = 4096;
    std::size_t choices_left_ = 0;

    std::vector<std::uint32_t> twin_before_;
    std::vector<std::uint32_t> owned_; ///< those that somebody can ride
    std::vector<State> states_;
    std::vector<State> next_;
    std::vector<std::uint32_t> table_;
    std::vector<Step> steps_;
    std::array<std::vector<Option>, most_rota_riders> getting_on_;
    std::array<std::vector<Option>, most_rota_riders> options_;
    std::array<Option, most_rota_riders> chosen_{};
    std::vector<std::uint32_t> waiting_;
    RotaWorth slack_;
    int month_ = 0;
    std::uint32_t state_ = 0;
    std::size_t asked_ = 0;
    std::size_t sales_ = 0;
    RotaSearchResult result_;
};

} // namespace

RotaSearchResult search_rota(const RotaIndex& index, const RotaBound& bound, RotaWorth to_beat,
                             std::size_t width, const KeepGoing& keep_going) {
    return Search(index, bound, to_beat, width, keep_going).run();
}

} // namespace saddlerule
