// One entry of a list, from JSON to a bike.
#include "core/lists/catalogue/bike_reader.h"

#include "core/lists/catalogue/json_places.h"
#include "tests/domain_checkers.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

/// As a list hands its entries over: their texts are not limited yet.
JsonValue entry_of(std::string_view json) {
    auto value = read_json(json, {.depth = 32, .text_length = json.size(), .values = 1000});
    REQUIRE(value.ok());
    return std::move(value).value();
}

Result<Bike> read_in(std::string_view json, std::optional<LengthUnit> units,
                     std::optional<Currency> currency = Currency::from_code("EUR")) {
    const JsonValue entry = entry_of(json);
    JsonPlaces places(json);
    return read_bike(
        entry,
        {.text = json, .units = units, .currency = currency, .places = &places, .origin = entry.begin});
}

Bike bike_of(std::string_view json, std::optional<LengthUnit> units = LengthUnit::centimetre) {
    CAPTURE(json.substr(0, 200));
    auto bike = read_in(json, units);
    if (!bike)
        FAIL(sentence(bike.problem()));
    return std::move(bike).value();
}

Problem problem_of(std::string_view json, std::optional<LengthUnit> units = LengthUnit::centimetre) {
    CAPTURE(json.substr(0, 200));
    const auto bike = read_in(json, units);
    REQUIRE_FALSE(bike.ok());
    return bike.problem();
}

/// A usable bike with one more field.
std::string bike_with(std::string_view member) {
    return R"({"id":"A","saddle_highest":100,)" + std::string(member) + '}';
}

struct Refused {
    std::string_view member;
    ProblemCode code;
    std::string_view sentence;
};

struct Edge {
    std::string_view field;
    std::string_view inside_low, outside_low, inside_high, outside_high;
};

} // namespace

TEST_CASE("a bike arrives with everything that its entry says", "[catalogue]") {
    const Bike bike = bike_of(R"({ "id": "L07", "name": "Loan 07, 16 in, two hand brakes", "kind": "pedal",
        "wheel": "47-305", "saddle_lowest": 49.5, "saddle_highest": 63, "standover": 41, "mass_kg": 6.4,
        "rider_mass_limit_kg": 35, "brakes": ["front hand", "rear hand", "coaster"], "lever_reach": 5.5, "gears": 1,
        "chainring": 32, "sprocket": 16, "crank": 10.2, "bottom_bracket_height": 21.5, "seat_tube_angle_deg": 70,
        "price": 120.5, "colours": ["green", "white"], "condition": "used", "available": true,
        "notes": "bell missing" })");
    CHECK(bike.id == "L07");
    CHECK(bike.name == "Loan 07, 16 in, two hand brakes");
    CHECK(bike.kind == BikeKind::pedal);
    REQUIRE(bike.wheel.has_value());
    CHECK(bike.wheel->nominal_inches() == 16.0);
    check_length(*bike.saddle_lowest, 495_mm);
    check_length(*bike.saddle_highest, 630_mm);
    check_length(*bike.standover, 410_mm);
    check_length(*bike.lever_reach, 55_mm);
    check_length(*bike.crank, 102_mm);
    check_length(*bike.bottom_bracket_height, 215_mm);
    CHECK(bike.seat_tube_angle_degrees == 70.0);
    CHECK(bike.mass == Mass::kilograms(6.4));
    CHECK(bike.rider_mass_limit == Mass::kilograms(35.0));
    CHECK(bike.brakes == std::vector<Brake>{Brake::front_hand, Brake::rear_hand, Brake::coaster});
    CHECK(bike.gears == 1);
    CHECK(bike.chainring == 32);
    CHECK(bike.sprocket == 16);
    CHECK(bike.price == Money::amount(120.5, *Currency::from_code("EUR")));
    CHECK(bike.colours == std::vector<std::string>{"green", "white"});
    CHECK(bike.condition == "used");
    CHECK(bike.available == true);
    CHECK(bike.notes == "bell missing");
    CHECK(bike.unknown_fields.empty());
}

