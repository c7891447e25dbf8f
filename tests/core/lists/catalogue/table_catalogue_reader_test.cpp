// Lists in tables, as spreadsheets and people write them.
#include "core/lists/catalogue/table_catalogue_reader.h"

#include "core/lists/catalogue/bike_reader.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

using namespace saddlerule;

namespace {

Result<KeptList> read(std::string_view text) {
    return read_table_catalogue(text);
}

KeptList read_well(std::string_view text) {
    auto list = read(text);
    if (!list)
        FAIL(sentence(list.problem()));
    return std::move(list).value();
}

Problem refusal(std::string_view text) {
    auto list = read(text);
    if (list)
        FAIL("was read");
    return std::move(list).problem();
}

constexpr std::string_view plain = "# title: Loan shed\n"
                                   "# units: cm\n"
                                   "# currency: EUR\n"
                                   "id,name,saddle_lowest,saddle_highest,price\n"
                                   "L1,Loan 1,49.5,63,120\n"
                                   "L2,Loan 2,50,,\n";

void check_is_plain(const KeptList& list) {
    CHECK(list.catalogue.title == "Loan shed");
    CHECK(list.facts.units == LengthUnit::centimetre);
    CHECK(list.facts.currency == Currency::from_code("EUR"));
    REQUIRE(list.catalogue.bikes.size() == 2);
    CHECK(list.entries[0].source ==
          R"({"id":"L1","name":"Loan 1","saddle_lowest":49.5,"saddle_highest":63,"price":120})");
    CHECK(list.entries[1].source == R"({"id":"L2","name":"Loan 2","saddle_lowest":50})");
}

std::string replaced(std::string_view text, std::string_view what, std::string_view by) {
    std::string result;
    for (std::size_t at = text.find(what); at != std::string_view::npos; at = text.find(what)) {
        result.append(text.substr(0, at)).append(by);
        text.remove_prefix(at + what.size());
    }
    return result.append(text);
}

} // namespace

TEST_CASE("a table reads as the JSON list that says the same", "[catalogue]") {
    check_is_plain(read_well(plain));
    CHECK(read_well(plain).form == ListForm::table);
}

TEST_CASE("line ends, separators and blank rows change nothing", "[catalogue]") {
    check_is_plain(read_well(replaced(std::string(plain), "\n", "\r\n")));
    check_is_plain(read_well(replaced(std::string(plain), "\n", "\r")));
    check_is_plain(read_well(replaced(std::string(plain), ",", ";")));
    check_is_plain(read_well(replaced(std::string(plain), ",", "\t")));
    check_is_plain(read_well(replaced(std::string(plain), "\n", "\n\n,,,,\n \n")));
    check_is_plain(read_well("sep=;\r\n" + replaced(std::string(plain), ",", ";")));
    check_is_plain(read_well("sep=|\n" + replaced(std::string(plain), ",", "|")));
    check_is_plain(read_well("\n\n" + std::string(plain)));
}

