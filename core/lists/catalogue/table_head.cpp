#include "core/lists/catalogue/table_head.h"

#include "core/base/json/json_text.h"
#include "core/base/outcomes/figure_text.h"
#include "core/base/text/text_position.h"
#include "core/base/text/utf8_text.h"
#include "core/base/typed_text/decimal_text.h"
#include "core/lists/catalogue/bike_reader.h"
#include "core/lists/catalogue/cell_text.h"
#include "core/lists/table/spreadsheet_guard.h"

#include <algorithm>
#include <array>
#include <optional>
#include <set>
#include <span>

namespace saddlerule {
namespace {

constexpr std::array separators{',', ';', '\t'};
constexpr char remark_mark = '#';

/// A line of `# key: value`; the key is empty where the line has none.
struct RemarkLine {
    std::string key;
    std::string value;
    std::size_t row = 0;
};

/// The head as one separator makes it.
struct Attempt {
    TableRecords rows;
    std::vector<RemarkLine> remarks;
    std::vector<TableColumn> columns;
    std::size_t known = 0; ///< columns
    bool saddle_known = false;
    std::size_t filled = 0; ///< cells of the fullest of the upper rows, where none has headings
    std::size_t begin = 0;  ///< of the first row that is no line of `# key: value`, and its end
    std::size_t end = 0;

    /// One name may be in any prose; two, or a saddle height, are a header.
    bool is_header() const { return known >= 2 || saddle_known; }

    /// No line but this one need be looked at: prose has names, or a saddle height, but hardly both.
    bool is_surely_header() const { return known >= 2 && saddle_known; }

