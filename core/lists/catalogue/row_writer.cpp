#include "core/lists/catalogue/row_writer.h"

#include "core/base/json/json_text.h"
#include "core/base/typed_text/decimal_text.h"
#include "core/lists/table/spreadsheet_guard.h"

#include <utility>

namespace saddlerule {

RowWriter::RowWriter(const TableHead& head, const ReadingFacts& facts) : width_(head.width) {
    for (const TableColumn& column : head.columns) {
        std::string json_name(1, ',');
        append_json_text(json_name, column.name);
        columns_.push_back({.name = column.name,
                            .field = column.field,
                            .context = {.units = facts.units,
                                        .currency = facts.currency,
                                        .column_unit = column.unit,
                                        .column_in_pounds = column.in_pounds},
                            .json_name = std::move(json_name += ':')});
    }
    entry_.kind = JsonValue::Kind::object;
}

const JsonValue& RowWriter::write(std::span<const TableCell> cells) {
    json_.begin_next();
    json_.append('{');
    used_ = 0;
    nameless_.clear();
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i < columns_.size() && !columns_[i].name.empty())
            add_cell(columns_[i], without_guard(cells[i].text, unguarded_));
        else if (!trimmed(cells[i].text).empty())
            nameless_.emplace_back(without_guard(trimmed(cells[i].text), unguarded_));
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

/// The next member, with its name in place and its value to be read. Given back by drop_member().
JsonValue& RowWriter::next_member(const Column& column) {
    if (used_ == entry_.members.size()) {
        entry_.members.emplace_back();
        columns_of_.emplace_back();
        fields_.emplace_back();
    }
    JsonMember& member = entry_.members[used_];
    if (columns_of_[used_] != &column) { // mostly the same as in the row before
        columns_of_[used_] = &column;
        fields_[used_] = column.field;
        member.name = column.name;
    }
    const std::size_t comma = used_ > 0 ? 1 : 0;
    begin_ = json_.size();
    member.name_begin = begin_ + comma;
    json_.append(std::string_view(column.json_name).substr(1 - comma));
    ++used_;
    return member.value;
}

void RowWriter::drop_member() {
    json_.cut(begin_);
    --used_;
}

void RowWriter::add_cell(const Column& column, std::string_view cell) {
    if (cell.empty())
        return;
    JsonValue& value = next_member(column);
    if (!read_cell(cell, column.field, column.context, value, json_))
        drop_member();
}

/// What is under no name is kept under an empty one, which no bike may have.
void RowWriter::add_nameless() {
    JsonValue& value = next_member(no_column_);
    // Empty cells beyond the header are no less a sign that those before them have slipped.
    if (nameless_.empty())
        nameless_.emplace_back("\"\"");
    if (nameless_.size() == 1) {
        read_cell(nameless_.front(), nullptr, CellContext(), value, json_);
        return;
    }
    std::string list = "[";
    for (const std::string& cell : nameless_) {
        list += list.size() > 1 ? "," : "";
        append_json_text(list, cell);
    }
    read_cell(list += ']', nullptr, CellContext(), value, json_);
}

} // namespace saddlerule
