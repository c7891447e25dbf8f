// The engine's one door: requests in, answers out, nothing that breaks it.
#include "core/exchange/engine.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <string>

// Catch2 takes JSON for a range of ranges without end.
template <>
struct Catch::StringMaker<nlohmann::json> {
    static std::string convert(const nlohmann::json& value) { return value.dump(); }
};

using nlohmann::json;
using saddlerule::Engine;

namespace {

const std::string list_of_three = R"({
  "format": "saddlerule-catalogue", "version": 1, "title": "Three bikes", "measured_on": "2026-10-03",
  "units": "cm", "currency": "EUR",
  "bikes": [
    {"id": "low", "wheel": "47-254", "saddle_lowest": 43, "saddle_highest": 55, "price": 60, "mass_kg": 7},
    {"id": "right", "wheel": "47-305", "saddle_lowest": 49.5, "saddle_highest": 63, "price": 120, "mass_kg": 6.4},
    {"id": "tall", "wheel": "47-406", "saddle_lowest": 60, "saddle_highest": 78}
  ]
})";

json request(const char* task) {
    return {{"do", task},
            {"today", "2026-11-25"},
            {"rider", {{"stage", "starting"}, {"readings", {{{"on", "2026-11-25"}, {"inseam_mm", 495}}}}}}};
}

json ask(Engine& engine, const json& question, std::string_view file = {}) {
    return json::parse(engine.answer(question.dump(), std::string(file)));
}

json bike_named(const json& answer, const std::string& id) {
    for (const json& bike : answer.at("bikes")) {
        if (bike.at("id") == id)
            return bike;
    }
    FAIL("no bike " << id);
    return {};
}

struct Refused {
    const char* what;
    json change; ///< merged into a good request
    const char* where;
    const char* code;
};

} // namespace

TEST_CASE("a loaded list is judged for the rider of the request", "[engine]") {
    Engine engine;
    const json loaded = ask(engine, {{"do", "load"}}, list_of_three);
    CHECK(loaded["list"]["title"] == "Three bikes");
    CHECK(loaded["list"]["bikes"] == 3);
    CHECK(loaded["set_aside"].empty());

    const json answer = ask(engine, request("assess"));
    CHECK(answer["rider"]["inseam_mm"] == json({{"mean", 495.0}, {"sd", 8.0}}));
    CHECK(answer["rider"]["basis"] == "measured");
    CHECK(answer["rider"]["window_mm"] == json({{"low", 470.0}, {"target", 495.0}, {"high", 505.0}}));
    REQUIRE(answer["bikes"].size() == 3);
    CHECK(bike_named(answer, "low")["verdict"] == "fits_now");
    CHECK(bike_named(answer, "tall")["verdict"] == "too_tall");
    const json right = bike_named(answer, "right");
    CHECK(right["verdict"] == "fits_now");
    CHECK(right["saddle_mm"] == 495.0);
    CHECK(right["above_lowest_mm"] == 0.0);
    CHECK(right["below_highest_mm"] == 135.0);
    CHECK(right["margin_mm"] == 10.0);
    CHECK(answer["bikes"][0]["id"] == "right"); // lasts longest
    CHECK(answer["rider"]["wheel_sizes"][0]["nominal_in"] == 16.0);
    CHECK(answer["rider"]["wheel_sizes"][1]["nominal_in"] == 14.0);
}

TEST_CASE("one reading made today is answered as it was made, whatever else is known of the rider",
          "[engine]") {
    Engine engine;
    for (const json& more :
         {json::object(), json{{"born", "2021-09"}}, json{{"born", "2021-09"}, {"sex", "boy"}},
          json{{"sex", "girl"}, {"stature_mm", 1105}}}) {
        json question = request("assess");
        question["rider"].update(more);
        CHECK(ask(engine, question)["rider"]["inseam_mm"] == json({{"mean", 495.0}, {"sd", 8.0}}));
    }
}

