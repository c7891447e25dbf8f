#include "core/base/typed_text/mass_text.h"

#include "core/base/text/ascii_case.h"
#include "core/base/typed_text/decimal_text.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

constexpr std::array<std::pair<std::string_view, MassUnit>, 8> unit_words{{
    {"kg", MassUnit::kilogram},
    {"kgs", MassUnit::kilogram},
    {"kilo", MassUnit::kilogram},
    {"kilos", MassUnit::kilogram},
    {"lb", MassUnit::pound},
    {"lbs", MassUnit::pound},
    {"pound", MassUnit::pound},
    {"pounds", MassUnit::pound},
}};

/// As a length of that many units is too large for anything that rides.
constexpr double largest_number = 1e6;

Problem mass_problem(ProblemCode code, std::string_view text) {
    return {.code = code,
            .figures = {{"text", trimmed(text)}, {"example", ProblemWord::mass_example}},
            .where = {},
            .position = {}};
}

Mass mass_of(double value, MassUnit unit) {
    return unit == MassUnit::pound ? Mass::pounds(value) : Mass::kilograms(value);
}

} // namespace

std::optional<MassUnit> mass_unit_from_text(std::string_view text) {
    std::string lower = in_lower_case(trimmed(text));
    if (lower.ends_with('.'))
        lower.pop_back();
    const auto* const word = std::find_if(unit_words.begin(), unit_words.end(),
                                          [&](const auto& each) { return each.first == lower; });
    return word == unit_words.end() ? std::nullopt : std::optional(word->second);
}

Result<Mass> read_mass(std::string_view text, MassUnit bare) {
    const std::string_view typed = trimmed(text);
    if (typed.empty())
        return mass_problem(ProblemCode::figure_empty, text);
    if (typed.starts_with('-'))
        return mass_problem(ProblemCode::figure_negative, text);
    const auto number = read_decimal_prefix(typed);
    if (!number)
        return mass_problem(ProblemCode::figure_not_a_number, text);
    const std::string_view word = trimmed(typed.substr(number->length));
    const bool another_number = word.find_first_of(".,/0123456789") == 0;
    if (another_number)
        return mass_problem(ProblemCode::figure_not_a_number, text);
    const auto unit = word.empty() ? std::optional(bare) : mass_unit_from_text(word);
    if (!unit) {
        Problem problem = mass_problem(ProblemCode::figure_unit_unknown, text);
        problem.figures.add("unit", word);
        problem.figures.add("units", ProblemWord::mass_units);
        return problem;
    }
    if (number->value > largest_number)
        return mass_problem(ProblemCode::figure_too_large, text);
    return mass_of(number->value, *unit);
}

std::optional<Mass> mass_with_unit(std::string_view text) {
    const std::string_view typed = trimmed(text);
    const auto number = read_decimal_prefix(typed);
    const auto unit = number ? mass_unit_from_text(typed.substr(number->length)) : std::nullopt;
    return unit && number->value <= largest_number ? std::optional(mass_of(number->value, *unit))
                                                   : std::nullopt;
}

} // namespace saddlerule