TEST_CASE("an id or a name, and one of the two saddle heights, are all that is needed", "[catalogue]") {
    CHECK(bike_of(R"({"id":"A","saddle_lowest":50})").id == "A");
    CHECK(bike_of(R"({"name":"The green one","saddle_highest":63})").name == "The green one");

    CHECK(problem_of(R"({"saddle_lowest":50})").code == ProblemCode::bike_without_name);
    CHECK(problem_of(R"({"id":" ","name":"\t","saddle_lowest":50})").code == ProblemCode::bike_without_name);
    CHECK(problem_of(R"({"id":"A"})").code == ProblemCode::bike_without_saddle);
    CHECK(problem_of(R"({"id":"A","standover":41})").code == ProblemCode::bike_without_saddle);
}

TEST_CASE("what is not measured stays absent, and null says the same", "[catalogue]") {
    const std::string_view json = GENERATE(
        R"({"id":"A","saddle_lowest":50})",
        R"({"id":"A","name":null,"kind":null,"wheel":null,"saddle_lowest":50,"saddle_highest":null,"standover":null,
            "mass_kg":null,"rider_mass_limit_kg":null,"brakes":null,"lever_reach":null,"gears":null,"chainring":null,
            "sprocket":null,"crank":null,"bottom_bracket_height":null,"seat_tube_angle_deg":null,"price":null,
            "colours":null,"condition":null,"available":null,"notes":null})");
    const Bike bike = bike_of(json);
    CHECK(bike.kind == BikeKind::pedal);
    CHECK_FALSE(bike.wheel.has_value());
    CHECK_FALSE(bike.saddle_highest.has_value());
    CHECK_FALSE(bike.standover.has_value());
    CHECK_FALSE(bike.mass.has_value());
    CHECK_FALSE(bike.rider_mass_limit.has_value());
    CHECK_FALSE(bike.brakes.has_value());
    CHECK_FALSE(bike.lever_reach.has_value());
    CHECK_FALSE(bike.gears.has_value());
    CHECK_FALSE(bike.crank.has_value());
    CHECK_FALSE(bike.seat_tube_angle_degrees.has_value());
    CHECK_FALSE(bike.price.has_value());
    CHECK_FALSE(bike.available.has_value());
    CHECK(bike.colours.empty());
    CHECK(bike.unknown_fields.empty());
}

TEST_CASE("a list of no brakes is known to be none", "[catalogue]") {
    const Bike bike = bike_of(bike_with(R"("kind":"balance","brakes":[])"));
    CHECK(bike.kind == BikeKind::balance);
    REQUIRE(bike.brakes.has_value());
    CHECK(bike.brakes->empty());
}

TEST_CASE("bare numbers count in the list's unit, and a length may bring its own", "[catalogue]") {
    const std::string_view json =
        R"({"id":"A","saddle_lowest":19.5,"saddle_highest":"24 1/2","standover":"41 cm","crank":"102 mm"})";
    const Bike bike = bike_of(json, LengthUnit::inch);
    // The international inch: 25.4 mm exactly (international yard and pound agreement, 1959).
    check_length(*bike.saddle_lowest, 495.3_mm);
    check_length(*bike.saddle_highest, 622.3_mm);
    check_length(*bike.standover, 410_mm);
    check_length(*bike.crank, 102_mm);
    check_length(*bike_of(R"({"id":"A","saddle_lowest":495})", LengthUnit::millimetre).saddle_lowest, 495_mm);
}

TEST_CASE("without a unit of the list every length needs its own", "[catalogue]") {
    check_length(*bike_of(R"({"id":"A","saddle_lowest":"19 1/2 in"})", std::nullopt).saddle_lowest, 495.3_mm);
    const std::string_view json =
        GENERATE(R"({"id":"A","saddle_lowest":49.5})", R"({"id":"A","saddle_lowest":"49.5"})",
                 R"({"id":"A","saddle_lowest":"19 1/2"})");
    const Problem problem = problem_of(json, std::nullopt);
    CHECK(code_name(problem.code) == code_name(ProblemCode::bike_figure_without_unit));
    CHECK(problem.where == "saddle_lowest");
}

