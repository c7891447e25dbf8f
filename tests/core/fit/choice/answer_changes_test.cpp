// What would change the answer, against trying every change there is.
#include "core/fit/choice/answer_changes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using namespace saddlerule;
using namespace saddlerule::literals;

namespace {

/// A small shop: the bike that fits and lasts longest comes first.
struct ShopBike {
    double lowest_mm;
    double highest_mm;
    double price;
};

struct Shop {
    std::vector<ShopBike> bikes;
    double inseam_mm = 500.0;
    std::optional<double> budget;

    std::optional<std::size_t> first(const Supposition& supposition) const {
        const double shift =
            supposition.reading_shift.in_millimetres() + (supposition.next_stage ? 76.0 : 0.0);
        const double saddle = inseam_mm + shift;
        const auto most = supposition.budget ? std::optional(supposition.budget->in_main_units()) : budget;
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < bikes.size(); ++i) {
            if (bikes[i].lowest_mm > saddle || bikes[i].highest_mm < saddle ||
                (most && bikes[i].price > *most))
                continue;
            if (!best || bikes[i].highest_mm > bikes[*best].highest_mm)
                best = i;
        }
        return best;
    }

    std::vector<AnswerChange> changes() const {
        std::vector<Amount> prices;
        for (const ShopBike& bike : bikes)
            prices.push_back(Amount::main_units(bike.price));
        ChangeSearch search;
        search.prices = prices;
        if (budget)
            search.budget = Amount::main_units(*budget);
        if (const auto now = first({}))
            search.first_price = prices[*now];
        return smallest_changes([this](const Supposition& supposition) { return first(supposition); },
                                search);
    }
};

const AnswerChange* change_of(const std::vector<AnswerChange>& changes, ChangeKind kind) {
    const auto found = std::find_if(changes.begin(), changes.end(),
                                    [&](const AnswerChange& change) { return change.kind == kind; });
    return found == changes.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("the reading changes the answer at the millimetre where another bike fits", "[choice]") {
    const Shop shop{.bikes = {{480, 600, 100}, {513, 640, 120}}, .inseam_mm = 500.0, .budget = {}};
    const auto changes = shop.changes();
    const AnswerChange* longer = change_of(changes, ChangeKind::longer_reading);
    REQUIRE(longer);
    CHECK(longer->supposition.reading_shift.in_millimetres() == Approx(13.0).margin(1e-9));
    CHECK(longer->first == 1);
    CHECK_FALSE(change_of(changes, ChangeKind::shorter_reading));
}

TEST_CASE("the next stage, a higher budget and a lower one each name the bike they put first", "[choice]") {
    const Shop shop{
        .bikes = {{480, 600, 100}, {560, 700, 90}, {470, 650, 150}, {470, 640, 140}, {470, 560, 80}},
        .inseam_mm = 500.0,
        .budget = 120.0};
    const auto changes = shop.changes();
    REQUIRE(change_of(changes, ChangeKind::next_stage));
    CHECK(change_of(changes, ChangeKind::next_stage)->first == 1);
    REQUIRE(change_of(changes, ChangeKind::higher_budget));
    CHECK(change_of(changes, ChangeKind::higher_budget)->first == 3);
    CHECK(change_of(changes, ChangeKind::higher_budget)->supposition.budget == Amount::main_units(140.0));
    REQUIRE(change_of(changes, ChangeKind::lower_budget));
    CHECK(change_of(changes, ChangeKind::lower_budget)->first == 4);
}

TEST_CASE("a change that leaves no bike at all is no answer", "[choice]") {
    const Shop shop{.bikes = {{480, 600, 100}}, .inseam_mm = 500.0, .budget = 120.0};
    CHECK(shop.changes().empty());
}

TEST_CASE("where no bike comes first, a change may bring one", "[choice]") {
    const Shop shop{.bikes = {{522, 640, 300}}, .inseam_mm = 500.0, .budget = {}};
    const auto changes = shop.changes();
    REQUIRE(change_of(changes, ChangeKind::longer_reading));
    CHECK(change_of(changes, ChangeKind::longer_reading)->supposition.reading_shift.in_millimetres() ==
          Approx(22.0).margin(1e-9));
}

TEST_CASE("no smaller change of reading or budget would have been enough", "[choice]") {
    std::mt19937 random(20261125);
    const auto up_to = [&](unsigned top) { return static_cast<double>(random() % top); };
    for (int round = 0; round < 200; ++round) {
        Shop shop{.bikes = {}, .inseam_mm = 500.0, .budget = 100.0 + up_to(60)};
        for (int i = 0; i < 12; ++i) {
            const double lowest = 440.0 + up_to(140);
            shop.bikes.push_back({lowest, lowest + 60.0 + up_to(90), 60.0 + up_to(140)});
        }
        const auto now = shop.first({});
        const auto another = [&](const Supposition& supposition) {
            const auto first = shop.first(supposition);
            return first && first != now;
        };
        const auto changes = shop.changes();

        double least_price = 0.0;
        for (double price = *shop.budget + 1.0; price <= 200.0 && least_price == 0.0; ++price) {
            if (another({.reading_shift = {}, .next_stage = false, .budget = Amount::main_units(price)}))
                least_price = price;
        }
        const AnswerChange* higher = change_of(changes, ChangeKind::higher_budget);
        CAPTURE(round, least_price);
        REQUIRE((higher != nullptr) == (least_price > 0.0));
        if (higher)
            CHECK(higher->supposition.budget == Amount::main_units(least_price));

        if (const AnswerChange* longer = change_of(changes, ChangeKind::longer_reading)) {
            const int reached = static_cast<int>(longer->supposition.reading_shift.in_millimetres() + 0.5);
            CHECK(another(longer->supposition));
            // Within its own stride the millimetre found is the first one.
            for (int mm = (reached - 1) / 5 * 5 + 1; mm < reached; ++mm)
                CHECK_FALSE(
                    another({.reading_shift = Length::millimetres(mm), .next_stage = false, .budget = {}}));
        }
    }
}