TEST_CASE("typed readings are read by the engine, in the unit given or their own", "[engine]") {
    Engine engine;
    for (const json& reading :
         {json{{"inseam", "19 1/2"}, {"unit", "in"}}, json{{"inseam", "49,53"}, {"unit", "cm"}},
          json{{"inseam", "495.3 mm"}}, json{{"inseam", "19.5 in"}, {"unit", "cm"}}}) {
        json question = request("assess");
        question["rider"]["readings"][0] = reading;
        question["rider"]["readings"][0]["on"] = "2026-11-25";
        CHECK(ask(engine, question)["rider"]["inseam_mm"]["mean"] == 495.3);
    }
}

TEST_CASE("wants leave bikes out, each with its reasons, and lose none", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    json question = request("assess");
    question["wants"] = {{"max_price", 100}};
    const json answer = ask(engine, question);
    CHECK(answer["bikes"].size() == 1);
    REQUIRE(answer["left_out"].size() == 2);
    CHECK(answer["left_out"][0] == json({{"id", "right"}, {"name", ""}, {"because", {"price_over"}}}));
    CHECK(answer["left_out"][1]["because"] == json({"price_unknown"}));
}

TEST_CASE("a taped bike is judged beside the list, and one that cannot be read is set aside", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    json question = request("assess");
    question["taped_units"] = "in";
    question["taped"] = {{{"name", "Next to the till"}, {"saddle_lowest", "19 1/2"}, {"saddle_highest", 25}},
                         {{"name", "No figures"}},
                         {{"id", "right"}, {"saddle_lowest", 19}}};
    const json answer = ask(engine, question);
    CHECK(answer["bikes"].size() == 4);
    const json taped = bike_named(answer, "Next to the till");
    CHECK(taped["taped"] == true);
    CHECK(taped["span_mm"] == json({{"lowest", 495.3}, {"highest", 635.0}}));
    REQUIRE(answer["set_aside"].size() == 2);
    CHECK(answer["set_aside"][0]["code"] == "bike_without_saddle");
    CHECK(answer["set_aside"][0]["where"] == "taped[1]");
    CHECK(answer["set_aside"][1]["code"] == "bike_id_given_twice");
}

TEST_CASE("what the list set aside is set aside in every answer about it, before what was taped",
          "[engine]") {
    Engine engine;
    const json loaded =
        ask(engine, {{"do", "load"}}, R"({"units":"cm","bikes":[{"id":"A","saddle_lowest":49.5},
        {"id":"B"},{"id":"A","saddle_lowest":50}]})");
    REQUIRE(loaded["set_aside"].size() == 2);
    json question = request("assess");
    CHECK(ask(engine, question)["set_aside"] == loaded["set_aside"]);
    question["taped"] = {{{"name", "No figures"}}};
    const json answer = ask(engine, question);
    REQUIRE(answer["set_aside"].size() == 3);
    CHECK(answer["set_aside"][2]["where"] == "taped[0]");
    question["rows"] = {{"from", 0}, {"count", 10}};
    CHECK(ask(engine, question)["set_aside"].size() == 1); // a window tells of what was asked for with it
}

TEST_CASE("a taped bike is asked about slips of the hand", "[engine]") {
    Engine engine;
    json question = request("assess");
    question["taped"] = {{{"id", "inches"}, {"saddle_lowest", "19.5"}, {"saddle_highest", "25"}},
                         {{"id", "right"}, {"saddle_lowest", "49.5"}, {"saddle_highest", "63"}}};
    const json answer = ask(engine, question);
    const json notes = bike_named(answer, "inches")["notes"];
    REQUIRE(notes.size() == 1);
    CHECK(notes[0]["code"] == "slip_unit");
    CHECK(notes[0]["where"] == "taped[0].saddle_lowest");
    CHECK(bike_named(answer, "right")["notes"].empty());
}

