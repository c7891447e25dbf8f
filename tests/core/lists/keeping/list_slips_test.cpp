// Likely slips: what is asked about, what is not, and that each repair mends what it is about.
//
// What a bike may measure is common practice; the inch is 25.4 mm (international yard and pound agreement, 1959).
#include "core/lists/keeping/list_slips.h"

#include "core/lists/keeping/list_editor.h"
#include "tests/core/lists/keeping/kept_list_builders.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

/// A list of one entry beside one that is always good.
std::string list_with(std::string_view units, std::string_view entry) {
    return R"({"units":")" + std::string(units) + R"(","bikes":[{"id":"good","saddle_lowest":"50 cm"},)" +
           std::string(entry) + "]}";
}

std::vector<Slip> slips_in(std::string_view units, std::string_view entry) {
    const std::string text = list_with(units, entry);
    const KeptList list = kept(text);
    return SlipFinder(list).slips_of(2);
}

std::string codes(const std::vector<Slip>& slips) {
    std::string all;
    for (const Slip& slip : slips)
        all += (all.empty() ? "" : " ") + std::string(code_name(slip.problem.code));
    return all;
}

std::string repair(const Slip& slip) {
    std::string all;
    for (const FieldCell& cell : slip.repair)
        all += (all.empty() ? "" : ", ") + cell.name + '=' + cell.cell;
    return all;
}

struct UnitSlip {
    const char* units;
    const char* entry;
    const char* repair; ///< empty: nothing is asked
};

std::string bikes_of_one_wheel(std::string_view lowest) {
    return R"({"units":"cm","bikes":[
        {"id":"A","wheel":"16","saddle_lowest":46},{"id":"B","wheel":"47-305","saddle_lowest":48},
        {"id":"C","wheel":"16","saddle_lowest":50},{"id":"D","wheel":"16","saddle_lowest":)" +
           std::string(lowest) + "}]}";
}

} // namespace

TEST_CASE("a bare figure that fits a bike in another unit only is asked about", "[keeping]") {
    const auto slip = GENERATE(values<UnitSlip>({
        // inches as centimetres
        {"cm", R"({"id":"A","saddle_lowest":19.5})", "saddle_lowest=19.5 in"},
        {"cm", R"({"id":"A","saddle_lowest":"19 1/2","saddle_highest":"25"})",
         "saddle_lowest=19 1/2 in, saddle_highest=25 in"},
        {"cm", R"({"id":"A","wheel":"24","saddle_lowest":26.5,"saddle_highest":34})",
         "saddle_lowest=26.5 in, saddle_highest=34 in"},
        {"cm",
         R"({"id":"A","saddle_lowest":26.5,"saddle_highest":34,"standover":22.5,"crank":5.5,)"
         R"("bottom_bracket_height":11})",
         "saddle_lowest=26.5 in, saddle_highest=34 in, standover=22.5 in, crank=5.5 in, "
         "bottom_bracket_height=11 in"},
        // millimetres as centimetres, with the bike set aside for them
        {"cm", R"({"id":"A","saddle_lowest":495,"saddle_highest":630})",
         "saddle_lowest=495 mm, saddle_highest=630 mm"},
        {"cm", R"({"id":"A","saddle_lowest":49.5,"crank":102})", "crank=102 mm"},
        {"cm", R"({"id":"A","saddle_lowest":49.5,"lever_reach":55})", "lever_reach=55 mm"},
        {"cm", R"({"id":"A","saddle_lowest":19.5,"crank":102})", "saddle_lowest=19.5 in, crank=102 mm"},
        // in a list in inches
        {"in", R"({"id":"A","saddle_lowest":49.5,"saddle_highest":63})",
         "saddle_lowest=49.5 cm, saddle_highest=63 cm"},
        {"in", R"({"id":"A","saddle_lowest":19.5,"crank":102})", "crank=102 mm"},
        {"in", R"({"id":"A","saddle_lowest":495})", "saddle_lowest=495 mm"},
        // in a list in millimetres
        {"mm", R"({"id":"A","saddle_lowest":49.5,"saddle_highest":63})",
         "saddle_lowest=49.5 cm, saddle_highest=63 cm"},
        {"mm", R"({"id":"A","saddle_lowest":495,"crank":10.2})", "crank=10.2 cm"},
        // a step from lowest to highest that no bike has
        {"cm", R"({"id":"A","saddle_lowest":62.5,"saddle_highest":31})", "saddle_highest=31 in"},
        // figures as JSON may write them
        {"cm", R"({"id":"A","saddle_lowest":4.95e2})", "saddle_lowest=495 mm"},
    }));
    CAPTURE(slip.units, slip.entry);
    const std::vector<Slip> slips = slips_in(slip.units, slip.entry);
    REQUIRE(codes(slips) == "slip_unit");
    CHECK(repair(slips[0]) == slip.repair);
}

