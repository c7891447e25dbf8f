#include "core/base/typed_text/length_text.h"

#include "core/base/text/ascii_case.h"
#include "core/base/typed_text/decimal_text.h"

#include <algorithm>
#include <iterator>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

/// Above this nothing on a bike or a child is measured; the caller's own limits are narrower.
constexpr Length largest = Length::metres(100.0);

struct UnitName {
    std::string_view name;
    LengthUnit unit;
};

constexpr UnitName unit_names[] = {
    {"mm", LengthUnit::millimetre},
    {"millimetre", LengthUnit::millimetre},
    {"millimetres", LengthUnit::millimetre},
    {"millimeter", LengthUnit::millimetre},
    {"millimeters", LengthUnit::millimetre},
    {"mm.", LengthUnit::millimetre},
    {"millim\xC3\xA8tre", LengthUnit::millimetre},
    {"millim\xC3\xA8tres", LengthUnit::millimetre},
    {"mil\xC3\xADmetro", LengthUnit::millimetre},
    {"mil\xC3\xADmetros", LengthUnit::millimetre},
    {"cm", LengthUnit::centimetre},
    {"centimetre", LengthUnit::centimetre},
    {"centimetres", LengthUnit::centimetre},
    {"centimeter", LengthUnit::centimetre},
    {"centimeters", LengthUnit::centimetre},
    {"cm.", LengthUnit::centimetre},
    {"cms", LengthUnit::centimetre},
    {"zentimeter", LengthUnit::centimetre},
    {"centim\xC3\xA8tre", LengthUnit::centimetre},
    {"centim\xC3\xA8tres", LengthUnit::centimetre},
    {"cent\xC3\xADmetro", LengthUnit::centimetre},
    {"cent\xC3\xADmetros", LengthUnit::centimetre},
    {"m", LengthUnit::metre},
    {"metre", LengthUnit::metre},
    {"metres", LengthUnit::metre},
    {"meter", LengthUnit::metre},
    {"meters", LengthUnit::metre},
    {"m.", LengthUnit::metre},
    {"m\xC3\xA8tre", LengthUnit::metre},
    {"m\xC3\xA8tres", LengthUnit::metre},
    {"metro", LengthUnit::metre},
    {"metros", LengthUnit::metre},
    {"in", LengthUnit::inch},
    {"in.", LengthUnit::inch},
    {"inch", LengthUnit::inch},
    {"inches", LengthUnit::inch},
    {"\"", LengthUnit::inch},
    {"''", LengthUnit::inch},
    {"\xE2\x80\xB3", LengthUnit::inch}, // double prime
    {"\xE2\x80\x9D", LengthUnit::inch}, // closing quote, as phones type it
    {"zoll", LengthUnit::inch},
    {"pouce", LengthUnit::inch},
    {"pouces", LengthUnit::inch},
    {"po", LengthUnit::inch},
    {"pulgada", LengthUnit::inch},
    {"pulgadas", LengthUnit::inch},
    {"duim", LengthUnit::inch},
    {"inch.", LengthUnit::inch},
    {"ins", LengthUnit::inch},
    {"ft", LengthUnit::foot},
    {"ft.", LengthUnit::foot},
    {"foot", LengthUnit::foot},
    {"feet", LengthUnit::foot},
    {"fu\xC3\x9F", LengthUnit::foot},
    {"fuss", LengthUnit::foot},
    {"pied", LengthUnit::foot},
    {"pieds", LengthUnit::foot},
    {"pie", LengthUnit::foot},
    {"pies", LengthUnit::foot},
    {"voet", LengthUnit::foot},
    {"'", LengthUnit::foot},
    {"\xE2\x80\xB2", LengthUnit::foot}, // prime
    {"\xE2\x80\x99", LengthUnit::foot}, // apostrophe, as phones type it
};

/// The vulgar fractions that keyboards and spreadsheets produce (Unicode).
constexpr std::pair<std::string_view, double> fraction_characters[] = {
    {"\xE2\x85\x93", 1.0 / 3.0}, {"\xE2\x85\x94", 2.0 / 3.0}, {"\xC2\xBC", 0.25},
    {"\xC2\xBD", 0.5},           {"\xC2\xBE", 0.75},          {"\xE2\x85\x9B", 0.125},
    {"\xE2\x85\x9C", 0.375},     {"\xE2\x85\x9D", 0.625},     {"\xE2\x85\x9E", 0.875},
};

Problem problem_with(ProblemCode code, std::string_view text) {
    return {.code = code,
            .figures = {{"text", trimmed(text)}, {"example", ProblemWord::length_example}},
            .where = {},
            .position = {}};
}

void skip_blanks(std::string_view& text) {
    text = trimmed(text);
}

/// "1/2" or ½ at the front of `text`, which is moved past it. Nothing and unmoved when no fraction leads.
Result<std::optional<double>> take_fraction(std::string_view& text, std::string_view whole_text) {
    for (const auto& [character, value] : fraction_characters) {
        if (text.starts_with(character)) {
            text.remove_prefix(character.size());
            return std::optional<double>(value);
        }
    }
    const auto numerator = read_decimal_prefix(text);
    if (!numerator)
        return std::optional<double>();
    std::string_view rest = text.substr(numerator->length);
    skip_blanks(rest);
    constexpr std::string_view fraction_slash = "\xE2\x81\x84";
    if (rest.starts_with('/'))
        rest.remove_prefix(1);
    else if (rest.starts_with(fraction_slash))
        rest.remove_prefix(fraction_slash.size());
    else
        return std::optional<double>();
    skip_blanks(rest);
    const auto denominator = read_decimal_prefix(rest);
    if (!denominator || denominator->value == 0.0 || !numerator->whole || !denominator->whole)
        return problem_with(ProblemCode::figure_fraction_malformed, whole_text);
    text = rest.substr(denominator->length);
    return std::optional<double>(numerator->value / denominator->value);
}

