// Cells that are written read back as they were, and no spreadsheet runs them.
#include "core/lists/table/spreadsheet_guard.h"
#include "core/lists/table/table_records.h"
#include "core/lists/table/table_writing.h"

#include <catch2/catch.hpp>

#include <string>

using namespace saddlerule;

namespace {

std::string written(std::string_view cell, char separator = ',') {
    std::string text;
    append_table_cell(text, cell, separator);
    return text;
}

std::string unguarded(std::string_view cell) {
    std::string storage;
    return std::string(without_guard(cell, storage));
}

} // namespace

TEST_CASE("a cell is put in quotes where it would be read as something else without", "[table]") {
    CHECK(written("16 in") == "16 in");
    CHECK(written("a,b") == "\"a,b\"");
    CHECK(written("a,b", ';') == "a,b");
    CHECK(written("a;b", ';') == "\"a;b\"");
    CHECK(written("19\"") == "\"19\"\"\"");
    CHECK(written("a\nb") == "\"a\nb\"");
    CHECK(written(" a") == "\" a\"");
    CHECK(written("").empty());
}

TEST_CASE("every cell that was written reads back", "[table]") {
    for (const char separator : {',', ';', '\t'}) {
        for (const std::string cell :
             {"plain", "a,b;c\td", "\"", "\"\"quoted\"\"", "\r", "\n", "\r\n", "x\ry", " a ", "\t", "'=1"}) {
            CAPTURE(separator, cell);
            const std::string text = "x" + std::string(1, separator) + written(cell, separator) + "\r\n";
            TableRecords records(text, separator);
            REQUIRE(records.next());
            REQUIRE(records.cells().size() == 2);
            CHECK(records.cells()[1].text == cell);
        }
    }
}

TEST_CASE("a spreadsheet that parts cells at another separator finds no formula either", "[table]") {
    CHECK(with_guard("Bike;=1+1;") == "Bike;'=1+1;");
    CHECK(with_guard("a,@b|+c\n-d") == "a,'@b|'+c\n'-d");
    for (const std::string cell :
         {"Bike;=1+1;", "a,@b|+c\n-d", "a;'=1", "a;''=1;'", "=a;=b", ";\t=x", "a;'"}) {
        CAPTURE(cell);
        CHECK(unguarded(with_guard(cell)) == cell);
    }
    // A price, figures, and an apostrophe where nothing could be run.
    for (const std::string cell : {"120,-", "1,-5", "a;'b", "a-b;c=d"}) {
        CAPTURE(cell);
        CHECK(with_guard(cell) == cell);
        CHECK(unguarded(cell) == cell);
    }
}

TEST_CASE("what a spreadsheet may run is guarded, and the guard comes off again", "[table]") {
    for (const std::string cell :
         {"=1+1", "+1", "-a", "-1+1", "--1", "@sum", "\tx", "\rx", "'=1", "''-a", "-", "- 5",
          "\xEF\xBC\x9D"
          "1",
          "\xEF\xBC\x8B"
          "1",
          "\xEF\xBC\x8D"
          "a",
          "\xEF\xBC\xA0"
          "a"}) {
        CAPTURE(cell);
        CHECK(with_guard(cell) == "'" + cell);
        CHECK(unguarded(with_guard(cell)) == cell);
    }
}

TEST_CASE("figures, words and apostrophes are left alone", "[table]") {
    for (const std::string cell :
         {"49.5", "-5", "-49.5", "-49,5", "a=b", "'", "''", "'tis", "1'7", "", "a-b"}) {
        CAPTURE(cell);
        CHECK(with_guard(cell) == cell);
        CHECK(unguarded(cell) == cell);
    }
    SECTION("an apostrophe before a figure that somebody typed is theirs") {
        CHECK(with_guard("'-5") == "''-5");
        CHECK(unguarded("''-5") == "'-5");
    }
}