TEST_CASE("nothing is asked about bikes as they are", "[keeping]") {
    const auto slip = GENERATE(values<UnitSlip>({
        {"cm",
         R"({"id":"A","saddle_lowest":49.5,"saddle_highest":63,"standover":41,"crank":10.2,"lever_reach":5.5})",
         ""},
        {"cm",
         R"({"id":"10 inch balance bike","kind":"balance","wheel":"10","saddle_lowest":28,"saddle_highest":38})",
         ""},
        {"cm", R"({"id":"step-through","wheel":"26","saddle_lowest":78,"saddle_highest":98,"standover":38})",
         ""},
        {"cm", R"({"id":"folding","wheel":"16","saddle_lowest":78,"saddle_highest":106,"crank":17})", ""},
        {"cm", R"({"id":"adult","wheel":"28","saddle_lowest":88,"saddle_highest":108,"standover":82})", ""},
        {"in", R"({"id":"A","saddle_lowest":11,"saddle_highest":15,"wheel":"10","kind":"balance"})", ""},
        {"mm", R"({"id":"A","saddle_lowest":495,"saddle_highest":630,"lever_reach":55})", ""},
        // a unit of its own is no slip, however odd
        {"cm", R"({"id":"A","saddle_lowest":"195 mm"})", ""},
        // 35 in a list of millimetres may be centimetres or inches: nobody can tell
        {"mm", R"({"id":"A","saddle_lowest":"50 cm","saddle_highest":35})", ""},
        {"cm", R"("only a text")", ""},
        {"cm", R"({"id":"A"})", ""},
    }));
    CAPTURE(slip.units, slip.entry);
    CHECK(codes(slips_in(slip.units, slip.entry)).empty());
}

TEST_CASE("lowest and highest the wrong way round are swapped", "[keeping]") {
    const std::vector<Slip> slips =
        slips_in("cm", R"({"id":"A","saddle_lowest":"25 in","saddle_highest":49.5})");
    REQUIRE(codes(slips) == "slip_swapped");
    CHECK(repair(slips[0]) == "saddle_lowest=49.5, saddle_highest=25 in");
}

TEST_CASE("of two bikes with one id the second is offered a free one", "[keeping]") {
    const KeptList list = kept(R"x({"units":"cm","bikes":[{"id":"L07","saddle_lowest":50},
        {"id":"L07","saddle_lowest":60},{"id":"L07 (2)","saddle_lowest":60},{"id":"L07","saddle_lowest":70}]})x");
    SlipFinder finder(list);
    const std::vector<Slip> second = finder.slips_of(2);
    const std::vector<Slip> fourth = finder.slips_of(4);
    REQUIRE(codes(second) == "slip_id_taken");
    REQUIRE(codes(fourth) == "slip_id_taken");
    CHECK(repair(second[0]) == "id=L07 (3)");
    CHECK(repair(fourth[0]) == "id=L07 (4)");
}

TEST_CASE("a saddle that hardly moves, or moves too far, is asked about", "[keeping]") {
    CHECK(codes(slips_in("cm", R"({"id":"A","saddle_lowest":50,"saddle_highest":50.9})")) ==
          "slip_span_narrow");
    CHECK(codes(slips_in("cm", R"({"id":"A","saddle_lowest":50,"saddle_highest":51})")).empty());
    CHECK(codes(slips_in("cm", R"({"id":"A","saddle_lowest":60,"saddle_highest":100})")).empty());
    const std::vector<Slip> wide = slips_in("cm", R"({"id":"A","saddle_lowest":60,"saddle_highest":100.1})");
    CHECK(codes(wide) == "slip_span_wide");
    CHECK(wide[0].repair.empty());
    CHECK(repair(slips_in("cm", R"({"id":"A","saddle_lowest":50,"saddle_highest":50})")[0]) ==
          "saddle_highest=");
}

