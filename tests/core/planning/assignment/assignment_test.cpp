// The assignment against every assignment there is, up to eight by eight; larger ones are held against a published library in
// tests/wasm-bindings/club-day.test.mjs.
#include "core/planning/assignment/assignment.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <vector>

using namespace saddlerule;
using saddlerule::testing::RepeatableRandom;

namespace {

using Places = std::vector<std::optional<std::uint32_t>>;

LayeredCost total(const ChoiceTable& table, const Places& places) {
    LayeredCost sum;
    for (std::size_t asker = 0; asker < places.size(); ++asker) {
        if (!places[asker]) {
            sum = sum + LayeredCost({1, 0, 0, 0, 0});
            continue;
        }
        const auto choices = table.of(asker);
        const auto taken = std::find_if(choices.begin(), choices.end(),
                                        [&](const Choice& choice) { return choice.place == *places[asker]; });
        REQUIRE(taken != choices.end());
        sum = sum + taken->cost();
    }
    return sum;
}

bool respects(const Places& places, std::vector<std::uint32_t> room) {
    for (const auto& place : places) {
        if (place && room[*place]-- == 0)
            return false;
    }
    return true;
}

/// The least of all, by trying everything.
class EveryAssignment {
public:
    EveryAssignment(const ChoiceTable& table, std::vector<std::uint32_t> room)
        : table_(table), room_(std::move(room)) {
        from(0, LayeredCost());
    }

    LayeredCost least() const { return *least_; }

private:
    void from(std::size_t asker, const LayeredCost& sum) {
        if (asker == table_.askers()) {
            if (!least_ || sum < *least_)
                least_ = sum;
            return;
        }
        from(asker + 1, sum + LayeredCost({1, 0, 0, 0, 0}));
        for (const Choice& choice : table_.of(asker)) {
            if (room_[choice.place] == 0)
                continue;
            --room_[choice.place];
            from(asker + 1, sum + choice.cost());
            ++room_[choice.place];
        }
    }

    const ChoiceTable& table_;
    std::vector<std::uint32_t> room_;
    std::optional<LayeredCost> least_;
};

} // namespace

TEST_CASE("layers are compared from the first one down", "[club]") {
    CHECK(LayeredCost({0, -9, 0, 0, 0}) < LayeredCost({0, -8, -100, -100, -100}));
    CHECK(LayeredCost({0, -9, 3, 4, -1}) < LayeredCost({0, -9, 3, 4, 0}));
    CHECK_FALSE(LayeredCost({1, 0, 0, 0, 0}) < LayeredCost({0, 1'000'000'000, 0, 0, 0}));
    CHECK(LayeredCost({1, 2, 3, 4, 5}) + LayeredCost({1, 1, 1, 1, 1}) - LayeredCost({2, 3, 4, 5, 6}) ==
          LayeredCost());
}

TEST_CASE("one more rider comes in by a chain of changes", "[club]") {
    // The first takes the only place of the second, and can go elsewhere.
    ChoiceTable table;
    table.add({.place = 0, .first = -900'000});
    table.add({.place = 1, .first = -500'000});
    table.next_asker();
    table.add({.place = 0, .first = -600'000});
    table.next_asker();
    const std::vector<std::uint32_t> room{1, 1};
    CHECK(cheapest_assignment(table, room) == Places{1, 0});
}

TEST_CASE("nobody, no place, and no room", "[club]") {
    CHECK(cheapest_assignment(ChoiceTable(), {}).empty());
    ChoiceTable table;
    table.next_asker();
    table.add({.place = 0, .first = -1});
    table.next_asker();
    const std::vector<std::uint32_t> room{0};
    CHECK(cheapest_assignment(table, room) == Places{std::nullopt, std::nullopt});
}

TEST_CASE("no assignment costs less, by trying all of them", "[club]") {
    RepeatableRandom random(20261128);
    const auto below = [&](int count) { return static_cast<int>(random.uniform() * count); };
    for (int round = 0; round < 4000; ++round) {
        const int askers = 1 + below(round % 100 == 0 ? 8 : 6);
        const int places = 1 + below(round % 100 == 0 ? 8 : 6);
        // Few different costs make many ties, so that the later layers decide.
        const int spread = round % 3 == 0 ? 2 : 1000;
        const double density = random.uniform();
        std::vector<std::uint32_t> room;
        for (int place = 0; place < places; ++place)
            room.push_back(static_cast<std::uint32_t>(below(3)));
        ChoiceTable table;
        for (int asker = 0; asker < askers; ++asker) {
            for (int place = 0; place < places; ++place) {
                if (random.uniform() < density)
                    table.add({.place = static_cast<std::uint32_t>(place),
                               .first = -below(spread),
                               .second = below(spread),
                               .third = below(2 * spread) - spread,
                               .fourth = -below(2)});
            }
            table.next_asker();
        }
        const Places found = cheapest_assignment(table, room);
        REQUIRE(respects(found, room));
        REQUIRE(total(table, found) == EveryAssignment(table, room).least());
    }
}
