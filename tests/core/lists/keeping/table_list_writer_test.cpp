// A list comes back from a table as it was.
#include "core/lists/catalogue/catalogue_reader.h"
#include "core/lists/catalogue/json_catalogue_reader.h"
#include "core/lists/catalogue/table_catalogue_reader.h"
#include "core/lists/keeping/table_list_writer.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <memory>
#include <numeric>
#include <string>
#include <utility>
#include <vector>

using namespace saddlerule;

namespace {

KeptList from_json(const std::string& json) {
    auto list = read_json_catalogue(json);
    if (!list)
        FAIL(sentence(list.problem()));
    return std::move(list).value();
}

TableText table_of(const KeptList& list, const TableForm& form = {}) {
    std::vector<std::size_t> numbers(list.entries.size());
    std::iota(numbers.begin(), numbers.end(), std::size_t{1});
    return table_list(list, numbers, form);
}

} // namespace

TEST_CASE("a list is written as lines, names and rows", "[keeping]") {
    const std::string json =
        R"({"format":"saddlerule-catalogue","version":1,"title":"Shed, autumn","units":"cm","currency":"EUR","hall":3,"bikes":[)"
        R"({"helmet":"yes","name":"Loan 1, 16 in","saddle_lowest":49.5,"brakes":["front hand","coaster"]},)"
        R"({"id":"=1+1","saddle_highest":"19 1/2 in","available":true,"price":12.5}]})";
    const KeptList list = from_json(json);
    CHECK(table_of(list).text == "\"# title: Shed, autumn\"\r\n"
                                 "# units: cm\r\n"
                                 "# currency: EUR\r\n"
                                 "# hall: 3\r\n"
                                 "id,name,saddle_lowest,saddle_highest,brakes,price,available,helmet\r\n"
                                 ",\"Loan 1, 16 in\",49.5,,\"front hand, coaster\",,,yes\r\n"
                                 "'=1+1,,,19 1/2 in,,12.5,yes,\r\n");
    CHECK(table_of(list, {.separator = ';', .decimal_mark = ','}).text ==
          "# title: Shed, autumn\r\n"
          "# units: cm\r\n"
          "# currency: EUR\r\n"
          "# hall: 3\r\n"
          "id;name;saddle_lowest;saddle_highest;brakes;price;available;helmet\r\n"
          ";Loan 1, 16 in;49,5;;front hand, coaster;;;yes\r\n"
          "'=1+1;;;19 1/2 in;;12,5;yes;\r\n");
}

TEST_CASE("only the entries of those numbers are written, and only their columns", "[keeping]") {
    const std::string json =
        R"({"units":"cm","bikes":[{"id":"A","saddle_lowest":49,"helmet":1},{"id":"B","saddle_lowest":50}]})";
    const KeptList list = from_json(json);
    CHECK(table_list(list, {2}, {}).text ==
          "# units: cm\r\nid,name,saddle_lowest,saddle_highest\r\nB,,50,\r\n");
}

TEST_CASE("what no row can hold is left out and told", "[keeping]") {
    const std::string json =
        R"({"units":"cm","bikes":[{"id":"A","saddle_lowest":49},5,{},{"id":"B","name":"x","name":"y"}]})";
    const KeptList list = from_json(json);
    const TableText table = table_of(list);
    REQUIRE(table.left_out.size() == 3);
    CHECK(sentence(table.left_out[0].problem) == "a row of a table cannot hold a number");
    CHECK(table.left_out[0].problem.where == "bikes[1]");
    CHECK(sentence(table.left_out[1].problem) == "a row of a table cannot hold a bike without fields");
    CHECK(sentence(table.left_out[2].problem) == "a row of a table cannot hold a field twice");
    CHECK(table.left_out[2].id == "B");
    CHECK(table.left_out[2].source == R"({"id":"B","name":"x","name":"y"})");
    SECTION("a table has at most 1,000 columns") {
        std::string many = R"({"units":"cm","bikes":[)";
        for (int i = 0; i < 20; ++i) {
            many += (i > 0 ? ",{" : "{") + std::string(R"("id":")") + std::to_string(i) +
                    R"(","saddle_lowest":49)";
            for (int j = 0; j < 60; ++j)
                many += ",\"f" + std::to_string(i * 60 + j) + "\":1";
            many += '}';
        }
        const std::string text = many + "]}";
        const TableText wide = table_of(from_json(text));
        CHECK(wide.left_out.size() == 4);
        CHECK(read_table_catalogue(wide.text).ok());
    }
}

