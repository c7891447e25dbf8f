#include "core/planning/assignment/assignment.h"

#include <algorithm>

namespace saddlerule {
namespace {

constexpr LayeredCost going_without({1, 0, 0, 0, 0});
constexpr std::uint32_t nobody = UINT32_MAX;

/// One search after another: each brings one asker in, and keeps what was found cheapest for those before.
///
/// Potentials keep `cost - asker - place` at zero or above for every choice and at zero for every choice made. A place with room has
/// potential zero, and so has going without; so the shortest path in these reduced costs is the cheapest change of all.
class AssignmentSearch {
public:
    AssignmentSearch(const ChoiceTable& table, std::span<const std::uint32_t> room)
        : table_(table), room_(room), asker_potential_(table.askers()), place_of_(table.askers()),
          place_potential_(room.size()), holders_(room.size()), reached_(room.size()) {}

    std::vector<std::optional<std::uint32_t>> run() {
        for (std::uint32_t asker = 0; asker < table_.askers(); ++asker)
            bring_in(asker);
        return std::move(place_of_);
    }

private:
    struct Reached {
        LayeredCost distance;
        std::uint32_t search = 0; ///< which one reached it; 0: none
        std::uint32_t from = nobody;
        bool settled = false;
    };
    struct Waiting {
        LayeredCost distance;
        std::uint32_t place;

        /// Heaps of the library have their largest in front.
        friend bool operator<(const Waiting& a, const Waiting& b) { return b.distance < a.distance; }
    };
    /// The cheapest end of a path seen so far: a place with room, or an asker who goes without.
    struct End {
        LayeredCost distance;
        std::uint32_t place = nobody;
        std::uint32_t asker = nobody;
    };
    struct Visited {
        std::uint32_t asker;
        LayeredCost distance;
    };

    bool has_room(std::uint32_t place) const { return holders_[place].size() < room_[place]; }

    void bring_in(std::uint32_t newcomer) {
        ++search_;
        waiting_.clear();
        visited_.clear();
        settled_.clear();
        end_ = {.distance = going_without, .place = nobody, .asker = newcomer};
        visit(newcomer, LayeredCost());
        while (!waiting_.empty() && waiting_.front().distance < end_.distance) {
            const Waiting next = waiting_.front();
            std::pop_heap(waiting_.begin(), waiting_.end());
            waiting_.pop_back();
            Reached& reached = reached_[next.place];
            if (reached.settled)
                continue;
            reached.settled = true;
            settled_.push_back(next.place);
            for (const std::uint32_t holder : holders_[next.place])
                visit(holder, next.distance);
        }
        move_potentials();
        change_hands(newcomer);
    }

    /// Looks from one asker at all places it may have.
    void visit(std::uint32_t asker, const LayeredCost& distance) {
        visited_.push_back({asker, distance});
        const LayeredCost base = distance - asker_potential_[asker];
        if (const LayeredCost out = base + going_without; out < end_.distance)
            end_ = {.distance = out, .place = nobody, .asker = asker};
        for (const Choice& choice : table_.of(asker)) {
            const LayeredCost to = base + choice.cost() - place_potential_[choice.place];
            if (!(to < end_.distance) || room_[choice.place] == 0)
                continue;
            Reached& reached = reached_[choice.place];
            if (reached.search == search_ && (reached.settled || !(to < reached.distance)))
                continue;
            reached = {.distance = to, .search = search_, .from = asker, .settled = false};
            if (has_room(choice.place)) {
                end_ = {.distance = to, .place = choice.place, .asker = nobody};
            } else {
                waiting_.push_back({to, choice.place});
                std::push_heap(waiting_.begin(), waiting_.end());
            }
        }
    }

    void move_potentials() {
        for (const Visited& one : visited_)
            asker_potential_[one.asker] = asker_potential_[one.asker] + (end_.distance - one.distance);
        for (const std::uint32_t place : settled_)
            place_potential_[place] = place_potential_[place] - (end_.distance - reached_[place].distance);
    }

    /// From the end of the path back to the newcomer, each asker on it takes the place that it reached.
    void change_hands(std::uint32_t newcomer) {
        std::uint32_t place = end_.place;
        if (place == nobody) {
            if (end_.asker == newcomer)
                return;
            place = leave_place(end_.asker);
        }
        while (true) {
            const std::uint32_t asker = reached_[place].from;
            const std::uint32_t left = asker == newcomer ? nobody : leave_place(asker);
            place_of_[asker] = place;
            holders_[place].push_back(asker);
            if (asker == newcomer)
                return;
            place = left;
        }
    }

    std::uint32_t leave_place(std::uint32_t asker) {
        const std::uint32_t place = *place_of_[asker];
        std::erase(holders_[place], asker);
        place_of_[asker].reset();
        return place;
    }

    const ChoiceTable& table_;
    std::span<const std::uint32_t> room_;
    std::vector<LayeredCost> asker_potential_;
    std::vector<std::optional<std::uint32_t>> place_of_;
    std::vector<LayeredCost> place_potential_;
    std::vector<std::vector<std::uint32_t>> holders_;

    std::vector<Reached> reached_;
    std::uint32_t search_ = 0;
    std::vector<Waiting> waiting_;
    std::vector<Visited> visited_;
    std::vector<std::uint32_t> settled_;
    End end_;
};

} // namespace

std::vector<std::optional<std::uint32_t>> cheapest_assignment(const ChoiceTable& table,
                                                              std::span<const std::uint32_t> room) {
    return AssignmentSearch(table, room).run();
}

} // namespace saddlerule
