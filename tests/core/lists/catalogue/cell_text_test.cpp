// Cells as people type them, and values that must come through a table unchanged.
#include "core/lists/catalogue/cell_text.h"
#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace saddlerule;

namespace {

const CellContext in_cm{.units = LengthUnit::centimetre, .currency = Currency::from_code("EUR")};

std::string json_of(std::string_view field, std::string_view cell, const CellContext& context = in_cm) {
    return json_of_cell(field, cell, context);
}

/// The cell of a value that is written as JSON.
std::string cell_of(std::string_view field, std::string_view json, char mark = '.',
                    const CellContext& context = in_cm) {
    const auto value = read_json(json, JsonLimits());
    REQUIRE(value.ok());
    return cell_of_json(field, *value, json, context, mark);
}

void check_survives(std::string_view field, std::string_view json, const CellContext& context = in_cm) {
    CAPTURE(field, json);
    for (const char mark : {'.', ','}) {
        const std::string cell = cell_of(field, json, mark, context);
        CAPTURE(cell);
        CHECK(json_of(field, cell, context) == json);
    }
}

} // namespace

TEST_CASE("a length is a figure with a point or a comma, or a text with its unit", "[catalogue]") {
    CHECK(json_of("saddle_lowest", "49.5") == "49.5");
    CHECK(json_of("saddle_lowest", "49,5") == "49.5");
    CHECK(json_of("saddle_lowest", " 049,50 ") == "49.50");
    CHECK(json_of("saddle_lowest", "0,5") == "0.5");
    CHECK(json_of("saddle_lowest", "00") == "0");
    CHECK(json_of("saddle_lowest", "19 1/2 in") == "\"19 1/2 in\"");
    CHECK(json_of("saddle_lowest", "49,5 cm") == "\"49,5 cm\"");
    CHECK(json_of("saddle_lowest", "19\"") == "\"19\\\"\"");
    SECTION("what is neither stays a text, for the bike reader to judge") {
        for (const std::string cell :
             {"forty", "49.5.1", "1.234,5", "49.", ".5", "49 5", "1e999", "0x10", "+5"}) {
            CAPTURE(cell);
            CHECK(json_of("saddle_lowest", cell) == '"' + cell + '"');
        }
    }
    SECTION("a figure of JSON is that figure") {
        CHECK(json_of("saddle_lowest", "-5") == "-5");
        CHECK(json_of("saddle_lowest", "4.95e1") == "4.95e1");
        CHECK(json_of("saddle_lowest", "49.123456789012345678") == "49.123456789012345678");
    }
}

TEST_CASE("a column's unit goes with bare figures where the list counts in another", "[catalogue]") {
    CellContext inches = in_cm;
    inches.column_unit = LengthUnit::inch;
    JsonValue value;
    const auto read = [&](std::string_view cell, const CellContext& context) {
        TextBuffer json;
        read_cell(cell, field_named("saddle_lowest"), context, value, json);
        return std::string(json.view());
    };
    CHECK(read("19,5", inches) == "\"19,5 in\"");
    CHECK(read("19 1/2", inches) == "\"19 1/2 in\"");
    CHECK(read("49.5 cm", inches) == "\"49.5 cm\"");
    CHECK(read("forty", inches) == "\"forty\"");
    inches.units = LengthUnit::inch;
    CHECK(read("19,5", inches) == "19.5");
    CHECK(read("19 1/2", inches) == "\"19 1/2\"");
    inches.units.reset();
    CHECK(read("19.5", inches) == "\"19.5 in\"");
}

TEST_CASE("a mass is in kilograms, or says otherwise", "[catalogue]") {
    CHECK(json_of("mass_kg", "6,4") == "6.4");
    CHECK(json_of("mass_kg", "6.4 kg") == "6.4");
    CHECK(json_of("mass_kg", "6,40kg") == "6.40");
    // 14 lb by the international pound of 0.45359237 kg (agreement of 1959).
    CHECK(json_of("mass_kg", "14 lb") == "6.350293");
    CHECK(json_of("mass_kg", "14 lbs") == "6.350293");
    CHECK(json_of("mass_kg", "heavy") == "\"heavy\"");
    CHECK(json_of("mass_kg", "14 stone") == "\"14 stone\"");
}

