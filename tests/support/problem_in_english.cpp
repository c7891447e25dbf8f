#include "tests/support/problem_in_english.h"

#include "core/base/outcomes/figure_text.h"
#include "english_sentences.h"

#include <nlohmann/json.hpp>

#include <string_view>
#include <variant>

namespace saddlerule {
namespace {

const nlohmann::json& english() {
    static const nlohmann::json read = nlohmann::json::parse(english_sentences);
    return read;
}

std::string with_unit(const std::string& figure, std::string_view unit) {
    return unit.empty() ? figure : figure + english().at("units").at(std::string(unit)).get<std::string>();
}

std::string joined(const std::vector<std::string>& names, std::string_view between) {
    std::string list;
    for (const std::string& name : names)
        list.append(list.empty() ? "" : between).append(name);
    return list;
}

std::string named(const char* are, const std::string& names) {
    constexpr std::string_view mark = "{names}";
    std::string text = english().at("known_names").at(are).get<std::string>();
    return text.replace(text.find(mark), mark.size(), names);
}

const ProblemFigure* figure_of(const Problem& problem, std::string_view wanted) {
    for (const auto& [name, figure] : problem.figures) {
        if (name == wanted)
            return &figure;
    }
    return nullptr;
}

/// A text with figures in braces. `{count#once|{count} times}` is chosen by whether the figure is 1.
class Filler {
public:
    Filler(std::string_view text, const Problem& problem) : rest_(text), problem_(problem) {}

    /// Up to the end, or to a bar or brace that ends a form.
    std::string filled() {
        std::string result;
        while (!rest_.empty() && rest_.front() != '|' && rest_.front() != '}') {
            const std::string_view plain = rest_.substr(0, rest_.find_first_of("{|}"));
            result += plain;
            rest_.remove_prefix(plain.size());
            if (rest_.starts_with('{'))
                result += mark();
        }
        return result;
    }

private:
    std::string mark() {
        const std::string_view name = rest_.substr(1, rest_.find_first_of("#}") - 1);
        rest_.remove_prefix(name.size() + 1);
        const ProblemFigure* figure = figure_of(problem_, name);
        std::string said;
        if (rest_.starts_with('#')) {
            rest_.remove_prefix(1);
            std::string one = filled();
            rest_.remove_prefix(1);
            std::string many = filled();
            said = std::get<Number>(figure->value).value == 1.0 ? one : many;
        } else if (figure) {
            said = in_english(*figure);
        }
        rest_.remove_prefix(1);
        return said;
    }

    std::string_view rest_;
    const Problem& problem_;
};

std::string text_of(const Problem& problem, const char* part) {
    return english().at("problems").at(std::string(code_name(problem.code))).at(part).get<std::string>();
}

std::string place_in_words(const Problem& problem, bool named) {
    if (problem.position)
        return "line " + std::to_string(problem.position->line) + ", column " +
               std::to_string(problem.position->column) + ": ";
    if (!problem.cell)
        return {};
    const std::string row = "row " + std::to_string(problem.cell->row);
    if (named)
        return row + ", ";
    return row + (problem.cell->column_name.empty() ? "" : ", " + problem.cell->column_name) + ": ";
}

struct InEnglish {
    std::string operator()(const Quote& quote) const { return with_unit(quote.text, quote.unit); }
    std::string operator()(ProblemWord word) const {
        const std::string name(word_name(word));
        for (const char* words : {"problem_words", "request_words"}) {
            if (english().at(words).contains(name))
                return english().at(words).at(name).get<std::string>();
        }
        return english().at(name).get<std::string>(); // throws, and so fails the test
    }
    std::string operator()(const Number& number) const {
        return with_unit(figure_text(number.value, number.decimals), number.unit);
    }
    std::string operator()(CalendarDate date) const { return date.to_iso(); }
    std::string operator()(const KnownNames& known) const {
        switch (known.are) {
        case KnownNames::Are::all:
            return named("all", joined(known.names, ", "));
        case KnownNames::Are::either:
            return named("either", joined(known.names, " or "));
        case KnownNames::Are::guess:
            break;
        }
        return named("guess", joined(known.names, ", "));
    }
    std::string operator()(const std::shared_ptr<const Problem>& cause) const { return sentence(*cause); }
};

} // namespace

std::string in_english(const ProblemFigure& figure) {
    return std::visit(InEnglish(), figure.value);
}

std::string sentence(const Problem& problem) {
    const std::string text = text_of(problem, "problem");
    return place_in_words(problem, text.starts_with("{field}: ")) + Filler(text, problem).filled();
}

std::string expected(const Problem& problem) {
    return Filler(text_of(problem, "expected"), problem).filled();
}

} // namespace saddlerule
