// club_day and suits through the one door: what is answered, and what is refused with its place.
#include "core/exchange/engine.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <nlohmann/json.hpp>

#include <string>

using nlohmann::json;
using saddlerule::Engine;

// Catch2 takes JSON for a range of ranges without end.
template <>
struct Catch::StringMaker<json> {
    static std::string convert(const json& value) { return value.dump(); }
};

namespace {

const std::string shed = R"({
  "format": "saddlerule-catalogue", "version": 1, "title": "Loan shed", "units": "cm",
  "bikes": [
    {"id": "L01", "wheel": "12", "saddle_lowest": 43, "saddle_highest": 55},
    {"id": "L02", "wheel": "16", "saddle_lowest": 49.5, "saddle_highest": 63},
    {"id": "L03", "wheel": "16", "saddle_lowest": 52, "saddle_highest": 66, "available": false},
    {"id": "L04", "wheel": "20", "saddle_lowest": 60}
  ]
})";

json ask(Engine& engine, const json& question) {
    return json::parse(engine.answer(question.dump()));
}

json child(const char* id, int inseam_mm) {
    return {
        {"id", id},
        {"rider", {{"stage", "starting"}, {"readings", {{{"on", "2026-11-28"}, {"inseam_mm", inseam_mm}}}}}}};
}

json morning() {
    return {{"do", "club_day"}, {"today", "2026-11-28"}, {"riders", {child("1", 460), child("2", 520)}}};
}

struct Refused {
    const char* what;
    json change; ///< merged into a good request
    const char* where;
    const char* code;
};

void load(Engine& engine) {
    engine.answer(R"({"do":"load"})", shed);
}

} // namespace

TEST_CASE("a morning is planned on the list at hand", "[engine][club]") {
    Engine engine;
    load(engine);
    const json answer = ask(engine, morning());
    REQUIRE(answer["pairs"].size() == 2);
    CHECK(answer["pairs"][0]["rider"] == "1");
    CHECK(answer["pairs"][0]["bike"] == "L01");
    CHECK(answer["pairs"][0]["saddle_mm"] == 460.0);
    CHECK(answer["pairs"][0]["above_lowest_mm"] == 30.0);
    CHECK(answer["pairs"][0]["round"] == 1);
    CHECK(answer["pairs"][1]["bike"] == "L02");
    CHECK(answer["left"].empty());
    CHECK(answer["spare"] == json({"L03", "L04"}));
    CHECK(answer["would_fit"][0]["bike"] == "L03");
    CHECK(answer["would_fit"][0]["riders"] == json({"2"}));
    CHECK(answer["counts"]["seated"] == 2);
    CHECK(answer["riders"][1]["window_mm"]["target"] == 520.0);

    // The same chance as `assess` gives.
    const json assessed = ask(engine, {{"do", "assess"},
                                       {"today", "2026-11-28"},
                                       {"rider", morning()["riders"][0]["rider"]},
                                       {"only", {"L01"}}});
    CHECK(answer["pairs"][0]["fits_probability"] == assessed["bikes"][0]["fits_probability"]);
}

TEST_CASE("mornings with nothing in them are answered", "[engine][club]") {
    Engine engine;
    json question = morning();
    const json no_list = ask(engine, question);
    REQUIRE(no_list["left"].size() == 2);
    CHECK(no_list["left"][0]["code"] == "none_fits");
    CHECK(no_list["left"][0]["nearest"].is_null());
    CHECK(no_list["to_get"][0]["seats"].size() == 2);

    load(engine);
    question["riders"] = json::array();
    CHECK(ask(engine, question)["pairs"].empty());
    CHECK(ask(engine, question)["spare"].size() == 4);

    question = morning();
    question["absent"] = {"L01", "L02", "L03", "L04"};
    const json all_away = ask(engine, question);
    CHECK(all_away["pairs"].empty());
    CHECK(all_away["left"][0]["code"] == "away");

    question = morning();
    question["available_only"] = true;
    CHECK(ask(engine, question)["spare"] == json({"L04"}));
}

