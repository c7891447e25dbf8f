#include "core/lists/keeping/table_list_writer.h"

#include "core/base/sorting/sorting.h"
#include "core/lists/catalogue/bike_reader.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/cell_text.h"
#include "core/lists/catalogue/list_header.h"
#include "core/lists/catalogue/table_columns.h"
#include "core/lists/catalogue/table_head.h"
#include "core/lists/keeping/entry_text.h"
#include "core/lists/table/spreadsheet_guard.h"
#include "core/lists/table/table_writing.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <string_view>
#include <utility>

namespace saddlerule {
namespace {

/// Columns that every table has: a header is known by its names.
constexpr std::array<std::string_view, 4> usual_columns{"id", "name", "saddle_lowest", "saddle_highest"};

/// The columns of a table as they are found entry by entry.
class Columns {
public:
    Columns() : known_(catalogue_fields().size(), false) {
        for (const std::string_view name : usual_columns)
            add(name);
    }

    /// False where the table would get too wide; then nothing is added.
    bool add_all(const JsonValue& entry) {
        const auto is_new = [&](const JsonMember& member) { return !has(member.name); };
        const auto fresh = std::count_if(entry.members.begin(), entry.members.end(), is_new);
        if (count_ + static_cast<std::size_t>(fresh) > most_table_columns)
            return false;
        for (const JsonMember& member : entry.members)
            add(member.name);
        return true;
    }

    /// In the order of the table. Call when all entries are in.
    std::vector<std::string> in_order() const {
        std::vector<std::string> names;
        for (const CatalogueField& field : catalogue_fields()) {
            if (known_[index_of(field)])
                names.emplace_back(field.name);
        }
        // What is under no name comes after all others.
        for (const std::string& name : unknown_) {
            if (!name.empty())
                names.push_back(name);
        }
        if (unknown_places_.contains(""))
            names.emplace_back();
        return names;
    }

private:
    static std::size_t index_of(const CatalogueField& field) {
        return static_cast<std::size_t>(&field - catalogue_fields().data());
    }

    bool has(const std::string& name) const {
        const CatalogueField* field = field_named(name);
        return field ? known_[index_of(*field)] : unknown_places_.contains(name);
    }

    void add(std::string_view name) {
        const std::string text(name);
        if (has(text))
            return;
        ++count_;
        if (const CatalogueField* field = field_named(name)) {
            known_[index_of(*field)] = true;
        } else {
            unknown_places_.emplace(text, unknown_.size());
            unknown_.push_back(text);
        }
    }

    std::vector<bool> known_; ///< by the table of fields
    std::vector<std::string> unknown_;
    std::map<std::string, std::size_t> unknown_places_;
    std::size_t count_ = 0;
};

bool says_a_field_twice(const JsonValue& entry) {
    std::vector<std::string_view> names;
    names.reserve(entry.members.size());
    for (const JsonMember& member : entry.members)
        names.push_back(member.name);
    heap_sort(names);
    return std::adjacent_find(names.begin(), names.end()) != names.end();
}

/// What of the entry no row can hold, in a few words.
std::optional<ProblemFigure> not_for_a_row(const JsonValue& entry) {
    if (entry.kind != JsonValue::Kind::object)
        return entry.kind_name();
    if (entry.members.empty())
        return ProblemWord::a_bike_without_fields;
    if (says_a_field_twice(entry))
        return ProblemWord::a_field_twice;
    return std::nullopt;
}

class TableWriter {
public:
    TableWriter(const KeptList& list, const TableForm& form)
        : list_(list), form_(form), context_(cell_context(list.facts)) {}

    TableText write(const std::vector<std::size_t>& numbers) {
        const std::vector<std::size_t> held = choose(numbers);
        write_head();
        for (const std::size_t number : held)
            write_row(number);
        return std::move(result_);
    }

private:
    /// The numbers of those that a row can hold; their columns are known then.
    std::vector<std::size_t> choose(const std::vector<std::size_t>& numbers) {
        std::vector<std::size_t> held;
        Columns columns;
        for (const std::size_t number : numbers) {
            const std::string_view source = list_.entries[number - 1].source;
            const auto entry = read_entry(source);
            if (!entry) {
                leave_out(number, JsonValue(), source, entry.problem());
                continue;
            }
            auto found = not_for_a_row(*entry);
            if (!found && !columns.add_all(*entry))
                found = ProblemWord::too_many_columns;
            if (found) {
                leave_out(number, *entry, source,
                          {.code = ProblemCode::table_cannot_hold,
                           .figures = {{"found", *std::move(found)}},
                           .where = entry_path(number),
                           .position = {}});
            } else {
                held.push_back(number);
            }
        }
        columns_ = columns.in_order();
        for (std::size_t i = 0; i < columns_.size(); ++i)
            places_.emplace(columns_[i], i);
        return held;
    }

    void leave_out(std::size_t number, const JsonValue& entry, std::string_view source, Problem problem) {
        result_.left_out.push_back(set_aside_entry(entry, number, std::move(problem), source));
    }

    void write_head() {
        for (const UnknownField& field : list_.header) {
            const std::string line = head_line(field);
            if (line.empty())
                continue;
            append_table_cell(result_.text, line, form_.separator);
            result_.text += table_line_end;
        }
        std::vector<std::string> headings;
        for (const std::string& name : columns_)
            headings.push_back(heading_of(name));
        write_cells(headings);
    }

    void write_row(std::size_t number) {
        const std::string_view source = list_.entries[number - 1].source;
        const auto entry = read_entry(source);
        std::vector<std::string> cells(columns_.size());
        for (const JsonMember& member : entry->members) {
            cells[places_.find(member.name)->second] =
                cell_of_json(member.name, member.value, source, context_, form_.decimal_mark);
        }
        write_cells(cells);
    }

    void write_cells(const std::vector<std::string>& cells) {
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (i > 0)
                result_.text += form_.separator;
            append_table_cell(result_.text, with_guard(cells[i]), form_.separator);
        }
        result_.text += table_line_end;
    }

    const KeptList& list_;
    const TableForm& form_;
    CellContext context_;
    std::vector<std::string> columns_;
    std::map<std::string, std::size_t> places_; ///< of the columns, by name
    TableText result_;
};

} // namespace

TableText table_list(const KeptList& list, const std::vector<std::size_t>& numbers, const TableForm& form) {
    return TableWriter(list, form).write(numbers);
}

} // namespace saddlerule