TEST_CASE("a bike far from all others of its wheel size is asked about, from three others on", "[keeping]") {
    const std::string far = bikes_of_one_wheel("60.5");
    const KeptList list = kept(far);
    SlipFinder finder(list);
    const std::vector<Slip> slips = finder.slips_of(4);
    REQUIRE(codes(slips) == "slip_unlike_others");
    CHECK(slips[0].repair.empty());
    CHECK(sentence(slips[0].problem) ==
          "a lowest saddle height of 60.5 cm differs by 10.5 cm from every other bike with 16 in wheels");
    REQUIRE(finder.find().size() == 1);
    CHECK(finder.find()[0].number == 4);

    const std::string near = bikes_of_one_wheel("59.9");
    CHECK(codes(SlipFinder(kept(near)).slips_of(4)).empty());
    const KeptList too_few = kept(R"({"units":"cm","bikes":[{"id":"A","wheel":"16","saddle_lowest":46},
        {"id":"B","wheel":"16","saddle_lowest":48},{"id":"C","wheel":"16","saddle_lowest":70}]})");
    CHECK(codes(SlipFinder(too_few).slips_of(3)).empty());
}

TEST_CASE("a list without wheels takes no longer than one with them", "[keeping]") {
    const auto list_of = [](const char* wheel) {
        std::string bikes;
        for (int number = 0; number < 4000; ++number)
            bikes += std::string(number > 0 ? "," : "") + R"({"id":"B)" + std::to_string(number) + '"' +
                     wheel + R"(,"saddle_lowest":48,"saddle_highest":62})";
        return R"({"units":"cm","bikes":[)" + bikes + "]}";
    };
    const auto seconds_for = [](const std::string& text) {
        const KeptList list = kept(text);
        const auto began = std::chrono::steady_clock::now();
        CHECK(SlipFinder(list).find().empty());
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    };
    // In one run, and far from both what is usual (less than 1) and what going through the list for every bike takes (over 20).
    const double with_wheels = seconds_for(list_of(R"(,"wheel":"16")"));
    const double without = seconds_for(list_of(""));
    CHECK(without < 6.0 * with_wheels);
}

TEST_CASE("all entries with slips are found, usable or set aside", "[keeping]") {
    const KeptList list =
        kept(R"({"units":"cm","bikes":[{"id":"A","saddle_lowest":50},{"id":"B","saddle_lowest":495},
        {"id":"C","saddle_lowest":50,"saddle_highest":50},{"id":"D","saddle_lowest":60,"saddle_highest":50},7]})");
    const std::vector<SlipMark> marks = SlipFinder(list).find();
    REQUIRE(marks.size() == 3);
    CHECK(marks[0].number == 2);
    CHECK(marks[0].has(ProblemCode::slip_unit));
    CHECK(marks[1].has(ProblemCode::slip_span_narrow));
    CHECK(marks[2].has(ProblemCode::slip_swapped));
    CHECK_FALSE(marks[2].has(ProblemCode::slip_unit));
}

TEST_CASE("a repair leaves nothing to ask, and the bike usable", "[keeping]") {
    const auto entry = GENERATE(as<std::string>(), R"({"id":"A","saddle_lowest":495,"crank":102})",
                                R"({"id":"A","saddle_lowest":63,"saddle_highest":49.5})",
                                R"({"id":"good","saddle_lowest":60})",
                                R"({"id":"A","saddle_lowest":50,"saddle_highest":50})");
    CAPTURE(entry);
    const std::string text = list_with("cm", entry);
    KeptList list = kept(text);
    const std::vector<Slip> slips = SlipFinder(list).slips_of(2);
    REQUIRE(slips.size() == 1);
    ListEditor editor(list);
    editor.put(2, entry_of_text(
                      list, entry_with(list.entries[1].source, slips[0].repair, cell_context(list.facts))));
    REQUIRE_FALSE(editor.commit());
    CHECK(list.catalogue.set_aside.empty());
    CHECK(SlipFinder(list).find().empty());
}