TEST_CASE("a rider of whom nothing is known, and one who rides nobody knows how", "[engine][club]") {
    Engine engine;
    load(engine);
    json question = morning();
    question["riders"] = {{{"id", "a"}},
                          {{"id", "b"}, {"rider", json::object()}},
                          {{"id", "c"}, {"rider", {{"stage", "riding"}}}},
                          {{"id", "d"}, {"rider", {{"stature_mm", 1100}}}}};
    const json answer = ask(engine, question);
    REQUIRE(answer["left"].size() == 3);
    for (const json& left : answer["left"])
        CHECK(left["code"] == "not_measured");
    CHECK(answer["riders"][3]["stage"] == "starting");
    CHECK(answer["riders"][3]["stage_assumed"] == true);
    CHECK(answer["riders"][3]["basis"] == "estimated_from_stature");
    CHECK(answer["riders"][0]["measured"] == false);
}

TEST_CASE("a morning that contradicts itself is refused with its place", "[engine][club]") {
    Engine engine;
    load(engine);
    const auto pair = [](const char* rider, const char* bike) {
        return json{{"rider", rider}, {"bike", bike}};
    };
    json in_round_one = pair("2", "L01");
    in_round_one["round"] = 1;
    json also_in_round_one = pair("1", "L01");
    also_in_round_one["round"] = 1;
    json in_round_three = pair("2", "L01");
    in_round_three["round"] = 3;
    const Refused cases[] = {
        {"no riders field", {{"riders", nullptr}}, "riders", "request_field_missing"},
        {"riders no list", {{"riders", 3}}, "riders", "request_field_wrong_type"},
        {"no id", {{"riders", {{{"rider", json::object()}}}}}, "riders[0].id", "request_field_missing"},
        {"the same number twice",
         {{"riders", {child("1", 460), child("2", 470), child("1", 480)}}},
         "riders[2].id",
         "club_rider_twice"},
        {"a figure that is none",
         {{"riders", {{{"id", "1"}, {"rider", {{"readings", {{{"on", "2026-11-28"}, {"inseam", "x4"}}}}}}}}}},
         "riders[0].rider.readings[0].inseam",
         "figure_not_a_number"},
        {"an absent bike that is not in the list",
         {{"absent", {"L01", "L99"}}},
         "absent[1]",
         "request_bike_unknown"},
        {"a pair of nobody", {{"locked", {pair("9", "L01")}}}, "locked[0].rider", "club_rider_unknown"},
        {"a pair of no bike", {{"not", {pair("1", "L99")}}}, "not[0].bike", "request_bike_unknown"},
        {"a rider fixed twice",
         {{"locked", {pair("1", "L01"), pair("1", "L02")}}},
         "locked[1].rider",
         "club_rider_locked_twice"},
        {"a pair fixed twice",
         {{"locked", {pair("1", "L01"), pair("1", "L01")}}},
         "locked[1].rider",
         "club_rider_locked_twice"},
        {"a bike fixed twice",
         {{"locked", {pair("1", "L01"), pair("2", "L01")}}},
         "locked[1].bike",
         "club_bike_locked_too_often"},
        {"a round fixed twice",
         {{"locked", {also_in_round_one, in_round_one}}, {"rounds", 2}},
         "locked[1].round",
         "club_round_locked_twice"},
        {"a round too many",
         {{"locked", {in_round_three}}, {"rounds", 2}},
         "locked[0].round",
         "request_value_out_of_range"},
        {"fixed and ruled out",
         {{"locked", {pair("1", "L01")}}, {"not", {pair("1", "L01")}}},
         "not[0]",
         "club_pair_locked_and_not"},
        {"fixed and absent",
         {{"locked", {pair("1", "L01")}}, {"absent", {"L01"}}},
         "locked[0].bike",
         "club_bike_locked_and_absent"},
        {"no rounds", {{"rounds", 0}}, "rounds", "request_value_out_of_range"},
        {"a field nobody knows", {{"bikes", 3}}, "bikes", "request_field_unknown"},
    };
    for (const Refused& refused : cases) {
        CAPTURE(refused.what);
        json question = morning();
        for (const auto& [name, value] : refused.change.items())
            question[name] = value;
        const json answer = ask(engine, question);
        REQUIRE(answer.contains("error"));
        CHECK(answer["error"]["where"] == refused.where);
        CHECK(answer["error"]["code"] == refused.code);
    }
    // Pairs of last time of whoever is gone are passed over.
    json question = morning();
    question["before"] = {pair("9", "L01"), pair("1", "L99"), pair("1", "L01")};
    CHECK(ask(engine, question)["pairs"].size() == 2);
}