TEST_CASE("an entry that cannot be used says what, where and why", "[catalogue]") {
    using enum ProblemCode;
    const auto refused = GENERATE(values<Refused>({
        {R"("saddle_lowest":true)", bike_field_wrong_type, "saddle_lowest: this is true"},
        {R"("saddle_lowest":[49.5])", bike_field_wrong_type, "saddle_lowest: this is a list"},
        {R"("saddle_lowest":{})", bike_field_wrong_type, "saddle_lowest: this is a group of fields"},
        {R"("saddle_lowest":14.9)", bike_figure_out_of_range, "saddle_lowest: 14.9 cm is out of range"},
        {R"("saddle_lowest":1e308)", bike_figure_out_of_range, "saddle_lowest: 1e308 cm is out of range"},
        {R"("saddle_lowest":-49.50)", bike_figure_out_of_range, "saddle_lowest: -49.50 cm is out of range"},
        {R"("saddle_lowest":"5 in")", bike_figure_out_of_range, "saddle_lowest: 5 in is out of range"},
        {R"("saddle_lowest":"forty")", figure_not_a_number, "\"forty\" is not a number"},
        {R"("saddle_lowest":"40 ells")", figure_unit_unknown, "\"ells\" is not a known unit"},
        {R"("saddle_lowest":101)", bike_highest_below_lowest,
         "saddle_highest: 100 cm is below the lowest, 101 cm"},
        {R"("saddle_lowest":"39.8 in")", bike_highest_below_lowest,
         "saddle_highest: 100 cm is below the lowest, 101.09 cm"},
        {R"("mass_kg":"6.4")", bike_field_wrong_type, "mass_kg: this is a text"},
        {R"("mass_kg":0)", bike_figure_out_of_range, "mass_kg: 0 kg is out of range"},
        {R"("gears":6.5)", bike_figure_not_whole, "gears: 6.5 is not a whole number"},
        {R"("gears":1e300)", bike_figure_out_of_range, "gears: 1e300 is out of range"},
        {R"("seat_tube_angle_deg":91)", bike_figure_out_of_range,
         "seat_tube_angle_deg: 91 degrees is out of range"},
        {R"("price":-1)", bike_figure_out_of_range, "price: -1 is out of range"},
        {R"("price":"120 EUR")", bike_figure_unreadable, "price: \"120 EUR\" is not a number"},
        {R"("kind":"trike")", bike_value_unknown, "kind: \"trike\" is not known"},
        {R"("kind":1)", bike_field_wrong_type, "kind: this is a number"},
        {R"("wheel":"17")", bike_value_unknown, "wheel: \"17\" is not known"},
        {R"("wheel":17)", bike_value_unknown, "wheel: \"17\" is not known"},
        {R"("wheel":false)", bike_field_wrong_type, "wheel: this is false"},
        {R"("brakes":"coaster")", bike_field_wrong_type, "brakes: this is a text"},
        {R"("brakes":["coaster",null])", bike_field_wrong_type, "brakes: this is null"},
        {R"("brakes":["foot"])", bike_value_unknown, "brakes: \"foot\" is not known"},
        {R"("available":1)", bike_field_wrong_type, "available: this is a number"},
        {R"("colours":"green")", bike_field_wrong_type, "colours: this is a text"},
        {R"("colours":[[]])", bike_field_wrong_type, "colours: this is a list"},
        {R"("notes":7)", bike_field_wrong_type, "notes: this is a number"},
        {R"("name":true)", bike_field_wrong_type, "name: this is true"},
        {R"("id":"B")", bike_field_twice, "id: the field is given a second time"},
        {R"("frame":1,"frame":2)", bike_field_twice, "frame: the field is given a second time"},
        {R"("notes":null,"notes":"x")", bike_field_twice, "notes: the field is given a second time"},
    }));
    const std::string json = bike_with(refused.member);
    CAPTURE(json);
    Problem problem = problem_of(json);
    REQUIRE(problem.position.has_value());
    problem.position.reset();
    CHECK(code_name(problem.code) == code_name(refused.code));
    CHECK(sentence(problem) == refused.sentence);
    CHECK_FALSE(expected(problem).empty());
}

