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

KeptList merged_list(std::string_view mine, std::string_view other, Keep keep) {
    KeptList here = kept(mine);
    const KeptList there = kept(other);
    ListEditor editor(here);
    std::vector<BikePair> pairs = compared(here, there);
    for (BikePair& pair : pairs)
        pair.keep = pair.here == 0 ? Keep::there : keep;
    ListMerger(here, there, editor).take(pairs);
    REQUIRE_FALSE(editor.commit());
    return here;
}

Texts merged(std::string_view other, Keep keep) {
    return sources_of(merged_list(shed, other, keep));
}

/// A list in a unit, of a day, with those bikes.
std::string list_of(std::string_view head, std::string_view bikes) {
    return '{' + std::string(head) + R"(,"bikes":[)" + std::string(bikes) + "]}";
}

constexpr std::string_view spring = R"("units":"cm","measured_on":"2026-03-01")";
constexpr std::string_view autumn = R"("units":"cm","measured_on":"2026-10-03")";

std::optional<CalendarDate> day(std::string_view iso) {
    return CalendarDate::from_iso(iso);
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

TEST_CASE("filling the gaps adds what is missing and leaves what is there, with units and currency in mind",
          "[keeping]") {
    const std::string mine = list_of(R"("units":"in","currency":"EUR")",
                                     R"({"id":"A","saddle_lowest":20,"name":"","condition":null,"shelf":2})");
    const std::string other = list_of(
        R"("units":"cm","currency":"GBP","measured_on":"2026-10-03")",
        R"({"id":"A","name":"Red one","saddle_lowest":51,"saddle_highest":62,"standover":"40 cm","mass_kg":7,)"
        R"("price":80,"condition":"used","notes":"new tyre","shelf":3,"lock":"blue"})");
    const KeptList filled = merged_list(mine, other, Keep::fill);
    CHECK(
        sources_of(filled) ==
        Texts{R"({ "id": "A", "saddle_lowest": 20, "name": "Red one", "saddle_highest": "62 cm", )"
              R"("standover": "40 cm", "mass_kg": 7, "condition": "used", "notes": "new tyre", "shelf": 2, )"
              R"("lock": "blue", "price_gbp": 80 })"});
    REQUIRE(filled.catalogue.bikes.size() == 1);
    CHECK(filled.catalogue.bikes[0].saddle_highest->in_millimetres() == Approx(620));
    CHECK_FALSE(filled.catalogue.measured_on);

    const std::string once = R"({"units":"in","currency":"EUR","bikes":[)" + sources_of(filled)[0] + "]}";
    CHECK(sources_of(merged_list(once, other, Keep::fill)) == sources_of(filled));
    for (const BikePair& pair : compared(kept(once), kept(other)))
        CHECK(pair.gaps.empty());
}

TEST_CASE("bare figures of a list in inches fill gaps as inches", "[keeping]") {
    const std::string mine = list_of(spring, R"({"id":"A","saddle_lowest":50})");
    const std::string other =
        list_of(R"("units":"in")", R"({"id":"A","saddle_lowest":20,"saddle_highest":24.5,"crank":"110 mm"})");
    CHECK(sources_of(merged_list(mine, other, Keep::fill)) ==
          Texts{R"({ "id": "A", "saddle_lowest": 50, "saddle_highest": "24.5 in", "crank": "110 mm" })"});
}

TEST_CASE("no gap is filled with what contradicts the rest of a usable bike", "[keeping]") {
    const std::string mine = list_of(spring, R"({"id":"A","saddle_lowest":60})");
    const std::string other =
        list_of(autumn, R"({"id":"A","saddle_lowest":48,"saddle_highest":58,"notes":"cut post"})");
    const KeptList filled = merged_list(mine, other, Keep::fill);
    CHECK(sources_of(filled) == Texts{R"({ "id": "A", "saddle_lowest": 60, "notes": "cut post" })"});
    CHECK(filled.catalogue.set_aside.empty());
    CHECK(filled.catalogue.measured_on == day("2026-03-01"));
}

TEST_CASE("a bike that was set aside for what it lacks is usable once that is filled in", "[keeping]") {
    const std::string mine = list_of(spring, R"({"id":"A","notes":"bell"},{"id":"B","saddle_lowest":50})");
    const std::string other = list_of(autumn, R"({"id":"A","saddle_lowest":48,"notes":"no bell"})");
    CHECK(kept(mine).catalogue.set_aside.size() == 1);
    const KeptList filled = merged_list(mine, other, Keep::fill);
    CHECK(sources_of(filled)[0] == R"({ "id": "A", "saddle_lowest": 48, "notes": "bell" })");
    CHECK(filled.catalogue.set_aside.empty());
}

TEST_CASE("the newer version is taken whole, and a name, notes and own fields of the older one survive",
          "[keeping]") {
    const std::string old = list_of(
        spring,
        R"({"id":"A","name":"Red one","saddle_lowest":50,"saddle_highest":60,"notes":"bell","shelf":2})");
    const std::string later = list_of(autumn, R"({"id":"A","saddle_lowest":52,"notes":"no bell"})");
    const Texts newest{
        R"({ "id": "A", "name": "Red one", "saddle_lowest": 52, "notes": "no bell", "shelf": 2 })"};
    // From either side the same measurements come out, and their day goes with them.
    const KeptList into_old = merged_list(old, later, Keep::newer);
    CHECK(sources_of(into_old) == newest);
    CHECK(into_old.catalogue.measured_on == day("2026-10-03"));
    const KeptList into_later = merged_list(later, old, Keep::newer);
    CHECK(sources_of(into_later) == newest);
    CHECK(into_later.catalogue.measured_on == day("2026-10-03"));
}

TEST_CASE("a bike's own day comes before that of its list, and without two different days nothing is newer",
          "[keeping]") {
    const std::string mine = list_of(spring, R"({"id":"A","saddle_lowest":50,"measured_on":"2026-11-01"},
        {"id":"B","saddle_lowest":50},{"id":"C","saddle_lowest":50,"measured_on":"last week"},
        {"id":"D","saddle_lowest":50,"measured_on":"2026-10-03"})");
    const std::string other = list_of(autumn, R"({"id":"A","saddle_lowest":51},{"id":"B","saddle_lowest":51},
        {"id":"C","saddle_lowest":51},{"id":"D","saddle_lowest":51})");
    const auto pairs = compared(kept(mine), kept(other));
    REQUIRE(pairs.size() == 4);
    CHECK(pairs[0].newer == Keep::here);
    CHECK(pairs[1].newer == Keep::there);
    CHECK_FALSE(pairs[2].newer);
    CHECK_FALSE(pairs[3].newer);
    const KeptList after = merged_list(mine, other, Keep::newer);
    const Texts texts = sources_of(after);
    CHECK(texts[0] == sources_of(kept(mine))[0]);
    CHECK(texts[1] == R"({"id":"B","saddle_lowest":51})");
    CHECK(texts[2] == sources_of(kept(mine))[2]);
    CHECK(texts[3] == sources_of(kept(mine))[3]);
}

TEST_CASE("a list keeps its day while a bike of that day is in it, and what comes from another day says so",
          "[keeping]") {
    const std::string mine =
        list_of(spring, R"({"id":"A","saddle_lowest":50},{"id":"B","saddle_lowest":50})");
    const std::string other =
        list_of(autumn, R"({"id":"A","saddle_lowest":51},{"id":"N","saddle_lowest":60})");
    const KeptList after = merged_list(mine, other, Keep::newer);
    CHECK(after.catalogue.measured_on == day("2026-03-01"));
    CHECK(sources_of(after) == Texts{R"({ "id": "A", "saddle_lowest": 51, "measured_on": "2026-10-03" })",
                                     R"({"id":"B","saddle_lowest":50})",
                                     R"({ "id": "N", "saddle_lowest": 60, "measured_on": "2026-10-03" })"});
    CHECK(after.catalogue.notes.empty());
    for (const BikePair& pair : compared(after, kept(other)))
        CHECK(pair.differs.empty());
}