TEST_CASE("two thousand riders are answered, and too many refused", "[engine][club]") {
    Engine engine;
    load(engine);
    json question = morning();
    question["riders"] = json::array();
    for (int i = 0; i < 2000; ++i)
        question["riders"].push_back({{"id", std::to_string(i)}, {"rider", {{"born", "2021-05"}}}});
    const json answer = ask(engine, question);
    CHECK(answer["pairs"].size() + answer["left"].size() == 2000);
    for (int i = 2000; i < 5001; ++i)
        question["riders"].push_back({{"id", std::to_string(i)}});
    CHECK(ask(engine, question)["error"]["code"] == "club_too_many_riders");
}

TEST_CASE("suits turns the list round, and every edge is that of assess", "[engine][suits]") {
    Engine engine;
    load(engine);
    const json answer = ask(engine, {{"do", "suits"}});
    REQUIRE(answer["bikes"].size() == 4);
    CHECK(answer["bikes"][0]["id"] == "L01");
    // Only the lower end is known: the range is open above, and says how far it is sure.
    CHECK(answer["bikes"][3]["stages"]["starting"]["inseam_mm"][1].is_null());
    CHECK(answer["bikes"][3]["stages"]["starting"]["surely_mm"][1].is_number());
    CHECK_FALSE(answer["bikes"][0]["stages"].contains("gliding"));
    CHECK(answer["wheels"][1]["nominal_in"] == 16);
    CHECK(answer["wheels"][1]["stages"]["riding"]["bikes"] == 2);

    const auto verdict = [&](const std::string& id, const std::string& stage, double inseam_mm) {
        const json assessed = ask(
            engine,
            {{"do", "assess"},
             {"today", "2026-11-28"},
             {"rider", {{"stage", stage}, {"readings", {{{"on", "2026-11-28"}, {"inseam_mm", inseam_mm}}}}}},
             {"only", {id}}});
        return assessed["bikes"][0]["verdict"].get<std::string>();
    };
    for (const json& bike : answer["bikes"]) {
        for (const auto& [stage, range] : bike["stages"].items()) {
            for (const std::size_t end : {std::size_t{0}, std::size_t{1}}) {
                if (range["inseam_mm"][end].is_null())
                    continue;
                const auto edge = range["inseam_mm"][end].get<double>();
                CHECK(verdict(bike["id"].get<std::string>(), stage, edge) == "fits_now");
                CHECK(verdict(bike["id"].get<std::string>(), stage, edge + (end == 0 ? -0.1 : 0.1)) !=
                      "fits_now");
            }
        }
    }
}

TEST_CASE("suits as a table says what the answer says, a row a bike", "[engine][suits]") {
    Engine engine;
    load(engine);
    const json bikes = ask(engine, {{"do", "suits"}})["bikes"];
    const auto text = ask(engine, {{"do", "suits"}, {"form", "csv"}})["text"].get<std::string>();
    CHECK(
        text.starts_with("id,name,wheel_in,saddle_lowest_mm,saddle_highest_mm,gliding_from_mm,gliding_to_mm,"
                         "gliding_age_from,gliding_age_to,side_wheels_from_mm,"));
    CHECK(std::count(text.begin(), text.end(), '\n') == static_cast<std::ptrdiff_t>(bikes.size() + 1));
    for (const json& bike : bikes) {
        const std::string row = "\r\n" + bike["id"].get<std::string>() + ',';
        CHECK(text.find(row) != std::string::npos);
    }
    CHECK(ask(engine, {{"do", "suits"}, {"form", "xml"}})["error"]["where"] == "form");
}

TEST_CASE("suits answers rows, single bikes, and an empty list", "[engine][suits]") {
    Engine engine;
    CHECK(ask(engine, {{"do", "suits"}})["bikes"].empty());
    load(engine);
    CHECK(ask(engine, {{"do", "suits"}, {"rows", {{"from", 1}, {"count", 2}}}})["bikes"].size() == 2);
    CHECK(ask(engine, {{"do", "suits"}, {"only", {"L02"}}})["bikes"][0]["id"] == "L02");
    CHECK(ask(engine, {{"do", "suits"}, {"reading_sd_mm", 0}})["error"]["where"] == "reading_sd_mm");
    // A better reading lets a bike fit a little further.
    const auto lowest = [&](double sd) {
        return ask(engine,
                   {{"do", "suits"}, {"reading_sd_mm", sd}})["bikes"][0]["stages"]["riding"]["inseam_mm"][0]
            .get<double>();
    };
    CHECK(lowest(3.0) < lowest(8.0));
}