TEST_CASE("a bike that a check stops is neither first nor better than a sound one", "[engine]") {
    Engine engine;
    // Without brakes, lighter and cheaper, and it lasts longer: stopped all the same.
    ask(engine, {{"do", "load"}}, R"({"units":"cm","currency":"EUR","bikes":[
        {"id":"unsafe","saddle_lowest":49,"saddle_highest":70,"brakes":[],"mass_kg":5,"price":80},
        {"id":"gone","saddle_lowest":49,"saddle_highest":68,"brakes":["front hand","rear hand"],"mass_kg":5,"price":80,
         "available":false},
        {"id":"safe","saddle_lowest":49,"saddle_highest":63,"brakes":["front hand","rear hand"],"mass_kg":6,"price":90}]})");
    const json answer = ask(engine, request("assess"));
    CHECK(answer["bikes"][0]["id"] == "safe");
    CHECK(answer["bikes"][0]["not_offered"].is_null());
    CHECK(answer["bikes"][0]["standing"]["code"] == "unbeaten");
    CHECK(answer["bikes"][1]["id"] == "gone");
    CHECK(answer["bikes"][1]["not_offered"]["code"] == "not_available");
    CHECK(answer["bikes"][2]["id"] == "unsafe");
    CHECK(ask(engine, request("changes"))["first"]["id"] == "safe");
}

TEST_CASE("an answer tells the pauses of a bike, and the condition of a change of stage", "[engine]") {
    Engine engine;
    json question = request("assess");
    question["rider"]["readings"][0]["inseam_mm"] = 470;
    question["rider"]["stage"] = "side_wheels";
    question["rider"]["confidence"] = "bold";
    question["taped"] = {{{"id", "gap"}, {"saddle_lowest", 53}, {"saddle_highest", 64}},
                         {{"id", "no gap"}, {"saddle_lowest", 47}, {"saddle_highest", 64}}};
    const json answer = ask(engine, question);
    const json gap = bike_named(answer, "gap");
    CHECK(gap["verdict"] == "fits_now");
    REQUIRE(gap["pauses"].size() == 1);
    CHECK(gap["pauses"][0]["from"] == "2027-05-25");
    CHECK(gap["pauses"][0]["to"] == "2027-11-25");
    CHECK(gap["pauses"][0]["code"] == "too_tall");
    CHECK(bike_named(answer, "no gap")["pauses"].empty());
    json stages = json::array();
    const json no_gap = bike_named(answer, "no gap");
    for (const json& raise : no_gap["raise"]) {
        if (raise.contains("stage"))
            stages.push_back(json::array({raise["on"], raise["stage"]}));
    }
    CHECK(stages ==
          json::array({json::array({"2027-05-25", "starting"}), json::array({"2027-11-25", "riding"})}));
}

TEST_CASE("a guessed inseam is said where a check rests on it", "[engine]") {
    Engine engine;
    json question = request("assess");
    question["taped"] = {{{"id", "T"}, {"saddle_lowest", 50}, {"saddle_highest", 64}, {"standover", 50}}};
    const auto standover = [&] {
        const json checks = ask(engine, question)["bikes"][0]["checks"];
        return *std::find_if(checks.begin(), checks.end(),
                             [](const json& check) { return check["what"] == "standover"; });
    };
    CHECK(standover()["basis"] == "measured");
    question["rider"] = {{"born", "2021-06"}, {"stage", "starting"}};
    CHECK(standover()["basis"] == "estimated_inseam");
    CHECK(standover()["state"] == "look");
    CHECK(standover()["code"] == "standover_unsettled");
}

TEST_CASE("a balance bike keeps its verdict and comes after all bikes with pedals for a rider who pedals",
          "[engine]") {
    Engine engine;
    json question = request("assess");
    question["taped"] = {
        {{"id", "glider"}, {"kind", "balance"}, {"saddle_lowest", 45}, {"saddle_highest", 60}},
        {{"id", "outgrown"}, {"saddle_lowest", 30}, {"saddle_highest", 40}}};
    json answer = ask(engine, question);
    CHECK(answer["bikes"][0]["id"] == "outgrown");
    CHECK(answer["bikes"][1]["suits_stage"] == false);
    question["rider"]["stage"] = "gliding";
    answer = ask(engine, question);
    CHECK(answer["bikes"][0]["id"] == "glider");
    CHECK(answer["bikes"][0]["suits_stage"] == true);
}