TEST_CASE("a price may carry the list's own currency and no other", "[catalogue]") {
    for (const std::string cell : {"120", "120 EUR", "EUR 120", "\xE2\x82\xAC 120", "120\xE2\x82\xAC",
                                   "\xE2\x82\xAC\xC2\xA0"
                                   "120"}) {
        CAPTURE(cell);
        CHECK(json_of("price", cell) == "120");
    }
    CHECK(json_of("price", "120,50") == "120.50");
    CHECK(json_of("price", "GBP 120") == "\"GBP 120\"");
    CHECK(json_of("price", "$120") == "\"$120\"");
    SECTION("a thousand to some and little more than one to others is nothing to guess at") {
        CHECK(json_of("price", "1,200") == "\"1,200\"");
        CHECK(json_of("price", "1.200") == "\"1.200\"");
        CHECK(json_of("price", "1.200,50") == "\"1.200,50\"");
    }
    SECTION("codes and symbols that name a currency") {
        CHECK(currency_in_price("120 \xE2\x82\xAC")->code() == "EUR");
        CHECK(currency_in_price("\xC2\xA3"
                                "45.50")
                  ->code() == "GBP");
        CHECK(currency_in_price("CHF 30")->code() == "CHF");
        CHECK_FALSE(currency_in_price("$ 45"));
        CHECK_FALSE(currency_in_price("45"));
        CHECK_FALSE(currency_in_price("free"));
    }
}

TEST_CASE("yes and no are what people and spreadsheets of five languages write", "[catalogue]") {
    // TRUE and FALSE of spreadsheets in English, German, French, Spanish, Dutch: their own function names, from
    // memory.
    for (const std::string cell : {"yes", "Yes", "TRUE", "true", "WAHR", "ja", "VRAI", "oui", "VERDADERO",
                                   "s\xC3\xAD", "S\xC3\x8D", "WAAR", "y"}) {
        CAPTURE(cell);
        CHECK(json_of("available", cell) == "true");
    }
    for (const std::string cell :
         {"no", "FALSE", "FALSCH", "nein", "FAUX", "non", "FALSO", "ONWAAR", "nee", "N"}) {
        CAPTURE(cell);
        CHECK(json_of("available", cell) == "false");
    }
    CHECK(json_of("available", "maybe") == "\"maybe\"");
    CHECK(json_of("available", "1") == "true");
}

TEST_CASE("brakes and colours are lists, and brakes may be known to be none", "[catalogue]") {
    CHECK(json_of("brakes", "front hand, rear hand") == R"(["front hand","rear hand"])");
    CHECK(json_of("brakes", "Front Hand + coaster") == R"(["front hand","coaster"])");
    CHECK(json_of("brakes", "rear hand;coaster/parachute") == R"(["rear hand","coaster","parachute"])");
    CHECK(json_of("brakes", "none") == "[]");
    CHECK(json_of("brakes", "None") == "[]");
    CHECK(json_of("brakes", ",") == "\",\"");
    CHECK(json_of("brakes", "").empty());
    CHECK(json_of("colours", "green, dark blue") == R"(["green","dark blue"])");
    CHECK(json_of("colours", "none") == R"(["none"])");
}

TEST_CASE("other fields", "[catalogue]") {
    CHECK(json_of("id", "7") == "7");
    CHECK(json_of("id", "07") == "\"07\"");
    CHECK(json_of("id", "2E5") == "\"2E5\"");
    CHECK(json_of("name", "7") == "\"7\"");
    CHECK(json_of("wheel", "16") == "\"16\"");
    CHECK(json_of("kind", "Balance") == "\"balance\"");
    CHECK(json_of("gears", "7") == "7");
    CHECK(json_of("gears", "7 speeds") == "\"7 speeds\"");
    CHECK(json_of("seat_tube_angle_deg", "70\xC2\xB0") == "70");
    CHECK(json_of("seat_tube_angle_deg", "70,5 deg") == "70.5");
    CHECK(json_of("name", "=1+1") == "\"=1+1\"");
}

TEST_CASE("a column that is not known keeps figures, flags and texts", "[catalogue]") {
    CHECK(json_of("helmet", "true") == "true");
    CHECK(json_of("helmet", "yes") == "\"yes\"");
    CHECK(json_of("helmet", "1.50") == "1.50");
    CHECK(json_of("helmet", "1,50") == "\"1,50\"");
    CHECK(json_of("helmet", "007") == "\"007\"");
    CHECK(json_of("helmet", "null") == "null");
}

TEST_CASE("JSON in brackets, braces or double quotes is that value", "[catalogue]") {
    CHECK(json_of("name", R"("7")") == R"("7")");
    CHECK(json_of("helmet", R"({"a": [1, 2]})") == R"({"a": [1, 2]})");
    CHECK(json_of("brakes", R"([ ])") == "[ ]");
    CHECK(json_of("name", "json:7") == "7");
    CHECK(json_of("name", "json:null") == "null");
    SECTION("what only looks like it is a text") {
        CHECK(json_of("name", "[the red one]") == R"("[the red one]")");
        CHECK(json_of("name", R"("Rocket" red)") == R"("\"Rocket\" red")");
        CHECK(json_of("name", "json: red") == R"("json: red")");
        CHECK(json_of("name", "\"") == R"("\"")");
        CHECK(json_of("colours", "[red]") == R"(["[red]"])");
    }
    SECTION("and the value knows where it is in the text") {
        JsonValue value;
        TextBuffer text;
        text.append(R"({"colours":)");
        REQUIRE(read_cell(R"( [1, ["a"]] )", field_named("colours"), in_cm, value, text));
        const std::string json(text.view());
        REQUIRE(value.items.size() == 2);
        CHECK(json.substr(value.items[1].begin, value.items[1].end - value.items[1].begin) == R"(["a"])");
        CHECK(json.substr(value.begin, value.end - value.begin) == R"([1, ["a"]])");
    }
}

