#include "core/catalogue/table_catalogue_reader.h"

#include "core/catalogue/bike_reader.h"
#include "core/catalogue/catalogue_builder.h"
#include "core/catalogue/list_header.h"
#include "core/catalogue/table_head.h"
#include "core/catalogue/table_places.h"
#include "core/json/json_text.h"
#include "core/table/spreadsheet_guard.h"
#include "core/text/text_position.h"
#include "core/typed_text/decimal_text.h"

#include <algorithm>
#include <memory>
#include <span>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

/// Puts one row after the other in JSON. The entry and its members are made once and used for all rows.
class RowWriter {
public:
    RowWriter(const TableHead& head, const ReadingFacts& facts) : width_(head.width) {
        for (const TableColumn& column : head.columns) {
            const CellContext context{.units = facts.units,
                                      .currency = facts.currency,
                                      .column_unit = column.unit,
                                      .column_in_pounds = column.in_pounds};
            std::string name(1, ',');
            append_json_text(name, column.name);
            columns_.push_back({.column = &column, .context = context, .json_name = std::move(name += ':')});
        }
        entry_.kind = JsonValue::Kind::object;
    }

    /// The entry that says what the row says, until the next one; json() is what it was read from.
    const JsonValue& write(std::span<const TableCell> cells) {
        json_.begin_next();
        json_.append('{');
        used_ = 0;
        nameless_.clear();
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const bool named = i < columns_.size() && !columns_[i].column->name.empty();
            if (named)
                add_cell(columns_[i], without_guard(cells[i].text));
            else if (!trimmed(cells[i].text).empty())
                nameless_.push_back(without_guard(trimmed(cells[i].text)));
        }
        if (!nameless_.empty() || cells.size() > width_)
            add_nameless();
        json_.append('}');
        entry_.members.resize(used_);
        columns_of_.resize(used_);
        fields_.resize(used_);
        entry_.end = json_.size();
        return entry_;
    }

    std::string_view json() const { return json_.view(); }
    /// What the rows' JSON stands in. No more can be written afterwards.
    std::vector<std::shared_ptr<const std::string>> take_texts() { return json_.take_blocks(); }
    /// Of the entry's members.
    std::span<const CatalogueField* const> fields() const { return {fields_.data(), used_}; }

private:
    struct Column {
        const TableColumn* column;
        CellContext context;
        std::string json_name; ///< between a comma and a colon
    };

    /// The next member, with its name in place and its value to be read. Given back by drop_member().
    JsonValue& next_member(const Column& column) {
        if (used_ == entry_.members.size()) {
            entry_.members.emplace_back();
            columns_of_.emplace_back();
            fields_.emplace_back();
        }
        JsonMember& member = entry_.members[used_];
        if (columns_of_[used_] != &column) { // mostly the same as in the row before
            columns_of_[used_] = &column;
            fields_[used_] = column.column->field;
            member.name = column.column->name;
        }
        const std::size_t comma = used_ > 0 ? 1 : 0;
        begin_ = json_.size();
        member.name_begin = begin_ + comma;
        json_.append(std::string_view(column.json_name).substr(1 - comma));
        ++used_;
        return member.value;
    }

    void drop_member() {
        json_.cut(begin_);
        --used_;
    }

    void add_cell(const Column& column, std::string_view cell) {
        if (cell.empty())
            return;
        JsonValue& value = next_member(column);
        if (!read_cell(cell, column.column->field, column.context, value, json_))
            drop_member();
    }

    /// What stands under no name is kept under an empty one, which no bike may have.
    void add_nameless() {
        JsonValue& value = next_member(no_column_);
        // Empty cells beyond the header are no less a sign that those before them have slipped.
        if (nameless_.empty())
            nameless_.emplace_back("\"\"");
        if (nameless_.size() == 1) {
            read_cell(nameless_.front(), nullptr, CellContext(), value, json_);
            return;
        }
        std::string list = "[";
        for (const std::string_view cell : nameless_) {
            list += list.size() > 1 ? "," : "";
            append_json_text(list, cell);
        }
        read_cell(list += ']', nullptr, CellContext(), value, json_);
    }

    std::size_t width_;
    std::vector<Column> columns_;
    TableColumn nameless_column_;
    Column no_column_{.column = &nameless_column_, .context = {}, .json_name = ",\"\":"};
    JsonValue entry_;
    std::vector<const Column*> columns_of_;     ///< its members
    std::vector<const CatalogueField*> fields_; ///< of its members
    TextBuffer json_;
    std::size_t used_ = 0;  ///< members
    std::size_t begin_ = 0; ///< of the last member in json_
    std::vector<std::string_view> nameless_;
};

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

bool is_about_units(const std::vector<SetAside>& set_aside) {
    return !set_aside.empty() && set_aside.front().problem.code == ProblemCode::bike_figure_without_unit;
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
    auto read = read_table_head(utf8);
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
        return Problem{.code = ProblemCode::file_too_many_fields,
                       .figures = {{"count", std::to_string(header->members.size())},
                                   {"limit", std::to_string(most_fields - fields_of_json_form)}},
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

    std::vector<SetAside> set_aside;
    auto list = builder.finish(&set_aside, options.to_mend);
    if (!list && !facts.units && is_about_units(set_aside)) {
        Problem problem{.code = ProblemCode::table_without_units, .figures = {}, .where = {}, .position = {}};
        problem.cell = set_aside.front().problem.cell;
        list = std::move(problem);
    }
    if (refused)
        *refused = std::move(set_aside);
    return list;
}

} // namespace saddlerule