TEST_CASE("only the bikes asked for are written, in the place they have among all", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    json question = request("assess");
    question["only"] = {"tall"};
    question["detail"] = "brief";
    const json answer = ask(engine, question);
    REQUIRE(answer["bikes"].size() == 1);
    CHECK(answer["bikes"][0]["id"] == "tall");
    CHECK_FALSE(answer["bikes"][0].contains("checks"));
    CHECK(answer["rider"]["wheel_sizes"].size() == 2);
}

TEST_CASE("a request is refused with the place, the cause and what was expected", "[engine]") {
    const auto refused = GENERATE(values<Refused>({
        {"no task", {{"do", nullptr}}, "do", "request_field_missing"},
        {"unknown task", {{"do", "fly"}}, "do", "request_value_unknown"},
        {"no today", {{"today", nullptr}}, "today", "request_field_missing"},
        {"no such day", {{"today", "2026-02-30"}}, "today", "request_date_malformed"},
        {"unknown field", {{"colour", "red"}}, "colour", "request_field_unknown"},
        {"no rider", {{"rider", nullptr}}, "rider", "request_field_missing"},
        {"a rider that is a text", {{"rider", "Kim"}}, "rider", "request_field_wrong_type"},
        {"unknown stage", {{"rider", {{"stage", "flying"}}}}, "rider.stage", "request_value_unknown"},
        {"no stage", {{"rider", {{"stage", nullptr}}}}, "rider.stage", "request_field_missing"},
        {"rider with a spelling mistake",
         {{"rider", {{"borne", "2021"}}}},
         "rider.borne",
         "request_field_unknown"},
        {"nothing to judge by", {{"rider", {{"readings", nullptr}}}}, "rider", "rider_without_measure"},
        {"readings that are no list",
         {{"rider", {{"readings", 495}}}},
         "rider.readings",
         "request_field_wrong_type"},
        {"a reading without a date",
         {{"rider", {{"readings", {{{"inseam_mm", 495}}}}}}},
         "rider.readings[0].on",
         "request_field_missing"},
        {"a reading without a figure",
         {{"rider", {{"readings", {{{"on", "2026-11-25"}}}}}}},
         "rider.readings[0].inseam_mm",
         "request_field_missing"},
        {"a negative inseam",
         {{"rider", {{"readings", {{{"on", "2026-11-25"}, {"inseam_mm", -5}}}}}}},
         "rider.readings[0].inseam_mm",
         "request_value_out_of_range"},
        {"an inseam beyond all bounds",
         {{"rider", {{"readings", {{{"on", "2026-11-25"}, {"inseam_mm", 1e308}}}}}}},
         "rider.readings[0].inseam_mm",
         "request_value_out_of_range"},
        {"an inseam as text in the field for numbers",
         {{"rider", {{"readings", {{{"on", "2026-11-25"}, {"inseam_mm", "495"}}}}}}},
         "rider.readings[0].inseam_mm",
         "request_field_wrong_type"},
        {"an inseam that is no figure",
         {{"rider", {{"readings", {{{"on", "2026-11-25"}, {"inseam", "forty"}}}}}}},
         "rider.readings[0].inseam",
         "figure_not_a_number"},
        {"unknown order", {{"wants", {{"order", "best"}}}}, "wants.order", "request_value_unknown"},
        {"a price that is a text",
         {{"wants", {{"max_price", "cheap"}}}},
         "wants.max_price",
         "request_field_wrong_type"},
        {"taped bikes that are no list", {{"taped", true}}, "taped", "request_field_wrong_type"},
        {"a resale share above one", {{"resale_share", 1.5}}, "resale_share", "request_value_out_of_range"},
    }));
    CAPTURE(refused.what);
    Engine engine;
    json question = request("assess");
    question.merge_patch(refused.change);
    const json answer = ask(engine, question);
    REQUIRE(answer.contains("error"));
    CHECK(answer["error"]["where"] == refused.where);
    CHECK(answer["error"]["code"] == refused.code);
    // All but this one name what was found, what is known or what is wanted.
    CHECK(answer["error"]["figures"].empty() == (std::string(refused.code) == "rider_without_measure"));
    CHECK(ask(engine, request("assess")).contains("bikes"));
}

