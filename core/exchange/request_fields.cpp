#include "core/exchange/request_fields.h"

#include "core/base/typed_text/length_text.h"

#include <algorithm>

namespace saddlerule {
namespace {

KnownNames either(std::string one, std::string_view other) {
    return {.are = KnownNames::Are::either, .names = {std::move(one), std::string(other)}};
}

} // namespace

RequestFields::RequestFields(const JsonValue& object, std::string path)
    : object_(object), path_(std::move(path)) {
    if (object.kind != JsonValue::Kind::object)
        report("", ProblemCode::request_field_wrong_type,
               {{"found", object.kind_name()}, {"kind", ProblemWord::group_in_braces}});
}

const JsonValue* RequestFields::optional(std::string_view name) {
    known_.emplace_back(name);
    if (first_problem_)
        return nullptr;
    const JsonMember* member = object_.find(name);
    if (!member || member->value.kind == JsonValue::Kind::null)
        return nullptr;
    return &member->value;
}

bool RequestFields::given_as_null(std::string_view name) {
    known_.emplace_back(name);
    const JsonMember* member = object_.find(name);
    return member && member->value.kind == JsonValue::Kind::null;
}

std::optional<std::string> RequestFields::optional_text(std::string_view name) {
    const JsonValue* value = optional(name);
    if (!value)
        return std::nullopt;
    if (value->kind != JsonValue::Kind::text) {
        report(name, ProblemCode::request_field_wrong_type,
               {{"found", value->kind_name()}, {"kind", ProblemWord::text_in_double_quotes}});
        return std::nullopt;
    }
    return value->text;
}

std::optional<std::vector<std::string>> RequestFields::optional_texts(std::string_view name) {
    const JsonValue* value = optional(name);
    if (!value)
        return std::nullopt;
    std::vector<std::string> texts;
    const auto is_text = [](const JsonValue& item) { return item.kind == JsonValue::Kind::text; };
    if (value->kind != JsonValue::Kind::array ||
        !std::all_of(value->items.begin(), value->items.end(), is_text)) {
        report(name, ProblemCode::request_field_wrong_type,
               {{"found", value->kind_name()}, {"kind", ProblemWord::list_of_texts}});
        return std::nullopt;
    }
    for (const JsonValue& item : value->items)
        texts.push_back(item.text);
    return texts;
}

std::span<const JsonValue> RequestFields::optional_list(std::string_view name, ProblemWord kind) {
    const JsonValue* value = optional(name);
    if (!value)
        return {};
    if (value->kind != JsonValue::Kind::array) {
        report(name, ProblemCode::request_field_wrong_type, {{"found", value->kind_name()}, {"kind", kind}});
        return {};
    }
    return value->items;
}

std::optional<double> RequestFields::optional_number(std::string_view name, ClosedRange<double> allowed) {
    const JsonValue* value = optional(name);
    if (!value)
        return std::nullopt;
    if (value->kind != JsonValue::Kind::number) {
        report(name, ProblemCode::request_field_wrong_type,
               {{"found", value->kind_name()}, {"kind", ProblemWord::a_number}});
        return std::nullopt;
    }
    if (!allowed.contains(value->number)) {
        report(name, ProblemCode::request_value_out_of_range,
               {{"value", Number{value->number}},
                {"low", Number{allowed.low()}},
                {"high", Number{allowed.high()}}});
        return std::nullopt;
    }
    return value->number;
}

std::optional<bool> RequestFields::optional_flag(std::string_view name) {
    const JsonValue* value = optional(name);
    if (!value)
        return std::nullopt;
    if (value->kind != JsonValue::Kind::boolean) {
        report(name, ProblemCode::request_field_wrong_type,
               {{"found", value->kind_name()}, {"kind", ProblemWord::true_or_false}});
        return std::nullopt;
    }
    return value->boolean;
}

std::optional<CalendarDate> RequestFields::optional_day(std::string_view name) {
    const auto text = optional_text(name);
    if (!text)
        return std::nullopt;
    const auto day = CalendarDate::from_iso(*text);
    if (!day)
        report(name, ProblemCode::request_date_malformed,
               {{"value", *text}, {"form", ProblemWord::day_form}});
    return day;
}

std::optional<CalendarDate> RequestFields::optional_day_or_month(std::string_view name) {
    const auto text = optional_text(name);
    if (!text)
        return std::nullopt;
    if (const auto month = CalendarMonth::from_iso(*text))
        return month->middle();
    const auto day = CalendarDate::from_iso(*text);
    if (!day)
        report(name, ProblemCode::request_date_malformed,
               {{"value", *text}, {"form", ProblemWord::day_or_month_form}});
    return day;
}

std::optional<Length> RequestFields::optional_length(std::string_view name, std::string_view unit_name,
                                                     ClosedRange<Length> allowed) {
    const std::string in_millimetres = std::string(name) + "_mm";
    const auto limits =
        *ClosedRange<double>::between(allowed.low().in_millimetres(), allowed.high().in_millimetres());
    if (const auto number = optional_number(in_millimetres, limits)) {
        if (object_.find(name))
            report(name, ProblemCode::request_field_unknown,
                   {{"field", name}, {"known", either(in_millimetres, name)}});
        known_.emplace_back(name);
        known_.emplace_back(unit_name);
        return Length::millimetres(*number);
    }
    const LengthUnit unit = optional_choice(unit_name, typing_units).value_or(LengthUnit::centimetre);
    const auto text = optional_text(name);
    if (!text)
        return std::nullopt;
    auto length = read_length(*text, unit);
    if (!length) {
        Problem problem = std::move(length).problem();
        problem.where = path_of(name);
        report(std::move(problem));
        return std::nullopt;
    }
    if (!allowed.contains(*length)) {
        report(
            name, ProblemCode::request_value_out_of_range,
            {{"value", *text}, {"low", Number{limits.low(), "mm"}}, {"high", Number{limits.high(), "mm"}}});
        return std::nullopt;
    }
    return *length;
}

std::optional<Mass> RequestFields::optional_mass(std::string_view name, ClosedRange<Mass> allowed) {
    const std::string in_kilograms = std::string(name) + "_kg";
    const std::string unit_name = std::string(name) + "_unit";
    const auto limits =
        *ClosedRange<double>::between(allowed.low().in_kilograms(), allowed.high().in_kilograms());
    if (const auto number = optional_number(in_kilograms, limits)) {
        if (object_.find(name))
            report(name, ProblemCode::request_field_unknown,
                   {{"field", name}, {"known", either(in_kilograms, name)}});
        known_.emplace_back(name);
        known_.emplace_back(unit_name);
        return Mass::kilograms(*number);
    }
    const MassUnit unit = optional_choice(unit_name, weighing_units).value_or(MassUnit::kilogram);
    const auto text = optional_text(name);
    if (!text)
        return std::nullopt;
    auto mass = read_mass(*text, unit);
    if (!mass) {
        Problem problem = std::move(mass).problem();
        problem.where = path_of(name);
        report(std::move(problem));
        return std::nullopt;
    }
    if (!allowed.contains(*mass)) {
        report(
            name, ProblemCode::request_value_out_of_range,
            {{"value", *text}, {"low", Number{limits.low(), "kg"}}, {"high", Number{limits.high(), "kg"}}});
        return std::nullopt;
    }
    return *mass;
}

CalendarDate RequestFields::required_day(std::string_view name) {
    const auto day = optional_day(name);
    require(day.has_value(), name, ProblemWord::day);
    return day.value_or(*CalendarDate::from_ymd(2000, 1, 1));
}

void RequestFields::require(bool present, std::string_view name, const ProblemFigure& kind) {
    if (!present)
        report(name, ProblemCode::request_field_missing, {{"field", name}, {"kind", kind}});
}

void RequestFields::report(std::string_view name, ProblemCode code, Figures figures) {
    report({.code = code, .figures = std::move(figures), .where = path_of(name), .position = {}});
}

void RequestFields::report(Problem problem) {
    if (!first_problem_)
        first_problem_ = std::move(problem);
}

std::string RequestFields::path_of(std::string_view name) const {
    if (path_.empty() || name.empty())
        return path_ + std::string(name);
    return path_ + '.' + std::string(name);
}

std::optional<Problem> RequestFields::finish() {
    for (std::size_t i = 0; i < object_.members.size() && !first_problem_; ++i) {
        const std::string& name = object_.members[i].name;
        if (std::find(known_.begin(), known_.end(), name) == known_.end()) {
            report(name, ProblemCode::request_field_unknown,
                   {{"field", name}, {"known", KnownNames{.names = known_}}});
        }
        for (std::size_t j = 0; j < i; ++j) {
            if (object_.members[j].name == name)
                report(name, ProblemCode::request_field_twice, {{"field", name}});
        }
    }
    return std::move(first_problem_);
}

std::string with_index(std::string_view name, std::size_t index) {
    return std::string(name) + '[' + std::to_string(index) + ']';
}

} // namespace saddlerule
