// Tables of riders as volunteers have them: with a title, a total, other languages, units in the heading, and slips.
#include "core/planning/club/rider_table.h"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace saddlerule;

namespace {

const CalendarDate today = *CalendarDate::from_ymd(2026, 11, 28);

RiderTable read(std::string_view text, LengthUnit units = LengthUnit::centimetre) {
    auto table = read_rider_table(text, units, today);
    REQUIRE(table);
    return std::move(table).value();
}

double inseam_mm(const TableRider& one) {
    REQUIRE(one.rider.readings.size() == 1);
    return one.rider.readings[0].inseam.in_millimetres();
}

const std::string& cell(const TableRider& one, RiderColumn column) {
    return one.cells[static_cast<std::size_t>(column)];
}

} // namespace

TEST_CASE("a table with a title, a total and a column of its own", "[club]") {
    const RiderTable table =
        read("Saturday group\t\t\t\n\nName\tInside leg\tRides\tHelmet\n"
             "Anna\t49,5\tnew\tred\nBen\t52.0 cm\tconfident\t\n3\t19 1/2 in\tstabilisers\tblue\n"
             "Total\t121.5\t\t\n");
    REQUIRE(table.riders.size() == 3);
    CHECK(table.heading_row == 3);
    CHECK(table.unknown_columns == std::vector<std::string>{"Helmet"});
    CHECK(table.riders[0].id == "Anna");
    CHECK(table.riders[0].row == 4);
    CHECK(inseam_mm(table.riders[0]) == Approx(495.0));
    CHECK(cell(table.riders[0], RiderColumn::inseam) == "49,5 cm"); // says the same wherever it is read again
    CHECK(cell(table.riders[1], RiderColumn::inseam) == "52.0 cm");
    CHECK(table.riders[0].rider.stage == Stage::starting);
    CHECK(table.riders[1].rider.stage == Stage::riding);
    CHECK(table.riders[2].rider.stage == Stage::side_wheels);
    CHECK(inseam_mm(table.riders[2]) == Approx(495.3));
    REQUIRE(table.set_aside.size() == 1);
    CHECK(table.set_aside[0].code == ProblemCode::riders_row_of_totals);
    CHECK(table.set_aside[0].cell->row == 7);
}

TEST_CASE("units of the heading, and every other language's", "[club]") {
    CHECK(inseam_mm(read("Nr;Schrittlänge (mm);Fährt\n1;495;neu").riders[0]) == Approx(495.0));
    CHECK(inseam_mm(read("Prénom,Entrejambe [in]\nA,19.5").riders[0]) == Approx(495.3));
    CHECK(inseam_mm(read("Nombre\tEntrepierna\nA\t49.5").riders[0]) == Approx(495.0));
    CHECK(inseam_mm(read("Naam\tBinnenbeenlengte cm\nA\t49,5", LengthUnit::inch).riders[0]) == Approx(495.0));
    CHECK(cell(read("Name\tInseam (in)\nA\t19.5").riders[0], RiderColumn::inseam) == "19.5 in");
    const RiderTable german = read("Kind;Alter;Gewicht;Größe;Schuhe;Schrittlänge\nA;5;18,5 kg;110;nein;47,5");
    const Rider& rider = german.riders[0].rider;
    REQUIRE(rider.born);
    CHECK((today - *rider.born).in_years() == Approx(5.5).margin(0.1)); // five and something
    CHECK(rider.mass->in_kilograms() == Approx(18.5));
    CHECK(rider.stature->in_millimetres() == Approx(1100.0));
    CHECK_FALSE(rider.readings[0].shoes);
    CHECK(read("Name\tWeight (lb)\tAge\nA\t40\t6").riders[0].rider.mass->in_kilograms() ==
          Approx(18.14).margin(0.01));
}

TEST_CASE("a table without headings is a name and the inside leg", "[club]") {
    const RiderTable two = read("Anna\t49.5\nBen\t52");
    CHECK_FALSE(two.heading_row);
    CHECK(two.riders.size() == 2);
    CHECK(inseam_mm(two.riders[1]) == Approx(520.0));
    const RiderTable one = read("49.5\n52\n");
    CHECK(one.riders[0].id == "1");
    CHECK(inseam_mm(one.riders[1]) == Approx(520.0));
}

