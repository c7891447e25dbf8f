// Lists in JSON: what loads, what is set aside, what is noted and what is refused as a whole.
#include "core/lists/catalogue/json_catalogue_reader.h"

#include "tests/domain_checkers.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>
#include <vector>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

Catalogue list_of(std::string_view json) {
    auto list = read_json_catalogue(json);
    if (!list)
        FAIL(sentence(list.problem()));
    return std::move(list.value().catalogue);
}

Problem refusal_of(std::string_view json) {
    const auto list = read_json_catalogue(json);
    REQUIRE_FALSE(list.ok());
    return list.problem();
}

std::vector<std::string> ids_of(const Catalogue& list) {
    std::vector<std::string> ids;
    for (const Bike& bike : list.bikes)
        ids.push_back(bike.id);
    return ids;
}

/// A list of `count` bikes that say as little as they can.
std::string list_with(std::size_t count) {
    std::string json = R"({"units":"cm","bikes":[)";
    for (std::size_t i = 0; i < count; ++i)
        json += (i == 0 ? "{\"id\":" : ",{\"id\":") + std::to_string(i) + ",\"saddle_lowest\":50}";
    return json + "]}";
}

struct Refused {
    std::string_view json;
    ProblemCode code;
    std::string_view sentence;
};

using Ids = std::vector<std::string>;

} // namespace

TEST_CASE("a list of which nothing can be used, or that has no bike, is opened to be mended", "[catalogue]") {
    const auto text = GENERATE(values<std::string>({R"({"bikes":[{"id":"A"}]})", R"({"bikes":[]})"}));
    CAPTURE(text);
    CHECK_FALSE(read_json_catalogue(text).ok());
    const auto list = read_json_catalogue(text, nullptr, {.to_mend = true});
    REQUIRE(list.ok());
    CHECK(list->catalogue.bikes.empty());
    CHECK(list->entries.size() == list->catalogue.set_aside.size());
}

TEST_CASE("a list arrives with what it says of itself", "[catalogue]") {
    const Catalogue list = list_of(R"({"format":"saddlerule-catalogue","version":1,"title":"Loan shed",
        "measured_on":"2026-10-03","units":"in","currency":"GBP","bikes":[{"id":"A","saddle_lowest":19.5,"price":90}]})");
    CHECK(list.title == "Loan shed");
    CHECK(list.measured_on == date("2026-10-03"));
    CHECK(list.units == LengthUnit::inch);
    REQUIRE(list.currency.has_value());
    CHECK(list.currency->code() == "GBP");
    REQUIRE(list.bikes.size() == 1);
    check_length(*list.bikes[0].saddle_lowest, 495.3_mm);
    CHECK(list.bikes[0].price->currency().code() == "GBP");
    CHECK(list.set_aside.empty());
    CHECK(list.notes.empty());
    CHECK(list.unknown_fields.empty());
}

TEST_CASE("only the bikes are needed where every length has its unit", "[catalogue]") {
    const Catalogue list = list_of(R"({"bikes":[{"id":"A","saddle_lowest":"19 1/2 in"}]})");
    check_length(*list.bikes[0].saddle_lowest, 495.3_mm);
    CHECK(list.units == LengthUnit::centimetre);
    CHECK(
        list_of(R"({"format":null,"version":null,"title":null,"measured_on":null,"units":null,"currency":null,
        "bikes":[{"id":"A","saddle_lowest":"50 cm"}]})")
            .notes.empty());
}

TEST_CASE("units and currency count for all bikes, wherever in the file they are", "[catalogue]") {
    const Catalogue list = list_of(
        R"({"bikes":[{"id":"A","saddle_lowest":19.5,"price":90},{"id":"B","x":0,"saddle_lowest":"low"}],"currency":"GBP","units":"in"})");
    REQUIRE(list.bikes.size() == 1);
    check_length(*list.bikes[0].saddle_lowest, 495.3_mm);
    CHECK(list.bikes[0].price.has_value());
    CHECK(list.set_aside.size() == 1);
    CHECK(list.notes.empty());
}

