#include "core/exchange/problem_answer.h"

#include "core/base/outcomes/figure_text.h"

#include <array>

namespace saddlerule {
namespace {

/// Writes a figure, each of its types in a form that is told from the others.
class FigureWriter {
public:
    explicit FigureWriter(JsonWriter& json) : json_(json) {}

    void operator()(const Quote& quote) const {
        with_unit("text", quote.unit, [&] { json_.text(quote.text); });
    }
    void operator()(ProblemWord word) const { one_field("word", word_name(word)); }
    void operator()(const Number& number) const {
        with_unit("value", number.unit, [&] {
            const std::string text = figure_text(number.value, number.decimals);
            json_.raw(text == "?" ? "null" : text);
        });
    }
    void operator()(CalendarDate date) const { one_field("date", date); }
    void operator()(const KnownNames& known) const {
        constexpr std::array<std::string_view, 3> are{"all", "either", "guess"};
        json_.object([&] {
            json_.key("names").array_of(known.names, [&](const std::string& name) { json_.text(name); });
            field(json_, "are", are[static_cast<std::size_t>(known.are)]);
        });
    }
    void operator()(const std::shared_ptr<const Problem>& cause) const { one_field("problem", *cause); }

private:
    template <typename Value>
    void one_field(std::string_view name, const Value& value) const {
        json_.object([&] { field(json_, name, value); });
    }

    template <typename WriteValue>
    void with_unit(std::string_view name, std::string_view unit, WriteValue write_value) const {
        if (unit.empty())
            return write_value();
        json_.object([&] {
            json_.key(name);
            write_value();
            field(json_, "unit", unit);
        });
    }

    JsonWriter& json_;
};

} // namespace

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
    json.key("figures").object([&] {
        for (const auto& [name, figure] : problem.figures) {
            json.key(name);
            std::visit(FigureWriter(json), figure.value);
        }
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
