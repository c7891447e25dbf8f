#include "core/lists/catalogue/table_catalogue_reader.h"

#include "core/base/text/text_position.h"
#include "core/lists/catalogue/bike_reader.h"
#include "core/lists/catalogue/catalogue_builder.h"
#include "core/lists/catalogue/list_header.h"
#include "core/lists/catalogue/row_writer.h"
#include "core/lists/catalogue/table_head.h"
#include "core/lists/catalogue/table_places.h"

#include <algorithm>
#include <memory>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

std::unique_ptr<TablePlaces> places_of(const TableHead& head) {
    TablePlaces::Names headings;
    for (const TableColumn& column : head.columns)
        headings.emplace_back(column.name, column.heading);
    return std::make_unique<TablePlaces>(std::move(headings), head.fields);
}

/// No more rows than that are in the text, and mostly as many.
std::size_t lines_in(std::string_view text) {
    const char line_end = text.find('\n') == std::string_view::npos ? '\r' : '\n';
    return static_cast<std::size_t>(std::count(text.begin(), text.end(), line_end)) +
           (text.ends_with(line_end) ? 0 : 1);
}

/// Format, version and bikes: a list has them too once it is saved as JSON.
constexpr std::size_t fields_of_json_form = 3;

/// A price in another currency than the list's is a column of its own.
void set_apart_other_currency(TableHead& head, const ReadingFacts& facts) {
    for (TableColumn& column : head.columns) {
        if (column.currency && column.currency != facts.currency) {
            column.name = column.heading;
            column.field = nullptr;
        }
    }
}

bool is_for_want_of_unit(const SetAside& entry) {
    return entry.problem.code == ProblemCode::bike_figure_without_unit;
}

/// Of a table that names no unit: one question is better than a sentence for each bike.
std::optional<Problem> question_of_units(const std::vector<SetAside>& set_aside, std::size_t entries) {
    const auto first = std::find_if(set_aside.begin(), set_aside.end(), is_for_want_of_unit);
    const auto count = std::count_if(set_aside.begin(), set_aside.end(), is_for_want_of_unit);
    if (2 * static_cast<std::size_t>(count) < entries || count == 0)
        return std::nullopt;
    return Problem{.code = ProblemCode::table_without_units,
                   .figures = {},
                   .where = {},
                   .position = {},
                   .cell = first->problem.cell};
}

/// To the members of an object in JSON.
void add_units(std::string& header, LengthUnit units) {
    header.pop_back();
    if (header.back() != '{')
        header += ',';
    header.append("\"units\":\"").append(unit_name(units)).append("\"}");
}

} // namespace

Result<KeptList> read_table_catalogue(std::string_view utf8, std::vector<SetAside>* refused,
                                      const ReadingOptions& options) {
    auto read = read_table_head(utf8, options.columns, options.sketch);
    if (!read)
        return std::move(read).problem();
    TableHead& head = read.value();
    auto header = read_json(head.json, JsonLimits());
    if (options.table_units && header.ok() && header->find("units") == nullptr) {
        add_units(head.json, *options.table_units);
        header = read_json(head.json, JsonLimits());
    }
    if (!header)
        return header.problem();
    const ReadingFacts facts = reading_facts(*header);
    set_apart_other_currency(head, facts);
    CatalogueBuilder builder(places_of(head));
    if (header->members.size() + fields_of_json_form > most_fields) {
        return Problem{
            .code = ProblemCode::file_too_many_fields,
            .figures = {{"count", header->members.size()}, {"limit", most_fields - fields_of_json_form}},
            .where = {},
            .position = {}};
    }
    if (auto fault = header_fault(*header, head.json, &builder.places()))
        return *std::move(fault);

    builder.read_by(facts);
    builder.list().form = ListForm::table;
    RowWriter writer(head, facts);
    TableRecords& rows = head.rows;
    const std::size_t lines = lines_in(utf8.substr(rows.end()));
    builder.list().entries.reserve(std::min(lines, most_bikes));
    builder.list().catalogue.bikes.reserve(std::min(lines, most_bikes));
    ProgressTeller teller(options.progress, utf8.size());
    while (rows.next()) {
        const JsonValue& entry = writer.write(rows.cells());
        builder.take(entry, writer.json(), rows.row(), writer.fields());
        teller.reached(rows.end());
    }
    if (const auto quote = rows.unclosed_quote()) {
        return Problem{.code = ProblemCode::table_quote_not_closed,
                       .figures = {},
                       .where = {},
                       .position = TextPositions(utf8).at(*quote),
                       .cell = CellPlace{.row = rows.row(), .column_name = {}}};
    }
    if (builder.count() == 0 && !options.to_mend) {
        return Problem{.code = ProblemCode::file_bikes_empty,
                       .figures = {},
                       .where = "bikes",
                       .position = {},
                       .cell = CellPlace{.row = head.row, .column_name = {}}};
    }
    if (auto fault = builder.too_many())
        return *std::move(fault);
    take_header(*header, head.json, builder.list());
    builder.list().texts = writer.take_texts();

    const std::size_t entries = builder.count();
    std::vector<SetAside> set_aside;
    auto list = builder.finish(&set_aside, options.to_mend);
    if (!facts.units && !options.to_mend) {
        std::vector<SetAside>& in_list = list ? list.value().catalogue.set_aside : set_aside;
        if (auto question = question_of_units(in_list, entries)) {
            std::swap(set_aside, in_list);
            list = *std::move(question);
        }
    }
    if (refused)
        *refused = std::move(set_aside);
    return list;
}

} // namespace saddlerule