TEST_CASE("bikes that cannot be used are set aside and the rest loads", "[catalogue]") {
    const std::string_view json =
        "{\"units\":\"cm\",\"bikes\":[\n"
        "{\"id\":\"A\",\"saddle_lowest\":50},\n"
        "{\"id\":\"B\",\"name\":\"Green\",\"saddle_lowest\":49.5,\"saddle_highest\":36},\n"
        "7,\n"
        "{\"id\":\"D\",\"saddle_lowest\":58}]}";
    const Catalogue list = list_of(json);
    CHECK(ids_of(list) == Ids{"A", "D"});
    REQUIRE(list.set_aside.size() == 2);
    const SetAside& green = list.set_aside[0];
    CHECK(green.number == 2);
    CHECK(green.id == "B");
    CHECK(green.name == "Green");
    CHECK(green.source == R"({"id":"B","name":"Green","saddle_lowest":49.5,"saddle_highest":36})");
    CHECK(green.problem.where == "bikes[1].saddle_highest");
    CHECK(sentence(green.problem) == "line 3, column 64: saddle_highest: 36 cm is below the lowest, 49.5 cm");
    CHECK(list.set_aside[1].number == 3);
    CHECK(list.set_aside[1].source == "7");
}

TEST_CASE("of two bikes with one id the later is set aside, naming the line of the first", "[catalogue]") {
    const std::string_view json = "{\"units\":\"cm\",\"bikes\":[\n"
                                  "{\"id\":\"B\",\"saddle_lowest\":\"low\"},\n"
                                  "{\"id\":\"A\",\"saddle_lowest\":50},\n"
                                  "{\"id\":\"B\",\"saddle_lowest\":51},\n"
                                  "{\"saddle_lowest\":52,\"id\":\"A\"},\n"
                                  "{\"id\":\"a\",\"saddle_lowest\":53},\n"
                                  "{\"id\":\" A\",\"saddle_lowest\":54}]}";
    const Catalogue list = list_of(json);
    CHECK(ids_of(list) == Ids{"A", "B", "a"});
    REQUIRE(list.set_aside.size() == 3);
    CHECK(list.set_aside[0].number == 1);
    CHECK(sentence(list.set_aside[1].problem) ==
          "line 5, column 26: the bike on line 3 already has the id \"A\"");
    CHECK(list.set_aside[1].problem.where == "bikes[3].id");
    CHECK(list.set_aside[1].source == R"({"saddle_lowest":52,"id":"A"})");
    CHECK(list.set_aside[2].number == 6);
}

TEST_CASE("bikes without an id go by their names, which clash with nothing", "[catalogue]") {
    const Catalogue list = list_of(R"({"units":"cm","bikes":[{"name":"Green","saddle_lowest":50},
        {"name":"Green","saddle_lowest":51},{"id":"Green","saddle_lowest":52}]})");
    CHECK(ids_of(list) == Ids{"Green (2)", "Green (3)", "Green"});
    CHECK(list.set_aside.empty());
}

TEST_CASE("a field that is not known is noted once, with its first place and how often", "[catalogue]") {
    const Catalogue list = list_of("{\"units\":\"cm\",\"hall\":1,\"bikes\":[\n"
                                   "{\"id\":\"A\",\"saddle_lowest\":50,\"colors\":[]},\n"
                                   "{\"id\":\"B\",\"saddle_lowest\":50,\"frame\":1,\"colors\":[]},\n"
                                   "{\"id\":\"C\",\"saddle_lowest\":50,\"colors\":[]}]}");
    REQUIRE(list.notes.size() == 3);
    CHECK(sentence(list.notes[0]) ==
          "line 1, column 15: the field \"hall\" is not known; it is kept as it is (once)");
    CHECK(sentence(list.notes[1]) ==
          "line 2, column 30: the field \"colors\" is not known; it is kept as it is (3 times)");
    CHECK(expected(list.notes[1]) == "perhaps \"colours\"");
    CHECK(list.notes[1].where == "bikes[0].colors");
    CHECK(list.notes[2].where == "bikes[1].frame");
    CHECK(list.unknown_fields == std::vector<UnknownField>{{"hall", "1"}});
    CHECK(list.bikes[1].unknown_fields == std::vector<UnknownField>{{"frame", "1"}, {"colors", "[]"}});
}