TEST_CASE("a request that is not JSON is refused with line and column", "[engine]") {
    Engine engine;
    const json answer = json::parse(engine.answer("{\"do\":\n \"about\" \"x\": 1}"));
    CHECK(answer["error"]["line"] == 2);
    CHECK(answer["error"]["column"] == 10);
    for (const char* text : {"", " ", "nonsense", "[", "{\"do\":\"about\"", "\"about\"", "12", "null"})
        CHECK(json::parse(engine.answer(text)).contains("error"));
}

TEST_CASE("a request that is not UTF-8 is refused by its byte, and the refusal is UTF-8", "[engine]") {
    Engine engine;
    for (const char* text : {"\xFF\xFE{", "{\xE9:1}", "{\"do\":\"ab\xC3(out\"}"}) {
        const json answer = json::parse(engine.answer(text));
        CHECK(answer["error"]["code"] == "request_not_utf8");
    }
}

TEST_CASE("a field given twice is refused, since nobody knows which one was meant", "[engine]") {
    Engine engine;
    const json answer = json::parse(engine.answer(R"({"do":"about","do":"list"})"));
    CHECK(answer["error"]["code"] == "request_field_twice");
}

TEST_CASE("requests in an array are answered in order, each on its own", "[engine]") {
    Engine engine;
    const json answers = json::parse(engine.answer(R"([{"do":"about"},{"do":"fly"},{"do":"list"}])"));
    REQUIRE(answers.size() == 3);
    CHECK(answers[0].contains("version"));
    CHECK(answers[1].contains("error"));
    CHECK(answers[2]["list"].is_null());
    CHECK(json::parse(engine.answer("[]")) == json::array());
}

TEST_CASE("a load that fails leaves the list that was there", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    for (const std::string_view file :
         {std::string_view(""), std::string_view("nonsense"), std::string_view("{\"format\":"),
          std::string_view(R"({"format":"saddlerule-catalogue","version":1,"bikes":[]})"),
          std::string_view("PK\x03\x04\0\0", 6)}) {
        const json refused = ask(engine, {{"do", "load"}}, file);
        CHECK(refused.contains("error"));
        CHECK(ask(engine, {{"do", "list"}})["list"]["bikes"] == 3);
    }
}

TEST_CASE("list gives the facts of every bike in millimetres and kilograms", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    const json answer = ask(engine, {{"do", "list"}});
    const json right = bike_named(answer, "right");
    CHECK(right["saddle_lowest_mm"] == 495.0);
    CHECK(right["wheel"]["bead_seat_mm"] == 305.0);
    CHECK(right["price"] == 120.0);
    CHECK(right["currency"] == "EUR");
    CHECK(right["standover_mm"].is_null());
}

TEST_CASE("forecast answers one entry a month, the last one that many months on", "[engine]") {
    Engine engine;
    json question = request("forecast");
    question["months"] = 18;
    const json answer = ask(engine, question);
    REQUIRE(answer["months"].size() == 18);
    CHECK(answer["months"][0]["on"] == "2026-12-25");
    CHECK(answer["months"][17]["on"] == "2028-05-25");
    for (const json& month : answer["months"]) {
        CHECK(month["p10"] < month["p50"]);
        CHECK(month["p50"] < month["p90"]);
        CHECK(month["sd"] > 0.0);
    }
    CHECK(answer["stages"][0]["stage"] == "starting");
    CHECK(answer["stages"][1]["from"] == "2027-05-25");
    for (const json& wrong : {json(0), json(97), json("12"), json(nullptr)}) {
        question["months"] = wrong;
        CHECK(ask(engine, question).contains("error"));
    }
}

