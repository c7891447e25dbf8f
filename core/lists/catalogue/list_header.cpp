#include "core/lists/catalogue/list_header.h"

#include "core/base/outcomes/figure_text.h"
#include "core/lists/catalogue/bike_reader.h"
#include "core/lists/catalogue/catalogue_fields.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace saddlerule {
namespace {

using Kind = JsonValue::Kind;
using Fault = std::optional<Problem>;

constexpr std::string_view format_name = "saddlerule-catalogue";
constexpr int format_version = 1;

/// The problems of a header.
class HeaderProblems {
public:
    explicit HeaderProblems(EntryPlaces* places) : places_(places) {}

    Problem at(std::size_t offset, ProblemCode code, std::string_view field, Figures figures) const {
        Problem problem{
            .code = code, .figures = std::move(figures), .where = std::string(field), .position = {}};
        if (places_)
            places_->place_in_header(problem, offset, field);
        return problem;
    }

    Problem wrong_type(const JsonValue& value, std::string_view field, const ProblemFigure& kind) const {
        return at(value.begin, ProblemCode::file_field_wrong_type, field,
                  {{"field", field}, {"found", value.kind_name()}, {"kind", kind}});
    }

    /// A value that should be another text.
    Problem wrong_text(const JsonValue& value, std::string_view field, ProblemCode code,
                       std::optional<ProblemWord> known = {}) const {
        if (value.kind != Kind::text)
            return wrong_type(value, field, ProblemWord::text_in_quotes);
        Figures figures{{"field", field}, {"value", excerpt(value.text)}};
        if (known)
            figures.add("known", *known);
        return at(value.begin, code, field, std::move(figures));
    }

private:
    EntryPlaces* places_;
};

Fault format_fault(const JsonValue& header, std::string_view text, const HeaderProblems& problems) {
    const JsonValue* format = given(header, "format");
    if (format && format->kind != Kind::text)
        return problems.wrong_type(*format, "format", '"' + std::string(format_name) + '"');
    if (format && format->text != format_name) {
        return problems.at(format->begin, ProblemCode::file_format_unknown, "format",
                           {{"format", excerpt(format->text)}, {"known", format_name}});
    }
    const JsonValue* version = given(header, "version");
    if (!version)
        return std::nullopt;
    if (version->kind != Kind::number)
        return problems.wrong_type(*version, "version", ProblemWord::the_number_1);
    if (version->number == format_version)
        return std::nullopt;
    const std::string as_written = excerpt(version->written_in(text));
    if (version->number > format_version) {
        return problems.at(version->begin, ProblemCode::file_version_too_new, "version",
                           {{"version", as_written}, {"known", format_version}});
    }
    return problems.at(version->begin, ProblemCode::file_value_unknown, "version",
                       {{"field", "version"}, {"value", as_written}, {"known", format_version}});
}

} // namespace

ReadingFacts reading_facts(const JsonValue& header) {
    ReadingFacts facts;
    if (const JsonValue* units = given(header, "units")) {
        for (const auto& [name, unit] : unit_names) {
            if (units->kind == Kind::text && units->text == name)
                facts.units = unit;
        }
    }
    if (const JsonValue* currency = given(header, "currency"))
        facts.currency = Currency::from_code(currency->text);
    return facts;
}

Fault header_fault(const JsonValue& header, std::string_view text, EntryPlaces* places) {
    const HeaderProblems problems(places);
    if (header.members.size() > most_fields) {
        return problems.at(header.begin, ProblemCode::file_too_many_fields, {},
                           {{"count", header.members.size()}, {"limit", most_fields}});
    }
    // Comes before the rest: what a later version means by its other fields is not known here.
    if (auto fault = format_fault(header, text, problems))
        return fault;
    for (const JsonMember& member : header.members) {
        if (header.find(member.name) != &member)
            return problems.at(member.name_begin, ProblemCode::file_field_twice, member.name,
                               {{"field", excerpt(member.name)}});
    }
    const JsonValue* units = given(header, "units");
    if (units && !reading_facts(header).units)
        return problems.wrong_text(*units, "units", ProblemCode::file_value_unknown, ProblemWord::list_units);
    return std::nullopt;
}

void take_header(const JsonValue& header, std::string_view text, KeptList& list) {
    const HeaderProblems problems(list.places.get());
    Catalogue& catalogue = list.catalogue;
    list.facts = reading_facts(header);
    list.header.clear();
    catalogue.units = list.facts.units.value_or(LengthUnit::centimetre);
    catalogue.currency = list.facts.currency;
    catalogue.title.clear();
    catalogue.measured_on.reset();
    catalogue.unknown_fields.clear();
    catalogue.notes.clear();

    const auto keep_and_note = [&](const JsonValue& value, std::string_view name, Problem note) {
        catalogue.unknown_fields.push_back(
            {.name = std::string(name), .json = std::string(value.written_in(text))});
        catalogue.notes.push_back(std::move(note));
    };
    const JsonValue* title = given(header, "title");
    if (title && title->kind == Kind::text)
        catalogue.title = title->text;
    else if (title)
        keep_and_note(*title, "title", problems.wrong_type(*title, "title", ProblemWord::text_in_quotes));
    const JsonValue* day = given(header, "measured_on");
    if (day)
        catalogue.measured_on = CalendarDate::from_iso(day->text);
    if (day && !catalogue.measured_on) {
        keep_and_note(*day, "measured_on",
                      problems.wrong_text(*day, "measured_on", ProblemCode::file_date_malformed));
    }
    const JsonValue* currency = given(header, "currency");
    if (currency && !list.facts.currency) {
        keep_and_note(*currency, "currency",
                      problems.wrong_text(*currency, "currency", ProblemCode::file_currency_malformed));
    }
    for (const JsonMember& member : header.members) {
        if (member.name == "bikes")
            continue;
        list.header.push_back({.name = member.name, .json = std::string(member.value.written_in(text))});
        if (std::find(header_fields.begin(), header_fields.end(), member.name) == header_fields.end()) {
            keep_and_note(member.value, member.name,
                          problems.at(member.name_begin, ProblemCode::list_field_unknown, member.name,
                                      {{"field", excerpt(member.name)}, {"times", 1}}));
        }
    }
}

const JsonValue* given(const JsonValue& object, std::string_view name) {
    const JsonMember* member = object.find(name);
    return member && member->value.kind != Kind::null ? &member->value : nullptr;
}

std::string entry_path(std::size_t number) {
    return "bikes[" + std::to_string(number - 1) + ']';
}

} // namespace saddlerule