TEST_CASE("lines of # key: value read as spreadsheets save them again", "[catalogue]") {
    const std::string rows = "id,saddle lowest\nA,49.5\n";
    CHECK(read_well("# title: Loan shed, autumn list\n# units: cm\n" + rows).catalogue.title ==
          "Loan shed, autumn list");
    CHECK(read_well("\"# title: Loan shed, autumn list\",,\n# units: cm,,\n" + rows).catalogue.title ==
          "Loan shed, autumn list");
    CHECK(read_well("# title: Loan shed, autumn list,,\n\"# units: cm\",,\n" + rows).catalogue.title ==
          "Loan shed, autumn list");
    SECTION("keys are free in case, and units and currency in their wording") {
        const auto list =
            read_well("#Title:x\n# UNITS : Inches\n# Currency: \xE2\x82\xAC\n# Measured on: 2026-10-03\n"
                      "id,saddle lowest,price\nA,19.5,10\n");
        CHECK(list.facts.units == LengthUnit::inch);
        CHECK(list.facts.currency->code() == "EUR");
        CHECK(list.catalogue.measured_on == CalendarDate::from_iso("2026-10-03"));
        CHECK(list.catalogue.notes.empty());
    }
    SECTION("other keys, and remarks without one, are kept and noted with their row") {
        const auto list = read_well("# units: cm\n# hall: Green, left\n# A remark\n# Another\n" + rows);
        REQUIRE(list.header.size() == 4);
        CHECK(list.header[1] == UnknownField{"hall", R"("Green, left")"});
        CHECK(list.header[2] == UnknownField{"remark", R"("A remark")"});
        CHECK(list.header[3] == UnknownField{"remark 2", R"("Another")"});
        REQUIRE(list.catalogue.notes.size() == 3);
        CHECK(sentence(list.catalogue.notes[0]).starts_with("row 2: the field \"hall\""));
    }
    SECTION("a title of 2,000 characters may take more of them as JSON") {
        const std::string quotes(2000, '\'');
        const auto list = read_well("# units: cm\n# title: \"" + quotes + "\"\n" + rows);
        CHECK(list.catalogue.title == quotes);
    }
    SECTION("a column may be called #") {
        const auto list = read_well("# units: cm\n#,name,saddle lowest\n1,A,49\n");
        CHECK(list.entries[0].source == R"({"#":1,"name":"A","saddle_lowest":49})");
    }
    SECTION("what a later version needs, and units that are none, refuse the file") {
        CHECK(refusal("# version: 2\n" + rows).code == ProblemCode::file_version_too_new);
        const Problem units = refusal("# title: x\n# units: ell\n" + rows);
        CHECK(units.code == ProblemCode::file_value_unknown);
        CHECK(sentence(units).starts_with("row 2"));
        CHECK(refusal("# units: cm\n# units: in\n" + rows).code == ProblemCode::file_field_twice);
    }
}

TEST_CASE("the separator is the one that makes most known names", "[catalogue]") {
    const auto list = read_well("# units: cm\nname;saddle_lowest;colours, if any\nA, red;49,5;green\n");
    CHECK(list.entries[0].source == R"({"name":"A, red","saddle_lowest":49.5,"colours, if any":"green"})");
}

TEST_CASE("the header's units are the list's where all its lengths agree", "[catalogue]") {
    const auto agreeing = read_well("name,Saddle lowest [cm],Saddle highest (cm)\nA,49.5,63\n");
    CHECK(agreeing.facts.units == LengthUnit::centimetre);
    CHECK(agreeing.entries[0].source == R"({"name":"A","saddle_lowest":49.5,"saddle_highest":63})");
    const auto mixed = read_well("name,Saddle lowest [in],Crank [mm]\nA,19.5,102\n");
    CHECK_FALSE(mixed.facts.units);
    CHECK(mixed.entries[0].source == R"({"name":"A","saddle_lowest":"19.5 in","crank":"102 mm"})");
    REQUIRE(mixed.catalogue.bikes[0].crank);
    CHECK(mixed.catalogue.bikes[0].crank->in_millimetres() == Approx(102.0).margin(0.001));
    const auto other = read_well("# units: cm\nname,Saddle lowest [in],crank\nA,19.5,10.2\n");
    CHECK(other.entries[0].source == R"({"name":"A","saddle_lowest":"19.5 in","crank":10.2})");
}

TEST_CASE("where nothing names a unit, the file says so once", "[catalogue]") {
    const Problem problem = refusal("name,saddle lowest\nA,49.5\nB,50\n");
    CHECK(problem.code == ProblemCode::table_without_units);
    CHECK(expected(problem).find("# units: cm") != std::string::npos);
}

TEST_CASE("a unit given from outside stands in for the one that the table lacks, and for no other",
          "[catalogue]") {
    const auto read_in_inches = [](std::string_view text) {
        auto list = read_table_catalogue(text, nullptr, {.table_units = LengthUnit::inch});
        REQUIRE(list.ok());
        return std::move(list).value();
    };
    const auto without = read_in_inches("# title: Shed\nname,saddle lowest\nA,19.5\n");
    CHECK(without.facts.units == LengthUnit::inch);
    CHECK(without.catalogue.bikes[0].saddle_lowest->in_millimetres() == Approx(495.3).margin(0.001));
    CHECK(without.header.back() == UnknownField{.name = "units", .json = "\"in\""});
    CHECK(read_in_inches("name,saddle lowest\nA,19.5\n").header.size() == 1);
    CHECK(read_in_inches("# units: cm\nname,saddle lowest\nA,49.5\n").facts.units == LengthUnit::centimetre);
}

TEST_CASE("the currency is named above, in the header, or by the prices", "[catalogue]") {
    CHECK(read_well("name,saddle lowest [cm],price [GBP]\nA,49,10\n").facts.currency->code() == "GBP");
    const auto symbols = read_well("name,saddle lowest [cm],price\nA,49,\nB,50,\"\xE2\x82\xAC 12,50\"\n");
    CHECK(symbols.facts.currency->code() == "EUR");
    CHECK(symbols.catalogue.bikes[1].price == Money::amount(12.5, *Currency::from_code("EUR")));
    SECTION("whichever row has it, and by none where two prices disagree") {
        const char* head = "name,saddle lowest [cm],saddle highest [cm],price\n";
        const std::string euros = "A,49,60,120 EUR\n";
        const std::string bare = "B,50,60,120\n";
        const std::string pounds = "C,50,60,90 GBP\n";
        CHECK(read_well(head + euros + bare).facts.currency == Currency::from_code("EUR"));
        const auto list = read_well(head + bare + euros);
        CHECK(list.facts.currency == Currency::from_code("EUR"));
        CHECK(list.catalogue.bikes.size() == 2);
        CHECK(list.catalogue.bikes[1].price == Money::amount(120.0, *Currency::from_code("EUR")));
        CHECK_FALSE(read_well(head + euros + pounds).facts.currency);
        CHECK_FALSE(read_well(head + pounds + euros).facts.currency);
    }
    SECTION("a column in another currency is one of its own") {
        const auto list = read_well("# currency: EUR\nname,saddle lowest [cm],price [GBP]\nA,49,10\n");
        CHECK(list.entries[0].source == R"({"name":"A","saddle_lowest":49,"price [GBP]":10})");
        CHECK_FALSE(list.catalogue.bikes[0].price);
        REQUIRE(list.catalogue.notes.size() == 1);
        CHECK(expected(list.catalogue.notes[0]) == "perhaps \"price\"");
    }
}

TEST_CASE("problems name the row as a spreadsheet counts and the column as the header has it",
          "[catalogue]") {
    const auto list = read_well("# units: cm\n"
                                "Name;Saddle lowest;Saddle highest;Mass;Gears;Available;Crank\n"
                                "\"good\nbike\";49,5;63;6,4;7;yes;10\n"
                                "\n"
                                "A;forty;;;;;\n"
                                "B;49.5.1;;;;;\n"
                                "C;49,5;36;;;;\n"
                                "D;50;;light;;;\n"
                                "E;50;60;6;7,5;;\n"
                                "F;50;;6;7;perhaps;\n"
                                "G;;;6;7;yes;10\n"
                                "H;50;60;6;7;yes;102\n");
    std::vector<std::string> sentences;
    for (const SetAside& entry : list.catalogue.set_aside)
        sentences.push_back(sentence(entry.problem));
    CHECK(sentences ==
          std::vector<std::string>{"row 5, Saddle lowest: \"forty\" is not a number",
                                   "row 6, Saddle lowest: \"49.5.1\" is not a number",
                                   "row 7, Saddle highest: 36 cm is below the lowest, 49.5 cm",
                                   "row 8, Mass: \"light\" is not a number",
                                   "row 9, Gears: 7.5 is not a whole number",
                                   "row 10, Available: \"perhaps\" is not known",
                                   "row 11: the bike has neither \"saddle_lowest\" nor \"saddle_highest\"",
                                   "row 12, Crank: 102 cm is out of range"});
    const Problem& problem = list.catalogue.set_aside[2].problem;
    CHECK(problem.where == "bikes[3].saddle_highest");
    CHECK(problem.cell == CellPlace{7, "Saddle highest"});
    CHECK_FALSE(problem.position);
}

TEST_CASE("rows shorter than the header are as good as others, and longer ones are set aside",
          "[catalogue]") {
    const auto list = read_well("# units: cm\n"
                                "name,saddle lowest,price,\n"
                                "A,49\n"
                                "B,50,,\n"
                                "Loan 3, 16 in,51,\n"
                                "Loan 4, 16 in,51,,\n"
                                "C,51,1,,2,3\n");
    CHECK(list.catalogue.bikes.size() == 3);
    REQUIRE(list.catalogue.set_aside.size() == 2);
    SECTION("also where only empty cells are too many: a separator inside a text has moved all others") {
        CHECK(sentence(list.catalogue.set_aside[0].problem) ==
              "row 6: an empty cell is in a column without a name");
    }
    const SetAside& longer = list.catalogue.set_aside[1];
    CHECK(longer.problem.code == ProblemCode::bike_field_without_name);
    CHECK(longer.source == R"({"name":"C","saddle_lowest":51,"price":1,"":["2","3"]})");
}

TEST_CASE("a row is judged by itself: what is above it changes nothing", "[catalogue]") {
    const auto list =
        read_well("# units: cm\nname,saddle lowest,shelf,brakes\nA,49," + std::string(longest_text + 1, 'x') +
                  ",\"front hand, coaster\"\nB,50,7,coaster\nC,51,[],none\n");
    REQUIRE(list.catalogue.set_aside.size() == 1);
    CHECK(list.catalogue.set_aside[0].problem.code == ProblemCode::bike_text_too_long);
    REQUIRE(list.catalogue.bikes.size() == 2);
    CHECK(list.entries[1].source == R"({"name":"B","saddle_lowest":50,"shelf":7,"brakes":["coaster"]})");
    CHECK(list.entries[2].source == R"({"name":"C","saddle_lowest":51,"shelf":[],"brakes":[]})");
}

TEST_CASE("of two bikes with one id the later row is set aside", "[catalogue]") {
    const auto list = read_well("# units: cm\nid,saddle lowest\nA,49\nB,50\nA,51\n");
    REQUIRE(list.catalogue.set_aside.size() == 1);
    CHECK(sentence(list.catalogue.set_aside[0].problem) ==
          "row 5, id: the bike in row 3 already has the id \"A\"");
}

TEST_CASE("columns that are not known are kept and mentioned once, with what may be meant", "[catalogue]") {
    const auto list =
        read_well("# units: cm\nname,saddle lowest,Saddle hihgest [cm],helmet\nA,49,60,yes\nB,50,61,\n");
    CHECK(list.entries[0].source ==
          R"({"name":"A","saddle_lowest":49,"Saddle hihgest [cm]":60,"helmet":"yes"})");
    REQUIRE(list.catalogue.notes.size() == 2);
    CHECK(sentence(list.catalogue.notes[0]) == "row 3, Saddle hihgest [cm]: the field \"Saddle hihgest "
                                               "[cm]\" is not known; it is kept as it is (2 times)");
    CHECK(expected(list.catalogue.notes[0]) == "perhaps \"saddle_highest\"");
}

TEST_CASE("formulas that were guarded come back as they were", "[catalogue]") {
    const auto list = read_well("# units: cm\nname,saddle lowest,'=note\n'=1+1,49,'-5\n'tis,50,-5\n");
    CHECK(list.entries[0].source == R"({"name":"=1+1","saddle_lowest":49,"=note":-5})");
    CHECK(list.entries[1].source == R"({"name":"'tis","saddle_lowest":50,"=note":-5})");
}

TEST_CASE("emoji and names from right to left pass", "[catalogue]") {
    const auto list = read_well("# units: cm\nname,saddle lowest\n\xF0\x9F\x9A\xB2 A,49\n"
                                "\xD7\x90\xD7\x95\xD7\xA4\xD7\xA0\xD7\x99\xD7\x99\xD7\x9D,50\n");
    CHECK(list.catalogue.bikes[0].name == "\xF0\x9F\x9A\xB2 A");
    CHECK(list.catalogue.bikes[1].id == "\xD7\x90\xD7\x95\xD7\xA4\xD7\xA0\xD7\x99\xD7\x99\xD7\x9D");
}

TEST_CASE("faults of the table itself refuse it with the place", "[catalogue]") {
    struct Fault {
        std::string text;
        ProblemCode code;
        std::string beginning;
    };
    const std::vector<Fault> faults{
        {"# units: cm\nname,saddle lowest\nA,49\nB,\"50\nC,51\n", ProblemCode::table_quote_not_closed,
         "line 4, column 3: "},
        {"name,\"saddle lowest\nA,49\n", ProblemCode::table_quote_not_closed, "line 1, column 6: "},
        {"# units: cm\nName,saddle lowest,price,Saddle_Lowest [in]\nA,49,1,2\n",
         ProblemCode::table_column_twice, "line 2, column 26: the column \"Saddle_Lowest [in]\""},
        {"# units: cm\nname,saddle lowest,helmet,helmet\nA,49,1,2\n", ProblemCode::table_column_twice,
         "line 2, column 27: the column \"helmet\""},
        {"A,49.5,63\nB,50,64\n", ProblemCode::table_without_header,
         "line 1, column 1: this is neither JSON nor a table whose first row names its columns: it starts "
         "with "
         "\"A,49.5,63\""},
        {"# units: cm\n# title: x\n", ProblemCode::table_without_header, "line 2"},
        {"Dear all, the price is in the notes\n", ProblemCode::table_without_header, "line 1, column 1: "},
        {"id,saddle lowest [cm]\n", ProblemCode::file_bikes_empty, ""},
        {"# units: cm\nname,saddle lowest\nA,forty\n", ProblemCode::file_no_usable_bike,
         "no bike in the file can be used (1 left out); the first: row 3, saddle lowest: \"forty\" is not a "
         "number"},
    };
    for (const Fault& fault : faults) {
        CAPTURE(fault.text);
        const Problem problem = refusal(fault.text);
        CHECK(code_name(problem.code) == code_name(fault.code));
        CAPTURE(sentence(problem));
        CHECK(sentence(problem).starts_with(fault.beginning));
    }
    SECTION("too many columns, too many bikes, a title too long") {
        std::string header = "name,saddle lowest [cm]";
        for (int i = 0; i < 1000; ++i)
            header += ",c" + std::to_string(i);
        CHECK(refusal(header + "\nA,49\n").code == ProblemCode::table_too_many_columns);
        std::string rows = "name,saddle lowest [cm]\n";
        for (int i = 0; i <= 20'000; ++i)
            rows += "A,49\n";
        CHECK(sentence(refusal(rows)).starts_with("row 20002: the list has 20001 bikes"));
        const Problem title =
            refusal("# units: cm\n# title: " + std::string(2001, 'x') + "\nname,saddle lowest\nA,49\n");
        CHECK(sentence(title) == "row 2: a text has 2001 characters");
    }
}

TEST_CASE("a club's own table is read: a title above, headings in people's own words, a row of totals below",
          "[catalogue]") {
    const KeptList list = read_well("Fahrr\u00E4der der Dorfhalle;;;;;\n"
                                    "Stand: 3. Oktober 2026;;;;;\n"
                                    ";;;;;\n"
                                    "Nr;Modell;Sattel min (cm);Sattel max (cm);Preis in Euro;Gewicht kg\n"
                                    "K01;Blau;47;61;55,00;6,4\n"
                                    "K02;Rot;4,7,1;74;30;8,9\n"
                                    ";Summe;105;135;85;15,3\n");
    CHECK(list.catalogue.title == "Fahrr\u00E4der der Dorfhalle");
    REQUIRE(list.header.size() >= 2);
    CHECK(list.header[1].json == "\"Stand: 3. Oktober 2026\"");
    REQUIRE(list.catalogue.bikes.size() == 1);
    CHECK(list.entries[0].source ==
          R"({"id":"K01","name":"Blau","saddle_lowest":47,"saddle_highest":61,"price":55.00,"mass_kg":6.4})");
    CHECK(list.facts.currency == Currency::from_code("EUR"));
    REQUIRE(list.catalogue.set_aside.size() == 2);
    CHECK(sentence(list.catalogue.set_aside[0].problem).starts_with("row 6, Sattel min (cm): "));
    CHECK(list.catalogue.set_aside[1].problem.code == ProblemCode::riders_row_of_totals);
    CHECK(list.catalogue.set_aside[1].problem.cell->row == 7);
}

TEST_CASE("a cell that holds another table takes no part in the question of what is between the columns",
          "[catalogue]") {
    const KeptList list =
        read_well("# units: cm\nid;name;saddle_lowest\n"
                  "A;\"pasted\n# units: in\nid,name,kind,saddle_lowest\nB,Blue,pedal,19\";49,5\n");
    REQUIRE(list.catalogue.bikes.size() == 1);
    CHECK(list.catalogue.bikes[0].id == "A");
}

TEST_CASE("the unit is asked once where most bikes want one, whatever else is wrong", "[catalogue]") {
    const std::string table = "name,saddle lowest\nA,49\nB,50\nTotal,99\nC,49 cm\n";
    CHECK(refusal(table).code == ProblemCode::table_without_units);
    CHECK(read_table_catalogue(table, nullptr, {.to_mend = true}).ok());
    CHECK(read_well("name,saddle lowest\nA,49 cm\nB,50 cm\nC,49\n").catalogue.set_aside.size() == 1);
}

TEST_CASE("whoever opens a table may say what its columns hold", "[catalogue]") {
    const std::string table =
        "Shed\nTag,What,S1 (cm),S2 (cm),name\nK1,Red,47,61,Mia\nK2,Blue,58,74,Ole\nK3,Old,,70,Ole\n";
    TableSketch sketch;
    const auto without = read_table_catalogue(table, nullptr, {.sketch = &sketch});
    REQUIRE_FALSE(without.ok());
    CHECK(sketch.needs_a_word());
    CHECK(sketch.heading_row == 2);
    REQUIRE(sketch.columns.size() == 5);
    CHECK(sketch.columns[2].heading == "S1 (cm)");
    CHECK(sketch.columns[2].field == nullptr);
    CHECK(sketch.columns[2].values == "47, 58");
    CHECK(sketch.columns[0].field == field_named("id"));

    const SaidColumns said{
        {field_named("name"), 2}, {field_named("saddle_lowest"), 3}, {field_named("saddle_highest"), 4}};
    const auto list = read_table_catalogue(table, nullptr, {.columns = said, .sketch = &sketch});
    REQUIRE(list.ok());
    CHECK_FALSE(sketch.needs_a_word());
    CHECK(list->catalogue.title == "Shed");
    CHECK(list->facts.units == LengthUnit::centimetre);
    REQUIRE(list->entries.size() == 3);
    // The column that was called "name" is not the name, and is kept under what it was called.
    CHECK(list->catalogue.bikes[0].name == "Red");
    CHECK(list->catalogue.bikes[2].saddle_highest == Length::centimetres(70.0));

    const auto none = read_table_catalogue(table, nullptr, {.columns = {{field_named("saddle_lowest"), 0}}});
    CHECK_FALSE(none.ok());
    const auto beyond =
        read_table_catalogue(table, nullptr, {.columns = {{field_named("saddle_lowest"), 99}}});
    CHECK_FALSE(beyond.ok());
}

TEST_CASE("a letter with commas is no table that asks for its columns", "[catalogue]") {
    TableSketch sketch;
    CHECK_FALSE(
        read_table_catalogue("Dear all,\nthe bikes, 16 of them, are here.\n", nullptr, {.sketch = &sketch})
            .ok());
    CHECK(sketch.columns.empty());
}

TEST_CASE("reading a table tells how far it is", "[catalogue]") {
    std::string text = "# units: cm\nname,saddle lowest\n";
    for (int i = 0; i < 20'000; ++i)
        text += "Loan bike of a long name,49.5\n";
    std::vector<std::size_t> told;
    const ReadingProgress progress = [&](std::size_t done, std::size_t total) {
        CHECK(total == text.size());
        told.push_back(done);
    };
    REQUIRE(read_table_catalogue(text, nullptr, {.progress = progress}).ok());
    CHECK(told.size() >= 5);
    CHECK(std::is_sorted(told.begin(), told.end()));
    CHECK(told.back() <= text.size());
}