TEST_CASE("forecast tells of a bike the chance that it fits, month by month", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    json question = request("forecast");
    question["months"] = 96;
    CHECK_FALSE(ask(engine, question)["today"].contains("fits_probability"));

    question["bike"] = "right";
    const json answer = ask(engine, question);
    // What assess says of the same bike: it is the same chance today, and its integral is the months of fit.
    json about_it = request("assess");
    about_it["only"] = {"right"};
    const json bike = ask(engine, about_it)["bikes"].at(0);
    const auto chance_in = [](const json& month) { return month["fits_probability"].get<double>(); };
    CHECK(chance_in(answer["today"]) == Approx(bike["fits_probability"].get<double>()).margin(0.02));
    double months = chance_in(answer["today"]) / 2;
    for (const json& month : answer["months"])
        months += chance_in(month);
    CHECK(months == Approx(bike["months_of_fit"]["mean"].get<double>()).margin(0.5));

    question["bike"] = "nowhere";
    CHECK(ask(engine, question)["error"]["where"] == "bike");
    question["bike"] = "taped";
    question["taped"] = {{{"id", "taped"}, {"saddle_lowest", 480}}};
    CHECK(ask(engine, question)["months"][0]["fits_probability"].is_null());
}

TEST_CASE("changes names the smallest change that puts another bike first", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    json question = request("changes");
    question["wants"] = {{"max_price", 100}};
    const json answer = ask(engine, question);
    CHECK(answer["first"]["id"] == "low");
    bool budget_found = false;
    for (const json& change : answer["changes"]) {
        if (change["kind"] == "higher_budget") {
            budget_found = true;
            CHECK(change["budget"] == 120.0);
            CHECK(change["first"]["id"] == "right");
        }
    }
    CHECK(budget_found);
}

TEST_CASE("forecast gives the window on both sides of a change of stage", "[engine]") {
    Engine engine;
    json question = request("forecast");
    question["months"] = 12;
    question["rider"]["riding_from"] = "2027-03-10";
    const json answer = ask(engine, question);
    const json& windows = answer["windows"];
    REQUIRE(windows.size() == 13 + 2);
    CHECK(windows[0]["on"] == "2026-11-25");
    std::vector<json> at_change;
    for (const json& window : windows) {
        CHECK(window["low"]["p10"] <= window["low"]["p50"]);
        CHECK(window["low"]["p50"] < window["target"]["p50"]);
        CHECK(window["target"]["p50"] < window["high"]["p50"]);
        if (window["on"] == "2027-03-10")
            at_change.push_back(window);
    }
    REQUIRE(at_change.size() == 2);
    const double step =
        at_change[1]["target"]["p50"].get<double>() - at_change[0]["target"]["p50"].get<double>();
    CHECK(step == Approx(76.0).margin(0.11)); // from flat feet to tiptoes
}

TEST_CASE("rows are a window of the ranked rack, with counts and heights of all of it", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    json question = request("assess");
    question["detail"] = "brief";
    const json all = ask(engine, question);
    CHECK(all["counts"]["fits_now"] == 2);
    CHECK(all["counts"]["too_tall"] == 1);
    CHECK(all["heights_mm"] == json({{"lowest", 430.0}, {"highest", 780.0}}));
    question["rows"] = {{"from", 1}, {"count", 1}};
    const json row = ask(engine, question);
    REQUIRE(row["bikes"].size() == 1);
    CHECK(row["bikes"][0] == all["bikes"][1]);
    CHECK(row["counts"] == all["counts"]);
    CHECK(row["groups"] == json::array({{{"verdict", "fits_now"}, {"suits_stage", true}, {"bikes", 2}},
                                        {{"verdict", "too_tall"}, {"suits_stage", true}, {"bikes", 1}}}));
    CHECK_FALSE(row.contains("left_out"));
    question["rows"] = {{"from", 0}, {"count", 3}};
    question["detail"] = "spans";
    const json spans = ask(engine, question)["bikes"];
    CHECK(spans.size() == 3);
    CHECK(spans[1]["span_mm"] == all["bikes"][1]["span_mm"]);
    CHECK(spans[1].size() == 2);
    // Who fits now fits from this month on; what is too big does not yet, but will. The months are those of the forecast.
    for (std::size_t place = 0; place < 3; ++place) {
        const json& bike = all["bikes"][place];
        json stretches = json::array();
        json months = request("forecast");
        months["rider"] = question["rider"];
        months["bike"] = bike["id"];
        months["months"] = 96;
        const json forecast = ask(engine, months);
        std::vector<bool> fits{forecast["today"]["fits_probability"].get<double>() >= 0.5};
        for (const json& month : forecast["months"])
            fits.push_back(month["fits_probability"].get<double>() >= 0.5);
        for (const json& stretch : spans[place]["fits_months"]) {
            for (int month = stretch[0].get<int>(); month < stretch[1].get<int>(); ++month) {
                CHECK(fits[static_cast<std::size_t>(month)]);
                fits[static_cast<std::size_t>(month)] = false;
            }
        }
        CHECK(std::find(fits.begin(), fits.end(), true) == fits.end());
        CHECK(spans[place]["fits_months"].size() >= 1);
        CHECK((spans[place]["fits_months"][0][0] == 0) == (bike["verdict"] == "fits_now"));
    }
    question["detail"] = "brief";
    question["rows"] = {{"from", 7}, {"count", 5}};
    CHECK(ask(engine, question)["bikes"].empty());
    question["rows"] = {{"from", -1}, {"count", 5}};
    CHECK(ask(engine, question)["error"]["where"] == "rows.from");
}

