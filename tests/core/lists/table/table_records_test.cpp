// The grammar of separated values: RFC 4180, section 2, and what files do beyond it.
#include "core/lists/table/table_records.h"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace saddlerule;
using namespace std::string_literals;
using namespace std::string_view_literals;

namespace {

using Rows = std::vector<std::vector<std::string>>;

Rows rows_of(std::string_view text, char separator = ',') {
    Rows rows;
    TableRecords records(text, separator);
    while (records.next()) {
        auto& row = rows.emplace_back();
        for (const TableCell& cell : records.cells())
            row.emplace_back(cell.text);
    }
    CHECK_FALSE(records.unclosed_quote());
    return rows;
}

} // namespace

TEST_CASE("rows and cells are those of RFC 4180, section 2", "[table]") {
    // The rules by their number there.
    CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") ==
          Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});                                          // 1
    CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx") == Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}); // 2
    CHECK(rows_of(" a , b \r\n") == Rows{{" a ", " b "}});                                              // 4
    CHECK(rows_of("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
          Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});                                        // 5
    CHECK(rows_of("\"aaa\",\"b\r\nbb\",\"c,c\"\r\nzzz") == Rows{{"aaa", "b\r\nbb", "c,c"}, {"zzz"}}); // 6
    CHECK(rows_of("\"aaa\",\"b\"\"bb\",\"\"\"\"") == Rows{{"aaa", "b\"bb", "\""}});                   // 7
}

TEST_CASE("lines end with LF, CRLF or CR, mixed as they come", "[table]") {
    CHECK(rows_of("a,b\nc,d\r\ne,f\rg,h") == Rows{{"a", "b"}, {"c", "d"}, {"e", "f"}, {"g", "h"}});
    CHECK(rows_of("\"a\"\r\"b\"\n") == Rows{{"a"}, {"b"}});
    CHECK(rows_of("a\r") == Rows{{"a"}});
}

TEST_CASE("the separator may be a semicolon or a tab, and the others are then plain characters", "[table]") {
    CHECK(rows_of("49,5;63,0\n", ';') == Rows{{"49,5", "63,0"}});
    CHECK(rows_of("a\tb;c\t\"d\te\"\n", '\t') == Rows{{"a", "b;c", "d\te"}});
}

TEST_CASE("a quote inside a cell is a plain character", "[table]") {
    CHECK(rows_of("19 1/2\",a\"b\"c,x\n") == Rows{{"19 1/2\"", "a\"b\"c", "x"}});
    CHECK(rows_of(" \"a\",b\n") == Rows{{" \"a\"", "b"}});
    SECTION("what comes after a closing quote belongs to the cell") {
        CHECK(rows_of("\"a\"b,\"c \"\"d\" e\"f,g\n") == Rows{{"ab", "c \"d e\"f", "g"}});
    }
}

TEST_CASE("empty cells count, and rows of nothing but blanks do not", "[table]") {
    CHECK(rows_of("a,,\n,,b\n") == Rows{{"a", "", ""}, {"", "", "b"}});
    CHECK(rows_of("\n\r\n,, ,\n\"\",\"\"\n  \na\n\n").size() == 1);
    CHECK(rows_of("").empty());
}

TEST_CASE("rows are numbered as a spreadsheet numbers them", "[table]") {
    TableRecords records("a\n\n,,\n\"b\nb\"\nc\r\n\r\nd", ',');
    std::vector<std::size_t> numbers;
    while (records.next())
        numbers.push_back(records.row());
    CHECK(numbers == std::vector<std::size_t>{1, 4, 5, 7});
}

TEST_CASE("cells and rows know where they are", "[table]") {
    const std::string_view text = "ab,\"c\"\"d\"\nef, g\n";
    TableRecords records(text, ',');
    REQUIRE(records.next());
    CHECK(records.cells()[1].begin == 3);
    CHECK(records.end() == 10);
    REQUIRE(records.next());
    CHECK(records.begin() == 10);
    CHECK(records.cells()[1].begin == 13);
}

TEST_CASE("a quote that nothing closes ends the table and is told", "[table]") {
    TableRecords records("a,b\nc,\"d\ne,f\n", ',');
    REQUIRE(records.next());
    CHECK_FALSE(records.next());
    REQUIRE(records.unclosed_quote());
    CHECK(*records.unclosed_quote() == 6);
    CHECK(records.row() == 2);
    CHECK_FALSE(records.next());
    SECTION("a lone quote at the end, and one whose partner is doubled") {
        for (const std::string_view text : {"\""sv, "a,\""sv, "\"\"\""sv, "\"a\"\""sv}) {
            CAPTURE(text);
            TableRecords open(text, ',');
            CHECK_FALSE(open.next());
            CHECK(open.unclosed_quote().has_value());
        }
    }
}

TEST_CASE("a million empty lines, and one line of 8 MiB, take a moment and no memory", "[table]") {
    CHECK(rows_of(std::string(1'000'000, '\n') + "a") == Rows{{"a"}});
    const std::string line(8 * 1024 * 1024, 'x');
    CHECK(rows_of(line).front().front().size() == line.size());
    SECTION("of separators") {
        const std::string separators = "a" + std::string(8 * 1024 * 1024, ',') + "\nb";
        TableRecords records(separators, ',');
        REQUIRE(records.next());
        CHECK(records.cells().size() == TableRecords::most_cells);
        CHECK(records.cells().back().text.empty());
        REQUIRE(records.next());
        CHECK(records.cells().front().text == "b");
    }
    SECTION("of cells: what is too much stays together") {
        std::string cells;
        for (int i = 0; i < 3000; ++i)
            cells += "\"a\"\"b\",";
        TableRecords records(cells, ',');
        REQUIRE(records.next());
        REQUIRE(records.cells().size() == TableRecords::most_cells);
        CHECK(records.cells()[TableRecords::most_cells - 2].text == "a\"b");
        const std::string_view last = records.cells().back().text;
        CHECK(last.size() == 1001 * 7 - 1);
        CHECK(last.starts_with("\"a\"\"b\",\"a"));
    }
    SECTION("of quotes") {
        CHECK(rows_of(std::string(8 * 1024 * 1024, '"')).front().front().size() == 4194303);
    }
}

TEST_CASE("a first line may name the separator", "[table]") {
    for (const std::string_view text :
         {"sep=;\na;b"sv, "sep=;\r\na;b"sv, "\"sep=;\"\na;b"sv, "sep=;\ra;b"sv}) {
        CAPTURE(text);
        const auto line = separator_line(text);
        REQUIRE(line);
        CHECK(line->separator == ';');
        CHECK(text.substr(line->end) == "a;b");
    }
    CHECK_FALSE(separator_line("sep=;;\n"));
    CHECK_FALSE(separator_line("sep,a\n"));
    CHECK_FALSE(separator_line("sep="));
}
