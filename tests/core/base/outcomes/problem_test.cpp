// Codes and words of problems: each has its sentence in english.json, and figures of every type come out in it as people read them.
#include "core/base/outcomes/problem.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <set>

using namespace saddlerule;

TEST_CASE("every code has a name of its own and a sentence", "[outcomes]") {
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < problem_code_count(); ++i) {
        const auto code = static_cast<ProblemCode>(i);
        // The counted sentences need their figure.
        const Problem problem{
            .code = code, .figures = {{"times", 2}, {"open", 2}}, .where = {}, .position = {}};
        CAPTURE(code_name(code));
        CHECK(names.insert(code_name(code)).second);
        CHECK_FALSE(sentence(problem).empty());
        CHECK_NOTHROW(expected(problem));
    }
    CHECK(names.size() > 100);
}

TEST_CASE("every word has a name of its own and is said in English", "[outcomes]") {
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < problem_word_count(); ++i) {
        const auto word = static_cast<ProblemWord>(i);
        CHECK(names.insert(word_name(word)).second);
        CHECK_FALSE(in_english(word).empty());
    }
    CHECK(names.size() > 80);
}

TEST_CASE("figures of every type come out as people read them", "[outcomes]") {
    CHECK(in_english(Quote{.text = "495", .unit = "cm"}) == "495 cm");
    CHECK(in_english("19 1/2 in") == "19 1/2 in");
    CHECK(in_english(ProblemWord::an_xlsx) == "a spreadsheet (xlsx)");
    CHECK(in_english(20'000) == "20000");
    CHECK(in_english(Number{.value = 49.5, .unit = "cm"}) == "49.5 cm");
    CHECK(in_english(Number{.value = 8.06, .unit = {}, .decimals = 1}) == "8.1");
    CHECK(in_english(*CalendarDate::from_ymd(2026, 10, 3)) == "2026-10-03");
    CHECK(in_english(KnownNames{.are = KnownNames::Are::all, .names = {"pedal", "balance"}}) ==
          "one of pedal, balance");
    CHECK(in_english(KnownNames{.are = KnownNames::Are::either, .names = {"mass_kg", "mass"}}) ==
          "either mass_kg or mass");
    CHECK(in_english(KnownNames{.are = KnownNames::Are::guess, .names = {"crank"}}) == "perhaps \"crank\"");
    const Problem cause{.code = ProblemCode::bike_without_saddle,
                        .figures = {},
                        .where = {},
                        .position = {},
                        .cell = CellPlace{.row = 2, .column_name = {}}};
    CHECK(in_english(cause) == "row 2: the bike has neither \"saddle_lowest\" nor \"saddle_highest\"");
}

TEST_CASE("a sentence goes by how many there are", "[outcomes]") {
    const auto said = [](int open) {
        return sentence(
            {.code = ProblemCode::json_cut_off, .figures = {{"open", open}}, .where = {}, .position = {}});
    };
    CHECK(said(1) == "the text stops in the middle: 1 bracket is still open");
    CHECK(said(3) == "the text stops in the middle: 3 brackets are still open");
    const auto noted = [](int times) {
        return sentence({.code = ProblemCode::list_price_without_currency,
                         .figures = {{"times", times}},
                         .where = {},
                         .position = {}});
    };
    CHECK(noted(1) == "a price without a currency is not used (once)");
    CHECK(noted(40) == "a price without a currency is not used (40 times)");
}