    /// The first row is one, with nothing but lines of `# key: value` above it.
    bool starts_with_header() const { return is_surely_header() && rows.begin() == begin; }
};

/// The text of a remark from the row's cells: separators inside it were its own, those behind it come from
/// spreadsheets that fill up every row.
std::string whole_remark(std::span<const TableCell> cells, char separator) {
    std::size_t count = cells.size();
    while (count > 0 && trimmed(cells[count - 1].text).empty())
        --count;
    std::string text;
    for (std::size_t i = 0; i < count; ++i) {
        if (i > 0)
            text += separator;
        text += cells[i].text;
    }
    return text;
}

/// Its name, where it is one that bare numbers of a list may count in.
std::string_view name_for_list(std::optional<LengthUnit> unit) {
    const auto* const found = std::find_if(unit_names.begin(), unit_names.end(),
                                           [&](const auto& named) { return named.second == unit; });
    return found == unit_names.end() ? std::string_view() : found->first;
}

/// Where the key ends: at the first colon, or at that behind a key in quotes, which may hold what it likes.
std::size_t end_of_key(std::string_view text) {
    const std::size_t first = text.find(':');
    if (!text.starts_with('"'))
        return first;
    for (std::size_t colon = first; colon != std::string_view::npos; colon = text.find(':', colon + 1)) {
        if (read_json(text.substr(0, colon), JsonLimits()))
            return colon;
    }
    return first;
}

RemarkLine remark_of(std::string_view text, std::size_t row) {
    text = trimmed(text.substr(1));
    const std::size_t colon = end_of_key(text);
    if (colon == std::string_view::npos)
        return {.key = {}, .value = std::string(text), .row = row};
    return {.key = std::string(trimmed(text.substr(0, colon))),
            .value = std::string(trimmed(text.substr(colon + 1))),
            .row = row};
}

/// The name that a key stands for.
std::string name_of_key(std::string_view key) {
    for (const std::string_view known : header_fields) {
        if (letters_of(known) == letters_of(key))
            return std::string(known);
    }
    if (key.starts_with('"')) {
        const auto name = read_json(key, JsonLimits());
        if (name && name->kind == JsonValue::Kind::text)
            return name->text;
    }
    return std::string(key);
}

/// What people write for the units or the currency of a list, in the words of the JSON form.
std::string_view strict_word(std::string_view name, std::string_view text, std::string& code) {
    if (name == "units")
        return name_for_list(unit_from_text(text));
    if (name == "currency") {
        const auto currency = currency_named(text);
        code = currency ? currency->code() : std::string_view();
    }
    return code;
}

/// Texts by nature; whatever else a list says of itself may be a figure or a flag.
const CatalogueField* field_like(std::string_view name) {
    const bool is_known = std::find(header_fields.begin(), header_fields.end(), name) != header_fields.end();
    return is_known && name != "version" ? field_named("notes") : nullptr;
}

void take_columns(Attempt& attempt) {
    attempt.columns.clear();
    std::string unguarded;
    for (const TableCell& cell : attempt.rows.cells())
        attempt.columns.push_back(column_of(without_guard(trimmed(cell.text), unguarded)));
    while (!attempt.columns.empty() && attempt.columns.back().heading.empty())
        attempt.columns.pop_back();
    settle_own_words(attempt.columns);
    attempt.known = 0;
    attempt.saddle_known = false;
    for (const TableColumn& column : attempt.columns) {
        attempt.known += column.field ? 1 : 0;
        attempt.saddle_known |= column.name == "saddle_lowest" || column.name == "saddle_highest";
    }
}

std::size_t filled_cells(std::span<const TableCell> cells) {
    return static_cast<std::size_t>(std::count_if(
        cells.begin(), cells.end(), [](const TableCell& cell) { return !trimmed(cell.text).empty(); }));
}

/// The rows in which headings are looked for: clubs write a title, a date and an address above them.
constexpr std::size_t upper_rows = 10;

std::string title_of(std::span<const TableCell> cells) {
    std::string title;
    for (const TableCell& cell : cells) {
        const std::string_view text = trimmed(cell.text);
        if (!text.empty())
            title.append(title.empty() ? "" : ", ").append(text);
    }
    return title;
}

/// What is above the headings and is no line of `# key: value`: the title comes first.
void take_titles(Attempt& attempt, TableRecords rows) {
    bool titled = std::any_of(attempt.remarks.begin(), attempt.remarks.end(),
                              [](const RemarkLine& remark) { return name_of_key(remark.key) == "title"; });
    while (rows.next() && rows.row() < attempt.rows.row()) {
        const std::string title = title_of(rows.cells());
        if (title.starts_with(remark_mark)) {
            attempt.remarks.push_back(remark_of(title, rows.row()));
            continue;
        }
        attempt.remarks.push_back({.key = titled ? "" : "title", .value = title, .row = rows.row()});
        titled = true;
    }
}

/// Goes to the row of the upper ones that says most. Where none says anything, to the first that is more than half as full as the
/// fullest.
void find_row(Attempt& attempt) {
    const TableRecords before_first = attempt.rows.before_this_row();
    std::size_t best = 0;
    std::size_t most = 0;
    attempt.rows = before_first;
    for (std::size_t i = 0; i < upper_rows && attempt.rows.next(); ++i) {
        take_columns(attempt);
        if (attempt.is_header() && attempt.known > most) {
            most = attempt.known;
            best = attempt.rows.row();
        }
        attempt.filled = std::max(attempt.filled, filled_cells(attempt.rows.cells()));
        if (attempt.is_surely_header())
            break;
    }
    attempt.rows = before_first;
    while (attempt.rows.next() &&
           (best > 0 ? attempt.rows.row() < best : 2 * filled_cells(attempt.rows.cells()) <= attempt.filled))
        ;
    take_columns(attempt);
    take_titles(attempt, before_first);
}

Attempt read_with(char separator, std::string_view text, std::size_t begin) {
    Attempt attempt{.rows = TableRecords(text, separator, begin), .remarks = {}, .columns = {}};
    while (attempt.rows.next()) {
        const std::string row = whole_remark(attempt.rows.cells(), separator);
        const bool marked = trimmed(row).starts_with(remark_mark);
        if (marked) {
            RemarkLine remark = remark_of(trimmed(row), attempt.rows.row());
            if (remark.key.empty()) // a column may well be called #
                take_columns(attempt);
            if (attempt.is_header())
                break;
            attempt.columns.clear();
            attempt.known = 0;
            attempt.remarks.push_back(std::move(remark));
            continue;
        }
        attempt.begin = attempt.rows.begin();
        attempt.end = attempt.rows.end();
        find_row(attempt);
        return attempt;
    }
    attempt.begin = attempt.rows.begin();
    attempt.end = attempt.rows.end();
    return attempt;
}

/// A cell may hold a whole table of its own, so headings at the very beginning go before more of them further down.
bool says_more(const Attempt& one, const Attempt& other) {
    if (one.starts_with_header() != other.starts_with_header())
        return one.starts_with_header();
    if (one.known != other.known)
        return one.known > other.known;
    return !other.is_header() && !other.rows.unclosed_quote() && one.filled > other.filled;
}

Attempt best_attempt(std::string_view text) {
    if (const auto line = separator_line(text))
        return read_with(line->separator, text, line->end);
    std::optional<Attempt> best;
    for (const char separator : separators) {
        Attempt attempt = read_with(separator, text, 0);
        if (!best || says_more(attempt, *best))
            best = std::move(attempt);
    }
    return *std::move(best);
}

/// What is said of the columns goes before what their headings seem to say.
void take_said(std::vector<TableColumn>& columns, const SaidColumns& said) {
    for (const auto& [field, place] : said) {
        for (TableColumn& column : columns) {
            if (column.field != field)
                continue;
            column = unknown_column(column.heading);
            if (field_named(
                    column.name)) // it is not what it is called, and must not be in the way of what is
                column.name += " 2";
        }
        if (place > 0 && place <= columns.size())
            columns[place - 1] = column_for(*field, columns[place - 1].heading);
    }
}

/// Enough of the values to know a column by.
constexpr std::size_t sketched_length = 12;

TableSketch sketch_of(const Attempt& attempt) {
    TableSketch sketch{.heading_row = attempt.rows.row(), .columns = {}};
    for (const TableColumn& column : attempt.columns)
        sketch.columns.push_back({.heading = excerpt(column.heading), .field = column.field, .values = {}});
    TableRecords rows = attempt.rows;
    for (std::size_t i = 0; i < upper_rows && rows.next(); ++i) {
        const auto cells = rows.cells();
        for (std::size_t place = 0; place < std::min(cells.size(), sketch.columns.size()); ++place) {
            std::string& values = sketch.columns[place].values;
            const std::string_view text = trimmed(cells[place].text);
            if (!text.empty() && values.size() < sketched_length)
                values.append(values.empty() ? "" : ", ").append(excerpt(text));
        }
    }
    return sketch;
}

bool starts_with_digit(const std::string& text) {
    return !text.empty() && text.front() >= '0' && text.front() <= '9';
}

/// A letter to the parents has commas too; a table of bikes has figures under two of its headings or more.
bool may_be_bikes(const TableSketch& sketch) {
    const auto figures =
        std::count_if(sketch.columns.begin(), sketch.columns.end(),
                      [](const SketchedColumn& column) { return starts_with_digit(column.values); });
    return figures >= 2;
}

Problem problem_at(ProblemCode code, std::string_view text, std::size_t offset, Figures figures) {
    return {
        .code = code, .figures = std::move(figures), .where = {}, .position = TextPositions(text).at(offset)};
}

/// The units of the header's lengths, where all have one and all agree.
std::optional<LengthUnit> units_of(const std::vector<TableColumn>& columns) {
    std::optional<LengthUnit> units;
    for (const TableColumn& column : columns) {
        if (!holds_lengths(column))
            continue;
        if (!column.unit || (units && units != column.unit))
            return std::nullopt;
        units = column.unit;
    }
    return units;
}

/// Puts what the list says of itself in JSON, with the words of the JSON form where people have their own.
class HeadWriter {
public:
    explicit HeadWriter(TableHead& head) : head_(head) {}

