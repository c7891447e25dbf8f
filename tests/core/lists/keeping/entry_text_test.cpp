// Entries as text: cells that change a field, and everything else as it was written.
#include "core/lists/keeping/entry_text.h"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace saddlerule;

namespace {

const CellContext in_cm{.units = LengthUnit::centimetre, .currency = Currency::from_code("EUR")};

std::string changed(std::string_view source, const std::vector<FieldCell>& cells) {
    return entry_with(source, cells, in_cm);
}

std::vector<std::pair<std::string, std::string>> cells(std::string_view source) {
    const auto entry = read_entry(source);
    REQUIRE(entry.ok());
    std::vector<std::pair<std::string, std::string>> named;
    for (const FieldCell& cell : cells_of(*entry, source, in_cm))
        named.emplace_back(cell.name, cell.cell);
    return named;
}

} // namespace

TEST_CASE("a changed cell leaves every other field as it was written", "[keeping]") {
    CHECK(
        changed(R"({"id":"A",  "saddle_lowest":4.95e1,"frame":{"lugs":[1, 2]}})", {{"name", "Small one"}}) ==
        R"({ "id": "A", "name": "Small one", "saddle_lowest": 4.95e1, "frame": {"lugs":[1, 2]} })");
}

TEST_CASE("a cell that says what the field says already leaves it as it is written", "[keeping]") {
    CHECK(changed(R"({ "id": 7, "saddle_lowest": "49.50" })", {{"id", "7"}}) ==
          R"({ "id": 7, "saddle_lowest": "49.50" })");
}

TEST_CASE("an empty cell takes its field out, and what is not there stays away", "[keeping]") {
    CHECK(changed(R"({ "id": "A", "price": 90, "saddle_lowest": 50 })", {{"price", ""}, {"notes", ""}}) ==
          R"({ "id": "A", "saddle_lowest": 50 })");
    CHECK(changed(R"({ "id": "A" })", {{"id", ""}}) == "{}");
}

TEST_CASE("a new field comes where the table of fields has it, one that is not known behind all",
          "[keeping]") {
    CHECK(changed(R"({ "notes": "x", "owner": "a neighbour" })",
                  {{"shelf", "3"}, {"saddle_lowest", "49,5"}, {"id", "A"}}) ==
          R"({ "id": "A", "saddle_lowest": 49.5, "notes": "x", "owner": "a neighbour", "shelf": 3 })");
}

TEST_CASE("a field that comes twice is there once when it was typed anew", "[keeping]") {
    CHECK(changed(R"({ "id": "A", "saddle_lowest": 57, "saddle_lowest": 58 })", {{"saddle_lowest", "59"}}) ==
          R"({ "id": "A", "saddle_lowest": 59 })");
    CHECK(changed(R"({ "id": "A", "saddle_lowest": 57, "saddle_lowest": 58 })", {{"saddle_lowest", ""}}) ==
          R"({ "id": "A" })");
}

TEST_CASE("what is no group of fields is given up for one", "[keeping]") {
    CHECK(changed("7", {{"id", "A"}}) == R"({ "id": "A" })");
    CHECK(changed("null", {{"id", "A"}}) == R"({ "id": "A" })");
    CHECK(cells("[1, 2]").empty());
}

TEST_CASE("an entry is shown as the cells that people would type", "[keeping]") {
    const std::vector<std::pair<std::string, std::string>> wanted{
        {"id", "A"},          {"saddle_lowest", "49.5"}, {"saddle_highest", "25 in"}, {"brakes", "none"},
        {"available", "yes"}, {"colours", "green, red"}, {"frame", R"({"lugs":2})"}};
    CHECK(cells(R"({"id":"A","saddle_lowest":49.5,"saddle_highest":"25 in","brakes":[],"available":true,
                    "colours":["green","red"],"notes":null,"frame":{"lugs":2}})") == wanted);
}

TEST_CASE("names with quotes and awkward letters come back as they were", "[keeping]") {
    const std::string source = R"({ "a \"b\" \\ c": 1, "größe 🚲": "x" })";
    CHECK(changed(source, {{"id", "A"}}) == R"({ "id": "A", "a \"b\" \\ c": 1, "größe 🚲": "x" })");
}