TEST_CASE("the position is that of the offending value and the path leads to it", "[catalogue]") {
    const Problem figure = problem_of("{ \"id\": \"gr\xC3\xBCn\",\n  \"saddle_lowest\": 5 }");
    CHECK(figure.position == TextPosition{2, 20});
    CHECK(figure.where == "saddle_lowest");
    // One saddle height alone carries no bike whose other cells cannot be read.
    const Problem item =
        problem_of("{ \"id\": \"A\", \"saddle_lowest\": 50, \"brakes\": [\"coaster\",\n \"foot\"] }");
    CHECK(item.position == TextPosition{2, 2});
    CHECK(item.where == "brakes[1]");
    const Problem twice = problem_of("{ \"id\": \"A\",\n \"id\": \"B\" }");
    CHECK(twice.position == TextPosition{2, 2});
    const Problem whole = problem_of(" { \"id\": \"A\" }");
    CHECK(whole.position == TextPosition{1, 2});
    CHECK(whole.where.empty());
}

TEST_CASE("a bike in a request has a path and no position", "[catalogue]") {
    const std::string_view json = R"({"id":"A","saddle_lowest":5})";
    const auto bike = read_bike(entry_of(json), {.text = json,
                                                 .units = LengthUnit::centimetre,
                                                 .currency = std::nullopt,
                                                 .places = nullptr,
                                                 .origin = no_origin});
    REQUIRE_FALSE(bike.ok());
    CHECK_FALSE(bike.problem().position.has_value());
    CHECK(bike.problem().where == "saddle_lowest");
    CHECK(expected(bike.problem()) == "15 cm to 130 cm");
}

TEST_CASE("the ends of a field's range are in it", "[catalogue]") {
    const auto edge = GENERATE(values<Edge>({
        {"saddle_lowest", "15", "14.99", "100", "130.01"},
        {"saddle_highest", "15", "14.99", "130", "130.01"},
        {"standover", "10", "9.99", "110", "110.01"},
        {"lever_reach", "2", "1.99", "15", "15.01"},
        {"crank", "4", "3.99", "25", "25.01"},
        {"bottom_bracket_height", "8", "7.99", "45", "45.01"},
        {"mass_kg", "0.5", "0.49", "60", "60.01"},
        {"rider_mass_limit_kg", "5", "4.99", "300", "300.01"},
        {"gears", "0", "-1", "40", "41"},
        {"chainring", "8", "7", "80", "81"},
        {"sprocket", "6", "5", "80", "81"},
        {"seat_tube_angle_deg", "45", "44.9", "90", "90.1"},
        {"price", "0", "-0.01", "1000000000", "1000000001"},
    }));
    const auto with = [&](std::string_view figure) {
        const std::string rest = edge.field == "saddle_highest" ? "" : R"("saddle_highest":100,)";
        return R"({"id":"A",)" + rest + '"' + std::string(edge.field) + "\":" + std::string(figure) + '}';
    };
    bike_of(with(edge.inside_low));
    bike_of(with(edge.inside_high));
    CHECK(problem_of(with(edge.outside_low)).code == ProblemCode::bike_figure_out_of_range);
    CHECK(problem_of(with(edge.outside_high)).code == ProblemCode::bike_figure_out_of_range);
}

TEST_CASE("what is no bike at all is refused by what it is", "[catalogue]") {
    for (const std::string_view json : {"null", "7", "\"L07\"", "[]", "true"}) {
        CAPTURE(json);
        CHECK(problem_of(json).code == ProblemCode::bike_not_a_group);
    }
}