TEST_CASE("what is left out is counted by reason", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    json question = request("assess");
    question["wants"] = {{"max_price", 100}};
    const json answer = ask(engine, question);
    CHECK(answer["left_out_counts"] ==
          json({{"bikes", 2}, {"because", {{"price_over", 1}, {"price_unknown", 1}}}}));
}

// The last question is kept judged: whatever changes must be judged anew.
TEST_CASE("an answer never speaks of an earlier question or an earlier list", "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    json question = request("assess");
    ask(engine, question);
    for (const json& change :
         {json{{"rider", {{"stage", "riding"}}}}, json{{"wants", {{"max_price", 100}}}},
          json{{"resale_share", 0.2}}, json{{"today", "2026-12-25"}},
          json{{"taped", {{{"id", "mine"}, {"saddle_lowest", 48}}}}}, json{{"taped_units", "in"}}}) {
        question.merge_patch(change);
        Engine other;
        ask(other, {{"do", "load"}}, list_of_three);
        CHECK(ask(engine, question) == ask(other, question));
    }
    const std::string shorter = R"({"format":"saddlerule-catalogue","version":1,"units":"cm",
        "bikes":[{"id":"right","saddle_lowest":40,"saddle_highest":45}]})";
    ask(engine, {{"do", "load"}}, shorter);
    Engine other;
    ask(other, {{"do", "load"}}, shorter);
    CHECK(ask(engine, question) == ask(other, question));
}

TEST_CASE("a side view is given for a bike of the list or a taped one, and refused for an unknown one",
          "[engine]") {
    Engine engine;
    ask(engine, {{"do", "load"}}, list_of_three);
    json question = request("side_view");
    question["bike"] = "right";
    const json answer = ask(engine, question);
    CHECK(answer["saddle"]["setting"]["y"] == 495.0);
    CHECK(answer["foot"] == "flat");
    question["bike"] = "nobody's";
    CHECK(ask(engine, question)["error"]["code"] == "request_bike_unknown");
    question["bike"] = "mine";
    question["taped"] = {{{"id", "mine"}, {"saddle_lowest", 48}, {"saddle_highest", 60}}};
    CHECK(ask(engine, question)["saddle"]["lowest"]["y"] == 480.0);
}

TEST_CASE("about names every constant with its source, every request and every problem", "[engine]") {
    Engine engine;
    const json answer = ask(engine, {{"do", "about"}});
    REQUIRE(answer["constants"].size() > 10);
    for (const json& constant : answer["constants"]) {
        CHECK_FALSE(constant["source"].get<std::string>().empty());
        CHECK_FALSE(constant["why"].get<std::string>().empty());
        CHECK_FALSE(constant["unit"].get<std::string>().empty());
    }
    const auto names = [&](const std::string& room) {
        return std::any_of(answer["constants"].begin(), answer["constants"].end(), [&](const json& constant) {
            return constant["name"].get<std::string>().rfind(room, 0) == 0;
        });
    };
    for (const char* room :
         {"saddle_window.", "check.", "growth.drift.", "growth.us.", "leg.", "hill.", "slip."}) {
        CAPTURE(room);
        CHECK(names(room));
    }
    for (const json& problem : answer["problems"])
        CHECK_FALSE(problem["code"].get<std::string>().empty());
    CHECK(answer["problems"].size() > 100);
    CHECK(answer["problem_words"].size() > 80);
    CHECK(answer["requests"] ==
          json::array({"load",         "new_list", "list",      "entry",       "check_entry",
                       "edit",         "compare",  "merge",     "save",        "assess",
                       "changes",      "forecast", "side_view", "read_bike",   "read_riders",
                       "write_riders", "club_day", "suits",     "years_ahead", "about"}));
}