    void write(const std::vector<RemarkLine>& remarks) {
        head_.json.assign(1, '{');
        for (const RemarkLine& remark : remarks) {
            if (remark.key.empty() && remark.value.empty())
                continue;
            const std::string name = remark.key.empty() ? name_of_remark() : name_of_key(remark.key);
            begin(name, remark.row);
            put_value(name, remark.value);
        }
        const bool has_units = has("units");
        const std::string_view units = name_for_list(units_of(head_.columns));
        if (!has_units && !units.empty())
            put_text("units", units);
        if (const auto currency = has("currency") ? std::nullopt : currency_of_prices())
            put_text("currency", currency->code());
        head_.json += '}';
    }

private:
    bool has(std::string_view name) const {
        return std::any_of(head_.fields.begin(), head_.fields.end(),
                           [&](const auto& field) { return field.first == name; });
    }

    /// A line without a key is kept under one of its own.
    std::string name_of_remark() {
        ++remarks_;
        return remarks_ == 1 ? "remark" : "remark " + std::to_string(remarks_);
    }

    void begin(std::string_view name, std::size_t row) {
        if (!head_.fields.empty())
            head_.json += ',';
        head_.fields.emplace_back(name, row);
        append_json_text(head_.json, name);
        head_.json += ':';
    }

    void put_text(std::string_view name, std::string_view text) {
        begin(name, head_.row);
        append_json_text(head_.json, text);
    }

    void put_value(std::string_view name, const std::string& text) {
        std::string code;
        const std::string_view word = strict_word(name, text, code);
        JsonValue value;
        TextBuffer json;
        const bool given =
            read_cell(word.empty() ? text : word, field_like(name), CellContext(), value, json);
        head_.json += given ? json.view() : std::string_view("null");
    }

    /// As the heading has it, or the one that all prices name which name any.
    std::optional<Currency> currency_of_prices() const {
        const auto price = std::find_if(head_.columns.begin(), head_.columns.end(),
                                        [](const TableColumn& column) { return column.name == "price"; });
        if (price == head_.columns.end() || price->currency)
            return price == head_.columns.end() ? std::nullopt : price->currency;
        const auto index = static_cast<std::size_t>(price - head_.columns.begin());
        std::optional<Currency> named;
        TableRecords rows = head_.rows;
        while (rows.next()) {
            if (index >= rows.cells().size())
                continue;
            const auto currency = currency_in_price(trimmed(rows.cells()[index].text));
            if (currency && named && *currency != *named)
                return std::nullopt;
            if (currency)
                named = currency;
        }
        return named;
    }

