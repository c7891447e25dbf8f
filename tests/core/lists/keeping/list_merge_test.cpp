// Two lists of the same bikes: what is the same, what differs, and what one takes from the other.
#include "core/lists/keeping/list_merge.h"

#include "core/lists/keeping/entry_text.h"
#include "tests/core/lists/keeping/kept_list_builders.h"

#include <catch2/catch.hpp>

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

using Texts = std::vector<std::string>;

constexpr std::string_view shed = R"({"units":"cm","currency":"EUR","bikes":[
  {"id":"A","saddle_lowest":49.53,"price":90},
  {"id":"B","saddle_lowest":60,"colours":["red"],"shelf":2},
  {"name":"Red one","saddle_lowest":70},
  {"id":"D","saddle_lowest":5}
]})";

Texts merged(std::string_view other, Keep keep) {
    KeptList here = kept(shed);
    const KeptList there = kept(other);
    ListEditor editor(here);
    ListMerger merger(here, there, editor);
    for (const BikePair& pair : compared(here, there))
        merger.take(pair, keep);
    REQUIRE_FALSE(editor.commit());
    return sources_of(here);
}

} // namespace

TEST_CASE("lists are compared by what their bikes measure, not by how that is written", "[keeping]") {
    const KeptList here = kept(shed);
    const KeptList there = kept(R"({"units":"in","currency":"EUR","bikes":[
      {"id":"A","saddle_lowest":19.5,"price":90},
      {"id":"B","saddle_lowest":"600 mm","colours":["blue"],"shelf":3},
      {"name":"Red one","saddle_lowest":"700 mm","notes":""},
      {"id":"E","saddle_lowest":20}
    ]})");
    const std::vector<BikePair> pairs = compared(here, there);
    REQUIRE(pairs.size() == 4);
    CHECK(pairs[0].here == 1);
    CHECK(pairs[0].differs.empty());
    CHECK(pairs[1].here == 2);
    CHECK(pairs[1].differs == Texts{"colours", "shelf"});
    CHECK(pairs[2].here == 3);
    CHECK(pairs[2].differs.empty());
    CHECK(pairs[3].here == 0);
    CHECK(pairs[3].id == "E");
}

TEST_CASE("a bike with an id is not that of its name", "[keeping]") {
    const std::vector<BikePair> pairs =
        compared(kept(shed), kept(R"({"units":"cm","bikes":[{"id":"Red one","saddle_lowest":70}]})"));
    CHECK(pairs[0].here == 0);
}

TEST_CASE("a bike here that was set aside is met by the good one of its id", "[keeping]") {
    constexpr std::string_view good =
        R"({"units":"cm","currency":"EUR","bikes":[{"id":"D","saddle_lowest":55}]})";
    const KeptList there = kept(good);
    const std::vector<BikePair> pairs = compared(kept(shed), there);
    CHECK(pairs[0].here == 4);
    CHECK(pairs[0].differs == Texts{"saddle_lowest"});
    CHECK(merged(good, Keep::there)[3] == R"({"id":"D","saddle_lowest":55})");
}

TEST_CASE("bare figures from a list in another unit get their unit, and a foreign price its own field",
          "[keeping]") {
    constexpr std::string_view other = R"({"units":"in","currency":"GBP","bikes":[
      {"id":"N","saddle_lowest":19.5,"saddle_highest":"25","crank":"110 mm","mass_kg":7,"price":80}]})";
    const Texts after = merged(other, Keep::here);
    REQUIRE(after.size() == 5);
    CHECK(after[4] ==
          R"({ "id": "N", "saddle_lowest": "19.5 in", "saddle_highest": "25 in", "crank": "110 mm", )"
          R"("mass_kg": 7, "price_gbp": 80 })");
}

TEST_CASE("of two versions one stays, or both with a free id", "[keeping]") {
    constexpr std::string_view other =
        R"({"units":"cm","currency":"EUR","bikes":[{"id":"B","saddle_lowest":61},{"id":"A","saddle_lowest":49.53,"price":90}]})";
    CHECK(merged(other, Keep::here) == sources_of(kept(shed)));
    CHECK(merged(other, Keep::there)[1] == R"({"id":"B","saddle_lowest":61})");
    const Texts both = merged(other, Keep::both);
    REQUIRE(both.size() == 5);
    CHECK(both[4] == R"x({ "id": "B (2)", "saddle_lowest": 61 })x");
}

TEST_CASE("bikes of one name without ids are met one by one", "[keeping]") {
    constexpr std::string_view twice =
        R"({"units":"cm","bikes":[{"name":"Red one","saddle_lowest":70},{"name":"Red one","saddle_lowest":71}]})";
    const KeptList there = kept(twice);
    const std::vector<BikePair> pairs = compared(kept(shed), there);
    CHECK(pairs[0].here == 3);
    CHECK(pairs[1].here == 0);
}