TEST_CASE("whose children a guess rests on is asked, answered, and refused where it is unknown", "[engine]") {
    Engine engine;
    json question = request("assess");
    question["rider"].erase("readings");
    question["rider"]["born"] = "2021-11";
    const auto mean_for = [&](const char* population) {
        question["rider"]["population"] = population;
        const json answer = ask(engine, question);
        CHECK(answer["rider"]["population"] == population);
        return answer["rider"]["inseam_mm"]["mean"].get<double>();
    };
    CHECK(mean_for("nl") - mean_for("us") > 20.0);
    CHECK(mean_for("any") > mean_for("us"));
    CHECK(mean_for("any") < mean_for("nl"));
    question["rider"].erase("population");
    CHECK(ask(engine, question)["rider"]["population"] == "any");
    question["rider"]["population"] = "fr";
    const json refused = ask(engine, question);
    CHECK(refused["error"]["where"] == "rider.population");
    CHECK(refused["error"]["figures"]["known"] == json{{"names", {"us", "gb", "nl", "any"}}, {"are", "all"}});
}

TEST_CASE("a birth in the future and nothing else is no measure of a rider", "[engine]") {
    Engine engine;
    json question = request("assess");
    question["rider"].erase("readings");
    question["rider"]["born"] = "2031-01";
    const json refused = ask(engine, question);
    CHECK(refused["error"]["code"] == "rider_without_measure");
    CHECK(refused["error"]["where"] == "rider");
}

TEST_CASE("a reading dated before the birth leaves the age to guess by", "[engine]") {
    Engine engine;
    json question = request("assess");
    question["rider"]["born"] = "2021-06-01";
    question["rider"]["readings"] = {{{"on", "2016-11-25"}, {"inseam_mm", 495}}};
    const json answer = ask(engine, question);
    CHECK(answer["rider"]["basis"] == "estimated_from_age");
    CHECK(answer["rider"]["inseam_mm"]["mean"].get<double>() < 570.0);
    CHECK(answer["rider"]["notes"][0]["code"] == "reading_before_birth");
}

TEST_CASE("a rider without readings is estimated from stature or age, and the answer says so", "[engine]") {
    Engine engine;
    json question = request("assess");
    question["rider"].erase("readings");
    question["rider"]["born"] = "2020-11";
    json answer = ask(engine, question);
    CHECK(answer["rider"]["basis"] == "estimated_from_age");
    const double sd_from_age = answer["rider"]["inseam_mm"]["sd"].get<double>();
    question["rider"]["stature_mm"] = 1150;
    answer = ask(engine, question);
    CHECK(answer["rider"]["basis"] == "estimated_from_stature");
    const double sd_from_stature = answer["rider"]["inseam_mm"]["sd"].get<double>();
    CHECK(sd_from_age > sd_from_stature);
    CHECK(sd_from_stature > 8.0);
}

TEST_CASE("an unlikely reading is questioned with the likely slip, and answered all the same", "[engine]") {
    Engine engine;
    json question = request("assess");
    question["rider"]["readings"][0]["inseam_mm"] = 4950;
    const json answer = ask(engine, question);
    REQUIRE(answer["rider"]["notes"].size() >= 1);
    CHECK(answer["rider"]["notes"][0]["code"] == "reading_outside_plausible");
    CHECK(answer["rider"]["notes"][0]["where"] == "rider.readings[0].inseam");
    CHECK(answer["rider"]["inseam_mm"]["mean"] == 4950.0);
    CHECK(answer["rider"]["notes"][0]["figures"]["slip"]["word"] == "mm_as_cm");
}
