// RequestFields: reads one JSON object of a request field by field, remembers the first problem, and refuses
// what nobody asked for. After a problem every further read gives its default, so that a reader is a plain
// list of its fields.
#pragma once

#include "core/base/json/located_json.h"
#include "core/base/outcomes/problem.h"
#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/closed_range.h"
#include "core/base/quantities/length.h"
#include "core/base/quantities/mass.h"
#include "core/base/typed_text/length_text.h"
#include "core/base/typed_text/mass_text.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// A name on the wire and the value it stands for.
template <typename Value>
struct WireName {
    std::string_view name;
    Value value;
};

/// The units that people type in.
constexpr WireName<LengthUnit> typing_units[] = {
    {"cm", LengthUnit::centimetre},
    {"in", LengthUnit::inch},
    {"mm", LengthUnit::millimetre},
};

constexpr WireName<MassUnit> weighing_units[] = {{"kg", MassUnit::kilogram}, {"lb", MassUnit::pound}};

/// The name that stands for `value`.
template <typename Value, std::size_t count>
std::string_view wire_name(const WireName<Value> (&names)[count], Value value) {
    for (const auto& entry : names) {
        if (entry.value == value)
            return entry.name;
    }
    return {};
}

class RequestFields {
public:
    /// `path` leads every problem's `where`: "rider", "rider.readings[0]"; empty for the request itself.
    RequestFields(const JsonValue& object, std::string path);

    /// Absent and null are the same: not given.
    const JsonValue* optional(std::string_view name);

    /// Where that makes a difference: null takes something out.
    bool given_as_null(std::string_view name);

    std::optional<std::string> optional_text(std::string_view name);
    std::optional<std::vector<std::string>> optional_texts(std::string_view name);
    /// The items of a list; none where it is absent. `kind` is the word for such a list.
    std::span<const JsonValue> optional_list(std::string_view name, ProblemWord kind);
    std::optional<double> optional_number(std::string_view name, ClosedRange<double> allowed);
    std::optional<bool> optional_flag(std::string_view name);
    /// `YYYY-MM-DD`.
    std::optional<CalendarDate> optional_day(std::string_view name);
    /// `YYYY-MM-DD`, or `YYYY-MM` for the middle of that month.
    std::optional<CalendarDate> optional_day_or_month(std::string_view name);
    /// A length given either as a number of millimetres in `<name>_mm`, or as typed text in `name`, whose
    /// bare numbers count in the unit that `unit_name` gives (cm where it is absent).
    std::optional<Length> optional_length(std::string_view name, std::string_view unit_name,
                                          ClosedRange<Length> allowed);

    /// A mass given either as a number of kilograms in `<name>_kg`, or as typed text in `name`, whose bare numbers
    /// count in the unit that `<name>_unit` gives (kg where it is absent).
    std::optional<Mass> optional_mass(std::string_view name, ClosedRange<Mass> allowed);

    CalendarDate required_day(std::string_view name);

    template <typename Value, std::size_t count>
    std::optional<Value> optional_choice(std::string_view name, const WireName<Value> (&choices)[count]) {
        const auto text = optional_text(name);
        if (!text)
            return std::nullopt;
        for (const auto& choice : choices) {
            if (choice.name == *text)
                return choice.value;
        }
        report(name, ProblemCode::request_value_unknown, {{"value", *text}, {"known", all_names(choices)}});
        return std::nullopt;
    }

    /// Reports a missing field.
    void require(bool present, std::string_view name, const ProblemFigure& kind);
    void report(std::string_view name, ProblemCode code, Figures figures);
    void report(Problem problem);

    const std::string& path() const { return path_; }
    std::string path_of(std::string_view name) const;

    /// Call when every field was asked for: what is left over is refused by name. The first problem, if any.
    [[nodiscard]] std::optional<Problem> finish();

private:
    const JsonValue& object_;
    std::string path_;
    std::vector<std::string> known_;
    std::optional<Problem> first_problem_;
};

/// `name[index]`, as paths have it.
std::string with_index(std::string_view name, std::size_t index);

} // namespace saddlerule
