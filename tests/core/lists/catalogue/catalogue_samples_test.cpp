// The sample files of catalogue-samples/, good and broken, read as the table beside the broken ones says.
#include "core/base/json/located_json.h"
#include "core/lists/catalogue/catalogue_reader.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using namespace saddlerule;

namespace {

std::string sample(const std::string& name) {
    std::ifstream file(SADDLERULE_SAMPLES "/" + name, std::ios::binary);
    REQUIRE(file.good());
    return {std::istreambuf_iterator<char>(file), {}};
}

const JsonValue& field(const JsonValue& row, std::string_view name) {
    REQUIRE(row.find(name) != nullptr);
    return row.find(name)->value;
}

/// The value, or nullptr where there is none.
const JsonValue* value_of(const JsonValue& row, std::string_view name) {
    const JsonMember* member = row.find(name);
    return member && member->value.kind != JsonValue::Kind::null ? &member->value : nullptr;
}

void check_problem(const Problem& problem, const JsonValue& wanted) {
    CAPTURE(sentence(problem));
    CHECK(code_name(problem.code) == field(wanted, "code").text);
    CHECK(problem.where == field(wanted, "where").text);
    const JsonValue* line = value_of(wanted, "line");
    CHECK(problem.position.has_value() == (line != nullptr));
    if (problem.position && line) {
        CHECK(static_cast<double>(problem.position->line) == line->number);
        CHECK(static_cast<double>(problem.position->column) == field(wanted, "column").number);
    }
    const JsonValue* row = value_of(wanted, "row");
    CHECK(problem.cell.has_value() == (row != nullptr));
    if (problem.cell && row) {
        CHECK(static_cast<double>(problem.cell->row) == row->number);
        CHECK(problem.cell->column_name == field(wanted, "column_name").text);
    }
}

void check_list(const Catalogue& list, const JsonValue& wanted) {
    CHECK(static_cast<double>(list.bikes.size()) == field(wanted, "bikes").number);
    const std::vector<JsonValue>& aside = field(wanted, "set_aside").items;
    REQUIRE(list.set_aside.size() == aside.size());
    for (std::size_t i = 0; i < aside.size(); ++i) {
        CHECK(static_cast<double>(list.set_aside[i].number) == field(aside[i], "number").number);
        check_problem(list.set_aside[i].problem, aside[i]);
    }
    const std::vector<JsonValue>& notes = field(wanted, "notes").items;
    REQUIRE(list.notes.size() == notes.size());
    for (std::size_t i = 0; i < notes.size(); ++i)
        check_problem(list.notes[i], notes[i]);
}

} // namespace

TEST_CASE("every sample file reads as its table says", "[catalogue]") {
    const auto table = read_json(sample("broken/expected.json"), JsonLimits());
    REQUIRE(table.ok());
    for (const JsonValue& row : table->items) {
        const std::string& name = field(row, "file").text;
        CAPTURE(name);
        const std::string bytes = sample(name);
        const auto list = read_catalogue(std::make_shared<const std::string>(bytes));
        const bool to_be_refused = row.find("refused") != nullptr;
        CHECK(list.ok() != to_be_refused);
        if (!list.ok() && to_be_refused)
            check_problem(list.problem(), field(row, "refused"));
        if (list.ok() && !to_be_refused)
            check_list(list->catalogue, row);
    }
}