TEST_CASE("very many unknown fields are told in one note", "[catalogue]") {
    std::string json = R"({"units":"cm","bikes":[{"id":"A","saddle_lowest":50)";
    for (int i = 0; i < 90; ++i)
        json += ",\"extra" + std::to_string(i) + "\":0";
    const Catalogue list = list_of(json + "}]}");
    CHECK(list.notes.size() == 51);
    CHECK(sentence(list.notes.back()) == "further fields (40) are not known; they are kept as they are");
}

TEST_CASE("prices without a currency are noted once and kept", "[catalogue]") {
    const Catalogue list = list_of(
        R"({"units":"cm","bikes":[{"id":"A","saddle_lowest":50,"price":9},{"id":"B","saddle_lowest":50,"price":8}]})");
    REQUIRE(list.notes.size() == 1);
    CHECK(list.notes[0].code == ProblemCode::list_price_without_currency);
    CHECK(sentence(list.notes[0]) == "line 1, column 53: a price without a currency is not used (2 times)");
    CHECK_FALSE(list.bikes[0].price.has_value());
    CHECK(list.bikes[0].unknown_fields == std::vector<UnknownField>{{"price", "9"}});
}

TEST_CASE("a cell that cannot be read is left open with a note where both saddle heights were measured",
          "[catalogue]") {
    const Catalogue list = list_of(
        R"({"units":"cm","currency":"EUR","bikes":[)"
        R"({"id":"A","saddle_lowest":50,"saddle_highest":63,"wheel":"seventeen","price":"120,-","gears":"3x7"},)"
        R"({"id":"B","saddle_lowest":50,"saddle_highest":63,"wheel":"eighteen","standover":"low","brakes":["foot"]},)"
        R"({"id":"C","saddle_lowest":50,"wheel":"seventeen"},)"
        R"({"id":"D","saddle_lowest":50,"saddle_highest":63,"kind":"trike"}]})");
    REQUIRE(list.bikes.size() == 2);
    CHECK_FALSE(list.bikes[0].wheel);
    CHECK_FALSE(list.bikes[0].price);
    CHECK_FALSE(list.bikes[0].gears);
    CHECK_FALSE(list.bikes[1].standover);
    CHECK_FALSE(list.bikes[1].brakes);
    CHECK(list.bikes[0].unknown_fields.front() == UnknownField{"wheel", "\"seventeen\""});
    REQUIRE(list.notes.size() == 5);
    for (const Problem& note : list.notes)
        CHECK(code_name(note.code) == "list_cell_not_read");
    CHECK(list.notes[0].where == "bikes[0].wheel");
    CHECK(sentence(list.notes[0]).find("\"seventeen\" for wheel cannot be read (2 times)") !=
          std::string::npos);
    // What a bike is, and a saddle that was measured half, are not left open.
    REQUIRE(list.set_aside.size() == 2);
    CHECK(list.set_aside[0].problem.where == "bikes[2].wheel");
    CHECK(list.set_aside[1].problem.where == "bikes[3].kind");
}

TEST_CASE("a title, day or currency that cannot be read costs no bike and is kept", "[catalogue]") {
    const Catalogue list = list_of(
        R"({"title":["a"],"measured_on":"2026-02-30","currency":"eur","units":"cm","bikes":[{"id":"A","saddle_lowest":50}]})");
    CHECK(list.bikes.size() == 1);
    REQUIRE(list.notes.size() == 3);
    CHECK(list.notes[0].code == ProblemCode::file_field_wrong_type);
    CHECK(list.notes[1].code == ProblemCode::file_date_malformed);
    CHECK(list.notes[2].code == ProblemCode::file_currency_malformed);
    CHECK(list.unknown_fields == std::vector<UnknownField>{{"title", "[\"a\"]"},
                                                           {"measured_on", "\"2026-02-30\""},
                                                           {"currency", "\"eur\""}});
}

