#include "core/lists/keeping/entry_text.h"

#include "core/base/json/json_text.h"
#include "core/base/outcomes/figure_text.h"
#include "core/base/text/utf8_text.h"
#include "core/base/typed_text/decimal_text.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace saddlerule {
namespace {

using Kind = JsonValue::Kind;

/// A field with its value's own text.
struct FieldText {
    std::string_view name;
    std::string json;
};

/// The place in the table of fields; behind all of them for a field that is not known.
std::size_t rank_of(std::string_view name) {
    const CatalogueField* field = field_named(name);
    return field ? static_cast<std::size_t>(field - catalogue_fields().data()) : catalogue_fields().size();
}

void put(std::vector<FieldText>& fields, FieldText added) {
    const auto named = [&](const FieldText& field) { return field.name == added.name; };
    const auto found = std::find_if(fields.begin(), fields.end(), named);
    const bool taken_out = added.json.empty();
    if (found == fields.end()) {
        const auto later = std::find_if(fields.begin(), fields.end(), [&](const FieldText& field) {
            return rank_of(field.name) > rank_of(added.name);
        });
        if (!taken_out)
            fields.insert(later, std::move(added));
        return;
    }
    // Where the field came twice, one is left.
    fields.erase(std::remove_if(taken_out ? found : found + 1, fields.end(), named), fields.end());
    if (!taken_out)
        found->json = std::move(added.json);
}

std::string written(const std::vector<FieldText>& fields) {
    std::string text = "{";
    for (const FieldText& field : fields) {
        text += text.size() > 1 ? ", " : " ";
        append_json_text(text, field.name);
        text += ": ";
        text += field.json;
    }
    return text + (fields.empty() ? "}" : " }");
}

} // namespace

Result<JsonValue> read_entry(std::string_view source) {
    // Inside a list: its braces and the brackets around its bikes are levels, too.
    constexpr JsonLimits limits{
        .depth = JsonLimits().depth - 2, .text_length = largest_file, .values = JsonLimits().values};
    return read_json(source, limits);
}

CellContext cell_context(const ReadingFacts& facts) {
    return {.units = facts.units, .currency = facts.currency};
}

std::string entry_with(std::string_view source, std::span<const FieldCell> cells,
                       const CellContext& context) {
    const auto entry = read_entry(source);
    std::vector<FieldText> fields;
    if (entry) {
        for (const JsonMember& member : entry->members)
            fields.push_back({member.name, std::string(source.substr(
                                               member.value.begin, member.value.end - member.value.begin))});
    }
    for (const FieldCell& cell : cells) {
        if (!entry || cell.cell.empty() || cell_of(*entry, source, cell.name, context) != cell.cell)
            put(fields, {cell.name, json_of_cell(cell.name, cell.cell, context)});
    }
    return written(fields);
}

std::vector<FieldCell> cells_of(const JsonValue& entry, std::string_view source, const CellContext& context) {
    std::vector<FieldCell> cells;
    for (const JsonMember& member : entry.members) {
        if (entry.find(member.name) == &member && member.value.kind != Kind::null)
            cells.push_back({member.name, cell_of_json(member.name, member.value, source, context)});
    }
    return cells;
}

std::string bare_figure(const JsonValue& length, std::string_view source) {
    const std::string_view as_written = source.substr(length.begin, length.end - length.begin);
    if (length.kind != Kind::number)
        return length.text;
    constexpr int decimals = 6; // JSON has figures such as 4.95e1, which nobody types
    return read_decimal(as_written) ? std::string(as_written) : figure_text(length.number, decimals);
}

std::string bare_with_unit(const JsonValue& length, std::string_view source, LengthUnit unit) {
    return bare_figure(length, source) + ' ' + std::string(unit_name(unit));
}

std::string cell_of(const JsonValue& entry, std::string_view source, std::string_view field,
                    const CellContext& context) {
    const JsonMember* member = entry.find(field);
    return member && member->value.kind != Kind::null ? cell_of_json(field, member->value, source, context)
                                                      : std::string();
}

} // namespace saddlerule