TEST_CASE("names, keys and texts that look like something else come back as they were", "[keeping]") {
    const std::string json =
        R"({"units":"cm","title":" x ","measured_on":"2026-10-03","currency":"eur","a:b":"c","\"q\":":1,"Title":"other",)"
        R"("remark":"r","note":null,"flag":true,"bikes":[)"
        R"({"id":"A","saddle_lowest":49,"Saddle Lowest":"x","a;id;name;wheel;kind;price;notes":1,"# x":"=y","'z":"'=1",)"
        R"("price":"EUR 5","notes":"line\r\nbreak \u0000"},)"
        R"({"id":"#1","saddle_lowest":50,"mass":1,"\n":"sep=;"}]})";
    const KeptList list = from_json(json);
    for (const TableForm& form : {TableForm{',', '.'}, TableForm{';', ','}, TableForm{'\t', '.'}}) {
        const std::string text = table_of(list, form).text;
        CAPTURE(text);
        const auto back = read_table_catalogue(text);
        REQUIRE(back.ok());
        CHECK(back->header == list.header);
        CHECK(back->entries.size() == list.entries.size());
        CHECK(table_of(*back, form).text == text);
    }
}

TEST_CASE("a row that was set aside for cells without a column comes back as it was", "[keeping]") {
    const std::string csv = "# units: cm\nid,saddle lowest\nA,49\nB,50,x\nC,51,\"y\",z\nD,52,\n";
    const auto list = read_table_catalogue(csv);
    REQUIRE(list.ok());
    const std::string text = table_of(*list).text;
    const auto back = read_table_catalogue(text);
    REQUIRE(back.ok());
    REQUIRE(back->catalogue.set_aside.size() == 3);
    for (std::size_t i = 0; i < list->entries.size(); ++i)
        CHECK(back->entries[i].source == list->entries[i].source);
}

TEST_CASE("a table whose first line is a title with a line break in it is known for a table", "[keeping]") {
    const std::string json = R"({"title":"two\nlines","units":"cm","bikes":[{"id":"A","saddle_lowest":49}]})";
    const std::string text = table_of(from_json(json)).text;
    const auto back = read_catalogue(std::make_shared<const std::string>(text));
    REQUIRE(back.ok());
    CHECK(back->catalogue.title == "two\nlines");
}

TEST_CASE("what a list says of itself may be as long as its texts allow together", "[keeping]") {
    const std::string text(1900, 'x');
    const std::string escaped = "\"\\u0001" + text + "\"";
    const std::string json = R"({"units":"cm",)" + escaped + R"(:1,"shelves":[)" + escaped + ',' + escaped +
                             R"(],"bikes":[{"id":"A","saddle_lowest":49}]})";
    const KeptList list = from_json(json);
    const auto back = read_table_catalogue(table_of(list).text);
    REQUIRE(back.ok());
    CHECK(back->header == list.header);
    SECTION("but no text of it is longer than a text may be") {
        const auto refused =
            read_table_catalogue("# shelves: [\"" + text + text + "\"]\nid,saddle_lowest\nA,49\n");
        REQUIRE_FALSE(refused.ok());
        CHECK(code_name(refused.problem().code) == code_name(ProblemCode::json_text_too_long));
        CHECK(refused.problem().cell->row == 1);
    }
}