TEST_CASE("a file that is no list as a whole is refused with its cause", "[catalogue]") {
    using enum ProblemCode;
    const auto refused = GENERATE(values<Refused>({
        {"[1]", file_not_an_object, "line 1, column 1: the file has a list, and no field \"bikes\""},
        {" 7", file_not_an_object, "line 1, column 2: the file has a number, and no field \"bikes\""},
        {"{}", file_without_bikes, "line 1, column 1: there is no field \"bikes\""},
        {R"({"bikes":null})", file_field_wrong_type, "line 1, column 10: bikes: this is null"},
        {R"({"bikes":[]})", file_bikes_empty, "line 1, column 10: the list of bikes is empty"},
        {R"({"format":"x","bikes":[]})", file_format_unknown,
         "line 1, column 11: the format is called \"x\""},
        {R"({"format":1,"bikes":[]})", file_field_wrong_type, "line 1, column 11: format: this is a number"},
        {R"({"bikes":7,"version":2})", file_version_too_new,
         "line 1, column 22: the list needs a reader for version 2; this one reads version 1"},
        {R"({"version":1.5})", file_version_too_new,
         "line 1, column 12: the list needs a reader for version 1.5; this one reads version 1"},
        {R"({"version":-1})", file_value_unknown, "line 1, column 12: version: \"-1\" is not known"},
        {R"({"units":"m","bikes":[]})", file_value_unknown, "line 1, column 10: units: \"m\" is not known"},
        {R"({"units":2.54,"bikes":[]})", file_field_wrong_type, "line 1, column 10: units: this is a number"},
        {R"({"title":"a","title":"b"})", file_field_twice,
         "line 1, column 14: the field \"title\" is given a second time"},
        {R"({"bikes":[{"id":"A","saddle_lowest":"50 cm"}],"bikes":[]})", file_field_twice,
         "line 1, column 47: the field \"bikes\" is given a second time"},
        {R"({"units":"cm","bikes":[{"id":"A"},7]})", file_no_usable_bike,
         "line 1, column 24: no bike in the file can be used (2 left out); the first: the bike has neither "
         "\"saddle_lowest\" nor \"saddle_highest\""},
        {R"({"bikes":[{"id":"A","saddle_lowest":50},)", json_cut_off,
         "line 1, column 41: the text stops in the middle: 2 brackets are still open"},
    }));
    CAPTURE(refused.json);
    const Problem problem = refusal_of(refused.json);
    CHECK(code_name(problem.code) == code_name(refused.code));
    CHECK(sentence(problem) == refused.sentence);
}

TEST_CASE("what was set aside in a file of which nothing can be used is handed over", "[catalogue]") {
    std::vector<SetAside> refused;
    CHECK_FALSE(read_json_catalogue(R"({"units":"cm","bikes":[{"id":"A"},7]})", &refused).ok());
    REQUIRE(refused.size() == 2);
    CHECK(refused[0].id == "A");
    CHECK(refused[1].source == "7");
}

TEST_CASE("20,000 bikes load and one more is refused, saying both counts", "[catalogue]") {
    CHECK(list_of(list_with(20'000)).bikes.size() == 20'000);
    const Problem problem = refusal_of(list_with(20'001));
    CHECK(code_name(problem.code) == code_name(ProblemCode::file_too_many_bikes));
    CHECK(problem.where == "bikes[20000]");
    CHECK(sentence(problem).ends_with("the list has 20001 bikes"));
    CHECK(expected(problem) == "20000 or fewer");
}

TEST_CASE("a file of more than 100 fields beside the bikes is refused", "[catalogue]") {
    std::string json = R"({"bikes":[])";
    for (int i = 0; i < 100; ++i)
        json += ",\"x" + std::to_string(i) + "\":0";
    CHECK(refusal_of(json + '}').code == ProblemCode::file_too_many_fields);
}

TEST_CASE("a bike that is one huge list, and a file that is, are refused and take no memory", "[catalogue]") {
    std::string numbers = "[0";
    for (int i = 0; i < 1'000'000; ++i)
        numbers += ",0";
    numbers += ']';
    CHECK(refusal_of("{\"bikes\":[" + numbers + "]}").code == ProblemCode::json_too_many_values);
    CHECK(refusal_of("{\"x\":" + numbers + '}').code == ProblemCode::json_too_many_values);
    CHECK(refusal_of(numbers).code == ProblemCode::file_not_an_object);
}