TEST_CASE("values are written as people write them where that reads back", "[catalogue]") {
    CHECK(cell_of("saddle_lowest", "49.5") == "49.5");
    CHECK(cell_of("saddle_lowest", "49.5", ',') == "49,5");
    CHECK(cell_of("mass_kg", "6.40", ',') == "6,40");
    CHECK(cell_of("saddle_lowest", "4.95e1", ',') == "4.95e1");
    CHECK(cell_of("saddle_lowest", R"("19 1/2 in")") == "19 1/2 in");
    CHECK(cell_of("available", "true") == "yes");
    CHECK(cell_of("brakes", R"(["front hand","rear hand"])") == "front hand, rear hand");
    CHECK(cell_of("brakes", "[]") == "none");
    CHECK(cell_of("wheel", R"("47-305")") == "47-305");
    CHECK(cell_of("id", "7") == "7");
    SECTION("and as JSON elsewhere") {
        CHECK(cell_of("saddle_lowest", R"("49.5")") == R"("49.5")");
        CHECK(cell_of("id", R"("7")") == R"("7")");
        CHECK(cell_of("colours", "[]") == "[]");
        CHECK(cell_of("colours", R"(["red, or so"])") == R"(["red, or so"])");
        CHECK(cell_of("name", "7") == "json:7");
        CHECK(cell_of("helmet", R"("true")") == R"("true")");
    }
}

TEST_CASE("every JSON value comes through a cell of every field unchanged", "[catalogue]") {
    const std::vector<std::string> values{"null",
                                          "true",
                                          "false",
                                          "0",
                                          "-0",
                                          "7",
                                          "49.5",
                                          "49.50",
                                          "-3",
                                          "1e3",
                                          "1.200",
                                          "12345678901234567890.5",
                                          R"("")",
                                          R"(" ")",
                                          R"("a")",
                                          R"(" a ")",
                                          R"("7")",
                                          R"("07")",
                                          R"("49.5")",
                                          R"("49,5")",
                                          R"("1,200")",
                                          R"("true")",
                                          R"("yes")",
                                          R"("none")",
                                          R"("None")",
                                          R"("null")",
                                          R"("[]")",
                                          R"("{}")",
                                          R"("\"a\"")",
                                          R"("json:7")",
                                          R"("json:")",
                                          R"("EUR 120")",
                                          R"("6.4 kg")",
                                          R"("14 lb")",
                                          R"("70°")",
                                          R"("=1+1")",
                                          R"("'=1")",
                                          R"("-5")",
                                          R"("a,b;c\td\r\ne")",
                                          R"("\u0000")",
                                          R"("\u00a0a")",
                                          R"("🚲 ‏אופניים‏")",
                                          R"("Pedal")",
                                          R"("front hand")",
                                          "[]",
                                          "{}",
                                          R"([""])",
                                          R"(["a"])",
                                          R"(["a","b"])",
                                          R"(["a, b"])",
                                          R"(["Front Hand"])",
                                          R"(["front hand"])",
                                          R"(["none"])",
                                          "[1]",
                                          R"([["a"]])",
                                          R"({"a":{"b":[null]}})",
                                          R"({"":""})"};
    for (const CatalogueField& field : catalogue_fields()) {
        for (const std::string& value : values) {
            check_survives(field.name, value);
            check_survives(field.name, value, CellContext());
        }
    }
    for (const std::string& value : values) {
        check_survives("helmet", value);
        check_survives("", value);
    }
}

TEST_CASE("any short text comes through a cell of every field unchanged", "[catalogue]") {
    testing::RepeatableRandom random(41);
    const std::vector<std::string> pieces{
        "a", "7",  ",", ".", "-",  " ",  "\\\"",         "[",   "]",    "{",
        "}", "'",  "=", "/", "in", "kg", "\xE2\x82\xAC", "\\n", "\\\\", "json:",
        "1", "EUR"};
    for (int round = 0; round < 4000; ++round) {
        std::string json = "\"";
        for (int length = 1 + round % 6; length > 0; --length)
            json += pieces[static_cast<std::size_t>(random.uniform(0.0, static_cast<double>(pieces.size())))];
        json += '"';
        for (const CatalogueField& field : catalogue_fields())
            check_survives(field.name, json);
        check_survives("helmet", json);
    }
}