TEST_CASE("a whole number does for an id", "[catalogue]") {
    CHECK(bike_of(R"({"id":7,"saddle_lowest":50})").id == "7");
    CHECK(bike_of(R"({"id":12.0,"saddle_lowest":50})").id == "12");
    CHECK(bike_of(R"({"id":" L07 ","saddle_lowest":50})").id == "L07");
    CHECK(problem_of(R"({"id":7.5,"saddle_lowest":50})").code == ProblemCode::bike_field_wrong_type);
    CHECK(problem_of(R"({"id":-7,"saddle_lowest":50})").code == ProblemCode::bike_field_wrong_type);
    CHECK(problem_of(R"({"id":1e300,"saddle_lowest":50})").code == ProblemCode::bike_field_wrong_type);
}

TEST_CASE("a wheel may be a number of inches", "[catalogue]") {
    CHECK(bike_of(bike_with(R"("wheel":16)")).wheel->nominal_inches() == 16.0);
    CHECK(bike_of(bike_with(R"("wheel":27.5)")).wheel->nominal_inches() == 27.5);
}

TEST_CASE("fields that are not known are kept as they are", "[catalogue]") {
    const Bike bike = bike_of(bike_with(R"("frame": { "lugs" : [1,  2.50] },"Price":"\u00fc","x":null)"));
    CHECK(bike.unknown_fields == std::vector<UnknownField>{{"frame", R"({ "lugs" : [1,  2.50] })"},
                                                           {"Price", R"("\u00fc")"},
                                                           {"x", "null"}});
}

TEST_CASE("a price without a currency is no money, and is kept", "[catalogue]") {
    const auto bike = read_in(bike_with(R"("price":120)"), LengthUnit::centimetre, std::nullopt);
    REQUIRE(bike.ok());
    CHECK_FALSE(bike->price.has_value());
    CHECK(bike->unknown_fields == std::vector<UnknownField>{{"price", "120"}});
}

TEST_CASE("a text may have 2,000 characters, however many bytes they take, and not one more", "[catalogue]") {
    std::string bikes;
    for (int i = 0; i < 2000; ++i)
        bikes += "\xF0\x9F\x9A\xB2";
    CHECK(bike_of(bike_with("\"notes\":\"" + bikes + '"')).notes == bikes);
    const auto member = GENERATE(as<std::string>(), R"("notes":"@x")", R"("colours":["green","@x"])",
                                 R"("frame":{"a":[{"b":"@x"}]})", R"("frame":{"@x":1})", R"("@x":1)");
    std::string json = bike_with(member);
    json.replace(json.find('@'), 1, bikes);
    const Problem problem = problem_of(json);
    CHECK(code_name(problem.code) == code_name(ProblemCode::bike_text_too_long));
    CHECK(sentence(problem).find("has 2001 characters") != std::string::npos);
}

TEST_CASE("a bike may have 100 fields and not one more", "[catalogue]") {
    std::string json = R"({"id":"A","saddle_lowest":50)";
    for (int i = 0; i < 98; ++i)
        json += ",\"x" + std::to_string(i) + "\":0";
    CHECK(bike_of(json + '}').unknown_fields.size() == 98);
    CHECK(problem_of(json + ",\"y\":0}").code == ProblemCode::bike_too_many_fields);
}

TEST_CASE("an entry is set aside whole, with the id and name that can be read", "[catalogue]") {
    const std::string_view json = R"( { "id": 7, "name": " Green ", "saddle_lowest": "low" })";
    const SetAside aside = set_aside_entry(entry_of(json), 3, Problem(), json);
    CHECK(aside.number == 3);
    CHECK(aside.id == "7");
    CHECK(aside.name == "Green");
    CHECK(aside.source == json.substr(1));
    CHECK(set_aside_entry(entry_of("[7]"), 1, Problem(), "[7]").source == "[7]");
}
