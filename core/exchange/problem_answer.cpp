#include "core/exchange/problem_answer.h"

namespace saddlerule {

void problem_fields(JsonWriter& json, const Problem& problem) {
    field(json, "code", code_name(problem.code));
    field(json, "where", problem.where);
    if (problem.position) {
        field(json, "line", problem.position->line);
        field(json, "column", problem.position->column);
    }
    if (problem.cell) {
        field(json, "row", problem.cell->row);
        field(json, "column_name", problem.cell->column_name);
    }
    field(json, "problem", sentence(problem));
    field(json, "expected", expected(problem));
    json.key("figures").object([&] {
        for (const auto& [name, value] : problem.figures)
            field(json, name, value);
    });
}

void write(JsonWriter& json, const Problem& problem) {
    json.object([&] { problem_fields(json, problem); });
}

void write(JsonWriter& json, const std::vector<Problem>& problems) {
    json.array_of(problems, [&](const Problem& problem) { write(json, problem); });
}

std::string error_answer(const Problem& problem) {
    JsonWriter json;
    json.object([&] { field(json, "error", problem); });
    return json.take();
}

} // namespace saddlerule