/// A decimal, a fraction, or a whole number with a fraction.
Result<double> take_number(std::string_view& text, std::string_view whole_text) {
    auto leading_fraction = take_fraction(text, whole_text);
    if (!leading_fraction)
        return std::move(leading_fraction).problem();
    if (*leading_fraction)
        return **leading_fraction;
    const auto number = read_decimal_prefix(text);
    if (!number)
        return problem_with(ProblemCode::figure_not_a_number, whole_text);
    text.remove_prefix(number->length);

    std::string_view rest = text;
    skip_blanks(rest);
    if (rest.starts_with('-')) {
        rest.remove_prefix(1);
        skip_blanks(rest);
    }
    auto fraction = take_fraction(rest, whole_text);
    if (!fraction)
        return std::move(fraction).problem();
    if (!*fraction)
        return number->value;
    if (!number->whole || **fraction >= 1.0)
        return problem_with(ProblemCode::figure_fraction_malformed, whole_text);
    text = rest;
    return number->value + **fraction;
}

/// The run of characters up to the next digit, blank or hyphen.
std::string_view take_word(std::string_view& text) {
    std::size_t length = 0;
    while (length < text.size() && text[length] != ' ' && text[length] != '\t' && text[length] != '-' &&
           !(text[length] >= '0' && text[length] <= '9'))
        ++length;
    const std::string_view word = text.substr(0, length);
    text.remove_prefix(length);
    return word;
}

struct Part {
    double value;
    std::optional<LengthUnit> unit;
};

Result<Part> take_part(std::string_view& text, std::string_view whole_text) {
    auto number = take_number(text, whole_text);
    if (!number)
        return std::move(number).problem();
    skip_blanks(text);
    const std::string_view word = take_word(text);
    skip_blanks(text);
    if (word.empty())
        return Part{*number, std::nullopt};
    const auto unit = unit_from_text(word);
    if (!unit) {
        const bool another_mark = word.front() == '.' || word.front() == ',' || word.front() == '/';
        if (another_mark)
            return problem_with(ProblemCode::figure_not_a_number, whole_text);
        Problem problem = problem_with(ProblemCode::figure_unit_unknown, whole_text);
        problem.figures.add("unit", word);
        problem.figures.add("units", ProblemWord::length_units);
        return problem;
    }
    return Part{*number, unit};
}

} // namespace

std::optional<LengthUnit> unit_from_text(std::string_view text) {
    std::string lower = in_lower_case(trimmed(text));
    for (const UnitName& entry : unit_names) {
        if (entry.name == lower)
            return entry.unit;
    }
    return std::nullopt;
}

std::string_view unit_name(LengthUnit unit) {
    const auto* found = std::find_if(std::begin(unit_names), std::end(unit_names),
                                     [&](const UnitName& row) { return row.unit == unit; });
    return found->name;
}

Number length_figure(Length length, LengthUnit unit) {
    return {.value = length / length_of(1.0, unit), .unit = unit_name(unit)};
}

Length length_of(double value, LengthUnit unit) {
    switch (unit) {
    case LengthUnit::millimetre:
        return Length::millimetres(value);
    case LengthUnit::centimetre:
        return Length::centimetres(value);
    case LengthUnit::metre:
        return Length::metres(value);
    case LengthUnit::inch:
        return Length::inches(value);
    case LengthUnit::foot:
        break;
    }
    return Length::feet(value);
}

Result<Length> read_length(std::string_view text, LengthUnit bare) {
    const std::string_view whole_text = text;
    skip_blanks(text);
    if (text.empty())
        return problem_with(ProblemCode::figure_empty, whole_text);
    constexpr std::string_view minus_sign = "\xE2\x88\x92";
    if (text.starts_with('-') || text.starts_with(minus_sign))
        return problem_with(ProblemCode::figure_negative, whole_text);

    auto first = take_part(text, whole_text);
    if (!first)
        return std::move(first).problem();
    Length total = length_of(first->value, first->unit.value_or(bare));
    if (first->unit == LengthUnit::foot && !text.empty()) {
        // 1 ft 7 in, 1'7", 1'-7": what follows feet is inches, with or without saying so.
        if (text.starts_with('-')) {
            text.remove_prefix(1);
            skip_blanks(text);
        }
        auto second = take_part(text, whole_text);
        if (!second)
            return std::move(second).problem();
        if (second->unit.value_or(LengthUnit::inch) != LengthUnit::inch || second->value >= 12.0)
            return problem_with(ProblemCode::figure_not_a_number, whole_text);
        total += Length::inches(second->value);
    }
    if (!text.empty())
        return problem_with(ProblemCode::figure_not_a_number, whole_text);
    if (!(total <= largest))
        return problem_with(ProblemCode::figure_too_large, whole_text);
    return total;
}

} // namespace saddlerule