    TableHead& head_;
    std::size_t remarks_ = 0; ///< without a key
};

/// The first column that has the name of an earlier one.
std::optional<std::size_t> column_twice(const std::vector<TableColumn>& columns) {
    std::set<std::string_view> names;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (!columns[i].name.empty() && !names.insert(columns[i].name).second)
            return i;
    }
    return std::nullopt;
}

/// In characters, of the texts and names in a value.
std::size_t longest_text_in(const JsonValue& value) {
    std::size_t longest = character_count(value.text);
    for (const JsonValue& item : value.items)
        longest = std::max(longest, longest_text_in(item));
    for (const JsonMember& member : value.members)
        longest = std::max({longest, character_count(member.name), longest_text_in(member.value)});
    return longest;
}

/// Of what a remark says: as JSON it may take more characters.
std::size_t longest_text_said(std::string_view value) {
    JsonValue read;
    TextBuffer json;
    return read_cell(value, field_named("notes"), CellContext(), read, json) ? longest_text_in(read) : 0;
}

Problem remark_too_long(const RemarkLine& remark, std::size_t length) {
    return {.code = ProblemCode::json_text_too_long,
            .figures = {{"limit", longest_text}, {"length", length}},
            .where = {},
            .position = {},
            .cell = CellPlace{.row = remark.row, .column_name = {}}};
}

} // namespace

bool TableSketch::has(std::string_view field_name) const {
    return std::any_of(columns.begin(), columns.end(), [&](const SketchedColumn& column) {
        return column.field && column.field->name == field_name;
    });
}

bool TableSketch::needs_a_word() const {
    const bool has_needed = (has("id") || has("name")) && has("saddle_lowest") && has("saddle_highest");
    return !has_needed && std::any_of(columns.begin(), columns.end(),
                                      [](const SketchedColumn& column) { return column.field == nullptr; });
}

Result<TableHead> read_table_head(std::string_view utf8, const SaidColumns& said, TableSketch* sketch) {
    Attempt attempt = best_attempt(utf8);
    TableRecords& rows = attempt.rows;
    take_said(attempt.columns, said);
    const bool is_table = attempt.columns.size() <= most_table_columns && !attempt.columns.empty();
    if (TableSketch seen = is_table && sketch ? sketch_of(attempt) : TableSketch(); may_be_bikes(seen))
        *sketch = std::move(seen);
    if (!attempt.is_header() && said.empty()) {
        if (const auto quote = rows.unclosed_quote())
            return problem_at(ProblemCode::table_quote_not_closed, utf8, *quote, {});
        const std::string_view line = utf8.substr(attempt.begin, attempt.end - attempt.begin);
        return problem_at(ProblemCode::table_without_header, utf8, attempt.begin,
                          {{"found", excerpt(trimmed(line.substr(0, line.find_first_of("\r\n"))))}});
    }
    if (attempt.columns.size() > most_table_columns) {
        return problem_at(ProblemCode::table_too_many_columns, utf8, rows.begin(),
                          {{"limit", most_table_columns}});
    }
    if (const auto again = column_twice(attempt.columns)) {
        const TableColumn& column = attempt.columns[*again];
        Problem problem = problem_at(ProblemCode::table_column_twice, utf8, rows.cells()[*again].begin,
                                     {{"column", excerpt(column.heading)}});
        problem.cell = CellPlace{.row = rows.row(), .column_name = excerpt(column.heading)};
        return problem;
    }
    for (const RemarkLine& remark : attempt.remarks) {
        const std::size_t length = std::max(character_count(remark.key), longest_text_said(remark.value));
        if (length > longest_text)
            return remark_too_long(remark, length);
    }
    TableHead head{.rows = rows,
                   .columns = std::move(attempt.columns),
                   .width = rows.cells().size(),
                   .row = rows.row(),
                   .json = {},
                   .fields = {}};
    HeadWriter(head).write(attempt.remarks);
    return head;
}

std::string head_line(const UnknownField& field) {
    if (field.name == "format" || field.name == "version")
        return {};
    const bool plain_key = !field.name.empty() && trimmed(field.name) == field.name &&
                           field.name.find_first_of(":\"\r\n") == std::string::npos &&
                           field.name.find('\0') == std::string::npos &&
                           name_of_key(field.name) == field.name;
    std::string line = "# ";
    if (plain_key)
        line += field.name;
    else
        append_json_text(line, field.name);
    line += ": ";
    const auto value = read_json(field.json, JsonLimits());
    if (!value)
        return {};
    const CatalogueField* like = field_like(field.name);
    std::string text =
        cell_of_json(like ? like->name : std::string_view(), *value, field.json, CellContext());
    std::string code;
    const std::string_view word = strict_word(field.name, text, code);
    return line + (word.empty() || word == text ? text : field.json);
}

} // namespace saddlerule
