#include "core/base/outcomes/problem.h"

#include "core/base/outcomes/problem_texts.h"

namespace saddlerule {
namespace {

std::string filled_in(std::string_view text, const Problem& problem) {
    std::string result;
    while (!text.empty()) {
        const std::size_t open = text.find('{');
        const std::size_t close = text.find('}', open);
        if (open == std::string_view::npos || close == std::string_view::npos)
            break;
        result += text.substr(0, open);
        const std::string_view name = text.substr(open + 1, close - open - 1);
        for (const auto& [figure, value] : problem.figures) {
            if (figure == name)
                result += value;
        }
        text.remove_prefix(close + 1);
    }
    result += text;
    return result;
}

/// "line 7, column 22: ", or "row 14, saddle highest: " where the sentence does not begin with the field.
std::string place_in_words(const Problem& problem) {
    if (problem.position) {
        return "line " + std::to_string(problem.position->line) + ", column " +
               std::to_string(problem.position->column) + ": ";
    }
    if (!problem.cell)
        return {};
    const std::string row = "row " + std::to_string(problem.cell->row);
    if (text_of(problem.code).sentence.starts_with("{field}: "))
        return row + ", ";
    return row + (problem.cell->column_name.empty() ? "" : ", " + problem.cell->column_name) + ": ";
}

} // namespace

Figures::Figures(std::initializer_list<Given> given) {
    list_.reserve(given.size());
    for (const auto& [name, text] : given)
        list_.emplace_back(name, text);
}

[[gnu::noinline]] Figures::Figures(const Figures& other) = default;
[[gnu::noinline]] Figures::Figures(Figures&& other) noexcept = default;
[[gnu::noinline]] Figures& Figures::operator=(const Figures& other) = default;
[[gnu::noinline]] Figures& Figures::operator=(Figures&& other) noexcept = default;
[[gnu::noinline]] Figures::~Figures() = default;

void Figures::add(std::string_view name, std::string_view text) {
    list_.emplace_back(name, text);
}

void ProblemRemover::operator()(Problem* problem) const {
    delete problem;
}

ProblemApart apart(Problem&& problem) {
    return ProblemApart(new Problem(std::move(problem)));
}

Problem Problem::within(std::string_view outer) && {
    if (where.empty())
        where = outer;
    else if (where.front() == '[')
        where = std::string(outer) + where;
    else
        where = std::string(outer) + '.' + where;
    return std::move(*this);
}

std::string_view code_name(ProblemCode code) {
    return text_of(code).name;
}

std::string sentence(const Problem& problem) {
    return place_in_words(problem) + filled_in(text_of(problem.code).sentence, problem);
}

std::string expected(const Problem& problem) {
    return filled_in(text_of(problem.code).expected, problem);
}

} // namespace saddlerule
