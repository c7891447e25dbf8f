#include "core/lists/catalogue/table_columns.h"

#include "core/base/json/json_text.h"
#include "core/base/typed_text/decimal_text.h"
#include "core/lists/catalogue/column_words.h"

#include <algorithm>
#include <array>
#include <utility>
#include <variant>

namespace saddlerule {
namespace {

/// "Saddle lowest [in]" in its two parts.
struct HeadingParts {
    std::string_view name;
    std::string_view in_brackets;
};

HeadingParts parts_of(std::string_view heading) {
    const bool square = heading.ends_with(']');
    const std::size_t open = square                   ? heading.rfind('[')
                             : heading.ends_with(')') ? heading.rfind('(')
                                                      : std::string_view::npos;
    if (open == std::string_view::npos)
        return {.name = heading, .in_brackets = {}};
    return {.name = trimmed(heading.substr(0, open)),
            .in_brackets = trimmed(heading.substr(open + 1, heading.size() - open - 2))};
}

/// The units that are in a field's own name may be left out of it, or be put in brackets.
std::string_view without_unit(std::string_view field_name) {
    for (const std::string_view unit : {std::string_view("_kg"), std::string_view("_deg")}) {
        if (field_name.ends_with(unit))
            return field_name.substr(0, field_name.size() - unit.size());
    }
    return field_name;
}

bool is_one_of(std::string_view text, std::initializer_list<std::string_view> words) {
    return std::find(words.begin(), words.end(), text) != words.end();
}

/// Takes in what is in brackets behind a field's name. False where that changes what the figures mean in
/// a way that is not known here.
class UnitTaker {
public:
    UnitTaker(TableColumn& column, std::string_view unit, bool name_has_unit)
        : column_(column), unit_(unit), name_has_unit_(name_has_unit) {}

    bool operator()(std::optional<Length> Bike::*) {
        column_.unit = unit_from_text(unit_);
        return column_.unit.has_value();
    }
    bool operator()(std::optional<Mass> Bike::*) {
        column_.in_pounds = !name_has_unit_ && is_one_of(unit_, {"lb", "lbs", "lb.", "lbs.", "pounds"});
        return column_.in_pounds || is_one_of(unit_, {"kg", "KG", "Kg"});
    }
    bool operator()(std::optional<double> Bike::*) {
        return is_one_of(unit_, {"deg", "degrees", "\xC2\xB0", "\xC2\xBA"});
    }
    bool operator()(std::optional<Money> Bike::*) {
        column_.currency = currency_named(is_one_of(unit_, {"Euro", "euro", "euros"}) ? "EUR" : unit_);
        return column_.currency.has_value();
    }
    /// Elsewhere it is a remark: gears (number).
    template <typename Target>
    bool operator()(Target) {
        return true;
    }

private:
    TableColumn& column_;
    std::string_view unit_;
    bool name_has_unit_;
};

/// The column as that field's, with the unit that its heading has; nothing is changed where that unit is not known here.
void take_field(TableColumn& column, const CatalogueField& field, std::string_view unit, bool name_has_unit) {
    TableColumn named = column;
    named.name = field.name;
    named.field = &field;
    if (unit.empty() || std::visit(UnitTaker(named, unit, name_has_unit), field.target))
        column = std::move(named);
}

/// "Gewicht kg" and "Preis in Euro" in their two parts.
HeadingParts parts_without_brackets(std::string_view heading) {
    const std::size_t blank = heading.rfind(' ');
    const std::string_view last = blank == std::string_view::npos ? heading : heading.substr(blank + 1);
    const bool is_unit = unit_from_text(last) || currency_named(last) ||
                         is_one_of(last, {"kg", "KG", "Kg", "lb", "lbs", "Euro", "euro", "euros"});
    if (blank == std::string_view::npos || !is_unit)
        return {.name = {}, .in_brackets = {}};
    HeadingParts parts{.name = trimmed(heading.substr(0, blank)), .in_brackets = last};
    if (parts.name.ends_with(" in") || parts.name.ends_with(" en"))
        parts.name = trimmed(parts.name.substr(0, parts.name.size() - 3));
    return parts;
}

/// The field that a heading names, with the unit behind it; nothing is changed where it names none.
void find_field(TableColumn& column) {
    const HeadingParts parts = parts_of(column.heading);
    const std::string letters = letters_of(parts.name);
    for (const CatalogueField& field : catalogue_fields()) {
        const bool whole_name = letters == letters_of(field.name);
        const std::string_view short_name = without_unit(field.name);
        if (!whole_name && letters != letters_of(short_name))
            continue;
        take_field(column, field, parts.in_brackets, whole_name && short_name != field.name);
        return;
    }
    column.in_own_words = true;
    for (const HeadingParts& read : {parts_without_brackets(column.heading), parts}) {
        const CatalogueField* field = column.field ? nullptr : field_in_own_words(read.name);
        if (field)
            take_field(column, *field, read.in_brackets, false);
    }
    column.in_own_words = column.field != nullptr;
}

} // namespace

TableColumn column_of(std::string_view heading) {
    heading = trimmed(heading);
    TableColumn column = unknown_column(heading);
    const bool exact = heading.size() > 1 && heading.starts_with('"') && heading.ends_with('"');
    if (exact) {
        const auto name = read_json(heading, JsonLimits());
        if (name && name->kind == JsonValue::Kind::text) {
            column.name = name->text;
            column.field = field_named(column.name);
            return column;
        }
    }
    find_field(column);
    return column;
}

TableColumn unknown_column(std::string_view heading) {
    TableColumn column;
    column.heading = heading;
    column.name = heading;
    return column;
}

TableColumn column_for(const CatalogueField& field, std::string_view heading) {
    for (const HeadingParts& read : {parts_of(heading), parts_without_brackets(heading), HeadingParts()}) {
        TableColumn column = unknown_column(heading);
        take_field(column, field, read.in_brackets, false);
        if (column.field && (!read.in_brackets.empty() || read.name.empty()))
            return column;
    }
    return unknown_column(heading);
}

void settle_own_words(std::vector<TableColumn>& columns) {
    for (TableColumn& column : columns) {
        const auto has_it_first = [&](const TableColumn& other) {
            return other.field == column.field && (!other.in_own_words || &other < &column);
        };
        if (!column.in_own_words || std::none_of(columns.begin(), columns.end(), has_it_first))
            continue;
        column = unknown_column(column.heading);
    }
}

std::string heading_of(std::string_view field_name) {
    // Separators in a name could make another one seem to suit the header better.
    constexpr std::string_view never_plain(",;\t\r\n\0", 6);
    const TableColumn column = column_of(field_name);
    const bool plain = column.name == field_name && column.field == field_named(field_name) &&
                       !field_name.starts_with('#') &&
                       field_name.find_first_of(never_plain) == std::string_view::npos;
    if (plain)
        return std::string(field_name);
    std::string json;
    append_json_text(json, field_name);
    std::string heading;
    for (const char c : json) {
        if (c == ',')
            heading += "\\u002c";
        else if (c == ';')
            heading += "\\u003b";
        else
            heading += c;
    }
    return heading;
}

bool holds_lengths(const TableColumn& column) {
    return column.field && std::holds_alternative<std::optional<Length> Bike::*>(column.field->target);
}

} // namespace saddlerule