TEST_CASE("what cannot be read is said with its row and column, and the rest is kept", "[club]") {
    const RiderTable table = read("Name\tInside leg\tStage\tAge\tWeight\n"
                                  "A\tabout 50\twobbly\tsoon\theavy\n"
                                  "B\t4\t\t5\t\n"
                                  "B\t50\t\t\t\n"
                                  "C\t\t\t\t\n"
                                  "D\t19.5\t\t\t\n");
    REQUIRE(table.riders.size() == 4);
    const TableRider& a = table.riders[0];
    REQUIRE(a.problems.size() == 4);
    CHECK(a.problems[0].code == ProblemCode::figure_not_a_number);
    CHECK(a.problems[0].cell->row == 2);
    CHECK(a.problems[0].cell->column_name == "Inside leg");
    CHECK(a.problems[1].code == ProblemCode::riders_word_unknown);
    CHECK(a.problems[2].code == ProblemCode::riders_age_unreadable);
    CHECK(a.problems[3].code == ProblemCode::riders_weight_unreadable);
    CHECK_FALSE(a.measured);
    CHECK(table.riders[1].problems[0].code == ProblemCode::riders_figure_out_of_range);
    CHECK(table.riders[1].measured); // by the age
    REQUIRE(table.set_aside.size() == 1);
    CHECK(table.set_aside[0].code == ProblemCode::riders_name_twice);
    CHECK(table.set_aside[0].cell->row == 4);
    CHECK_FALSE(table.riders[2].measured);
    // 19.5 cm is hardly a leg: inches?
    REQUIRE_FALSE(table.riders[3].problems.empty());
    CHECK(table.riders[3].problems[0].code == ProblemCode::reading_outside_plausible);
    CHECK(table.riders[3].problems[0].cell->row == 6);
}

TEST_CASE("tables with nobody in them, and quotes that stay open", "[club]") {
    for (const char* text : {"", " \n\t\n", "Name\tInside leg\n"}) {
        const auto none = read_rider_table(text, LengthUnit::centimetre, today);
        REQUIRE_FALSE(none);
        CHECK(none.problem().code == ProblemCode::riders_none);
    }
    const auto open = read_rider_table("Name,Inside leg\n\"A,50\n", LengthUnit::centimetre, today);
    REQUIRE_FALSE(open);
    CHECK(open.problem().code == ProblemCode::table_quote_not_closed);
    CHECK(open.problem().position->line == 2);
}

TEST_CASE("the separator is the one that makes headings, wherever the others are", "[club]") {
    const RiderTable quoted = read("name,inside leg\n\"Bo; at two\",49.5 cm\n");
    REQUIRE(quoted.riders.size() == 1);
    CHECK(quoted.riders[0].id == "Bo; at two");
    const RiderTable bare = read("name,inside leg\nBo; at two,49.5 cm\n");
    REQUIRE(bare.riders.size() == 1);
    CHECK(inseam_mm(bare.riders[0]) == Approx(495.0));
    CHECK(inseam_mm(read("Anna;49,5\nBen;52\n").riders[0]) == Approx(495.0));
}

TEST_CASE("a table that was written reads as the same, and no cell of it is a formula", "[club]") {
    const std::vector<RiderCells> cells{
        {"=HYPERLINK(1)", "49.5 cm", "no", "starting", "5", "", "40 lb", "110 cm"},
        {"Zoë, \"the\" second", "", "", "", "", "2020-05", "", ""},
        {"-Bo", "19 1/2 in", "", "", "", "", "", ""}};
    const std::string table = write_rider_table(cells);
    CHECK(table.find("\r\n=") == std::string::npos);
    CHECK(table.find("\r\n-") == std::string::npos);
    const RiderTable again = read(table);
    REQUIRE(again.riders.size() == cells.size());
    for (std::size_t i = 0; i < cells.size(); ++i) {
        INFO(table);
        CHECK(again.riders[i].cells == cells[i]);
    }
    CHECK(again.columns.size() == rider_columns);
    CHECK(write_rider_table({}) == "name\r\n");
}
