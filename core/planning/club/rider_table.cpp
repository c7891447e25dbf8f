#include "core/planning/club/rider_table.h"

#include "core/base/text/text_position.h"
#include "core/base/typed_text/decimal_text.h"
#include "core/fit/growth/reading_plausibility.h"
#include "core/lists/table/spreadsheet_guard.h"
#include "core/lists/table/table_records.h"
#include "core/lists/table/table_words.h"
#include "core/lists/table/table_writing.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <span>
#include <utility>

namespace saddlerule {
namespace {

constexpr std::size_t rows_to_look_for_headings = 10;

template <typename Value>
struct Word {
    std::string_view word;
    Value value;
};

template <typename Value, std::size_t count>
std::optional<Value> meaning(std::string_view text, const Word<Value> (&words)[count]) {
    const std::string said = plain_word(text);
    for (const auto& [word, value] : words) {
        if (said == word)
            return value;
    }
    return std::nullopt;
}

// Words in English, German, French, Spanish and Dutch, as plain_word() leaves them.

constexpr Word<RiderColumn> headings[] = {
    {"name", RiderColumn::name},
    {"number", RiderColumn::name},
    {"no", RiderColumn::name},
    {"id", RiderColumn::name},
    {"child", RiderColumn::name},
    {"rider", RiderColumn::name},
    {"kind", RiderColumn::name},
    {"nummer", RiderColumn::name},
    {"nr", RiderColumn::name},
    {"vorname", RiderColumn::name},
    {"nom", RiderColumn::name},
    {"pr\xC3\xA9nom", RiderColumn::name},
    {"enfant", RiderColumn::name},
    {"num\xC3\xA9ro", RiderColumn::name},
    {"nombre", RiderColumn::name},
    {"n\xC3\xBAmero", RiderColumn::name},
    {"ni\xC3\xB1o", RiderColumn::name},
    {"naam", RiderColumn::name},
    {"voornaam", RiderColumn::name},
    {"insideleg", RiderColumn::inseam},
    {"inseam", RiderColumn::inseam},
    {"insideleglength", RiderColumn::inseam},
    {"leg", RiderColumn::inseam},
    {"schrittl\xC3\xA4nge", RiderColumn::inseam},
    {"innenbeinl\xC3\xA4nge", RiderColumn::inseam},
    {"schritth\xC3\xB6he", RiderColumn::inseam},
    {"entrejambe", RiderColumn::inseam},
    {"entrepierna", RiderColumn::inseam},
    {"binnenbeenlengte", RiderColumn::inseam},
    {"binnenbeen", RiderColumn::inseam},
    {"shoes", RiderColumn::shoes},
    {"inshoes", RiderColumn::shoes},
    {"shoeson", RiderColumn::shoes},
    {"schuhe", RiderColumn::shoes},
    {"mitschuhen", RiderColumn::shoes},
    {"chaussures", RiderColumn::shoes},
    {"zapatos", RiderColumn::shoes},
    {"zapatillas", RiderColumn::shoes},
    {"schoenen", RiderColumn::shoes},
    {"stage", RiderColumn::stage},
    {"rides", RiderColumn::stage},
    {"howtheyride", RiderColumn::stage},
    {"riding", RiderColumn::stage},
    {"level", RiderColumn::stage},
    {"f\xC3\xA4hrt", RiderColumn::stage},
    {"fahrweise", RiderColumn::stage},
    {"k\xC3\xB6nnen", RiderColumn::stage},
    {"niveau", RiderColumn::stage},
    {"nivel", RiderColumn::stage},
    {"rijdt", RiderColumn::stage},
    {"age", RiderColumn::age},
    {"years", RiderColumn::age},
    {"alter", RiderColumn::age},
    {"\xC3\xA2ge", RiderColumn::age},
    {"edad", RiderColumn::age},
    {"leeftijd", RiderColumn::age},
    {"born", RiderColumn::born},
    {"birthday", RiderColumn::born},
    {"dateofbirth", RiderColumn::born},
    {"geboren", RiderColumn::born},
    {"geburtstag", RiderColumn::born},
    {"geburtsdatum", RiderColumn::born},
    {"n\xC3\xA9", RiderColumn::born},
    {"naissance", RiderColumn::born},
    {"nacimiento", RiderColumn::born},
    {"geboortedatum", RiderColumn::born},
    {"weight", RiderColumn::weight},
    {"gewicht", RiderColumn::weight},
    {"poids", RiderColumn::weight},
    {"peso", RiderColumn::weight},
    {"height", RiderColumn::height},
    {"stature", RiderColumn::height},
    {"gr\xC3\xB6\xC3\x9F"
     "e",
     RiderColumn::height},
    {"k\xC3\xB6rpergr\xC3\xB6\xC3\x9F"
     "e",
     RiderColumn::height},
    {"taille", RiderColumn::height},
    {"altura", RiderColumn::height},
    {"estatura", RiderColumn::height},
    {"lengte", RiderColumn::height},
    {"lichaamslengte", RiderColumn::height},
};

constexpr Word<Stage> stage_words[] = {
    {"gliding", Stage::gliding},
    {"glides", Stage::gliding},
    {"balance", Stage::gliding},
    {"balancebike", Stage::gliding},
    {"laufrad", Stage::gliding},
    {"draisienne", Stage::gliding},
    {"sinpedales", Stage::gliding},
    {"loopfiets", Stage::gliding},
    {"sidewheels", Stage::side_wheels},
    {"stabilisers", Stage::side_wheels},
    {"stabilizers", Stage::side_wheels},
    {"trainingwheels", Stage::side_wheels},
    {"st\xC3\xBCtzr\xC3\xA4"
     "der",
     Stage::side_wheels},
    {"petitesroues", Stage::side_wheels},
    {"ruedines", Stage::side_wheels},
    {"zijwieltjes", Stage::side_wheels},
    {"starting", Stage::starting},
    {"new", Stage::starting},
    {"beginner", Stage::starting},
    {"learning", Stage::starting},
    {"neu", Stage::starting},
    {"anf\xC3\xA4nger", Stage::starting},
    {"d\xC3\xA9"
     "butant",
     Stage::starting},
    {"d\xC3\xA9"
     "bute",
     Stage::starting},
    {"principiante", Stage::starting},
    {"beginnend", Stage::starting},
    {"riding", Stage::riding},
    {"rides", Stage::riding},
    {"sure", Stage::riding},
    {"confident", Stage::riding},
    {"sicher", Stage::riding},
    {"f\xC3\xA4hrtsicher", Stage::riding},
    {"s\xC3\xBBr", Stage::riding},
    {"\xC3\xA0laise", Stage::riding},
    {"seguro", Stage::riding},
    {"segura", Stage::riding},
    {"zeker", Stage::riding},
};

constexpr Word<bool> yes_or_no[] = {
    {"yes", true},       {"y", true},      {"x", true},     {"on", true},   {"1", true},
    {"true", true},      {"ja", true},     {"j", true},     {"oui", true},  {"o", true},
    {"s\xC3\xAD", true}, {"si", true},     {"no", false},   {"n", false},   {"off", false},
    {"0", false},        {"false", false}, {"nein", false}, {"non", false}, {"nee", false},
};

/// A heading without what is in brackets behind it, and that apart.
struct Heading {
    std::string words; ///< as the table has it
    std::optional<RiderColumn> column;
    std::optional<LengthUnit> unit;
    bool in_pounds = false;
};

Heading heading_of(std::string_view cell) {
    std::string_view words = trimmed(cell);
    std::string_view unit;
    if (const auto open = words.find_first_of("(["); open != std::string_view::npos) {
        unit = words.substr(open + 1);
        unit = trimmed(unit.substr(0, unit.find_first_of(")]")));
        words = words.substr(0, open);
    }
    Heading heading{.words = std::string(trimmed(cell)),
                    .column = meaning(words, headings),
                    .unit = unit_from_text(unit),
                    .in_pounds = plain_word(unit) == "lb" || plain_word(unit) == "lbs"};
    if (!heading.column) {
        // "Inside leg cm".
        const auto blank = trimmed(words).rfind(' ');
        if (blank == std::string_view::npos)
            return heading;
        const std::string_view last = trimmed(words).substr(blank + 1);
        heading.unit = unit_from_text(last);
        heading.in_pounds = plain_word(last) == "lb" || plain_word(last) == "lbs";
        if (heading.unit || heading.in_pounds || plain_word(last) == "kg")
            heading.column = meaning(trimmed(words).substr(0, blank), headings);
    }
    return heading;
}

constexpr char separators[] = {'\t', ';', ','};

/// Of a table without headings: the first that any row has between cells.
char separator_of(std::string_view text) {
    for (const char separator : separators) {
        TableRecords rows(text, separator);
        while (rows.next()) {
            if (rows.cells().size() > 1)
                return separator;
        }
    }
    return ',';
}

class TableReader {
public:
    TableReader(std::string_view text, LengthUnit units, CalendarDate today)
        : text_(text), units_(units), today_(today) {}

    Result<RiderTable> read() {
        const char by_headings = separator_with_headings();
        const bool headed = by_headings != no_separator;
        const char separator = headed ? by_headings : separator_of(text_);
        TableRecords rows(text_, separator);
        while (rows.next()) {
            if (!headed && columns_.empty())
                take_first_columns(rows.cells());
            if (!headed || rows.row() > *table_.heading_row)
                read_row(rows);
        }
        if (const auto quote = rows.unclosed_quote())
            return Problem{.code = ProblemCode::table_quote_not_closed,
                           .figures = {},
                           .where = {},
                           .position = TextPositions(text_).at(*quote)};
        if (table_.riders.empty() && table_.set_aside.empty())
            return Problem{.code = ProblemCode::riders_none, .figures = {}, .where = {}, .position = {}};
        return std::move(table_);
    }

private:
    static constexpr char no_separator = '\0';

    /// The one by which most headings are found, and takes them; none where none is.
    char separator_with_headings() {
        char best = no_separator;
        std::size_t most = 0;
        for (const char separator : separators) {
            const std::size_t known = find_headings(separator, most);
            if (known > most) {
                most = known;
                best = separator;
            }
        }
        for (const Heading& heading : columns_) {
            if (heading.column)
                table_.columns.push_back(*heading.column);
        }
        return best;
    }

    /// Takes the first of the upper rows that says most, where it says more than `most`; how much it says.
    std::size_t find_headings(char separator, std::size_t most) {
        TableRecords rows(text_, separator);
        for (std::size_t i = 0; i < rows_to_look_for_headings && rows.next(); ++i) {
            std::vector<Heading> found;
            std::vector<std::string> unknown;
            std::size_t known = 0;
            for (const TableCell& cell : rows.cells()) {
                found.push_back(heading_of(cell.text));
                const auto& column = found.back().column;
                const bool twice =
                    column && std::any_of(found.begin(), found.end() - 1,
                                          [&](const Heading& other) { return other.column == column; });
                if (twice)
                    found.back().column.reset();
                if (found.back().column)
                    ++known;
                else if (!trimmed(cell.text).empty())
                    unknown.emplace_back(trimmed(cell.text));
            }
            // A single word may be somebody's name; one that says a measure is a heading.
            const bool says_size = std::any_of(found.begin(), found.end(), [](const Heading& heading) {
                return heading.column == RiderColumn::inseam || heading.column == RiderColumn::height ||
                       heading.column == RiderColumn::age || heading.column == RiderColumn::born;
            });
            if (known <= most || !says_size)
                continue;
            most = known;
            columns_ = std::move(found);
            table_.unknown_columns = std::move(unknown);
            table_.heading_row = rows.row();
        }
        return most;
    }

    /// A table without headings: a name or number and the inside leg, or the inside leg alone.
    void take_first_columns(std::span<const TableCell> cells) {
        const auto add = [&](RiderColumn column) {
            columns_.push_back(
                {.words = std::string(name_of(column)), .column = column, .unit = {}, .in_pounds = false});
            table_.columns.push_back(column);
        };
        if (cells.size() > 1)
            add(RiderColumn::name);
        add(RiderColumn::inseam);
        if (cells.size() > 2)
            add(RiderColumn::stage);
    }

    void read_row(const TableRecords& rows) {
        TableRider one;
        one.row = rows.row();
        const auto cells = rows.cells();
        std::string unguarded;
        for (std::size_t i = 0; i < cells.size() && i < columns_.size(); ++i) {
            if (columns_[i].column)
                one.cells[static_cast<std::size_t>(*columns_[i].column)] =
                    std::string(trimmed(without_guard(cells[i].text, unguarded)));
        }
        const bool blank = std::all_of(one.cells.begin(), one.cells.end(),
                                       [](const std::string& cell) { return cell.empty(); });
        const std::string& name = cell(one, RiderColumn::name);
        if (blank)
            return;
        if (is_word_for_totals(name)) {
            table_.set_aside.push_back(
                problem(one, RiderColumn::name, ProblemCode::riders_row_of_totals, {{"text", name}}));
            return;
        }
        one.id = name.empty() ? std::to_string(one.row) : name;
        const auto same = std::find_if(table_.riders.begin(), table_.riders.end(),
                                       [&](const TableRider& other) { return other.id == one.id; });
        if (same != table_.riders.end()) {
            table_.set_aside.push_back(problem(one, RiderColumn::name, ProblemCode::riders_name_twice,
                                               {{"id", one.id}, {"first", same->row}}));
            return;
        }
        read_figures(one);
        table_.riders.push_back(std::move(one));
    }

    void read_figures(TableRider& one) {
        Rider& rider = one.rider;
        if (const auto inseam = length_in(one, RiderColumn::inseam, 50.0, 1500.0)) {
            const std::string& shoes = cell(one, RiderColumn::shoes);
            const auto said = meaning(shoes, yes_or_no);
            if (!said && !shoes.empty())
                one.problems.push_back(
                    problem(one, RiderColumn::shoes, ProblemCode::riders_word_unknown, {{"text", shoes}}));
            rider.readings.push_back({.on = today_, .inseam = *inseam, .shoes = said.value_or(true)});
        }
        rider.stature = length_in(one, RiderColumn::height, 300.0, 2500.0);
        const std::string& stage = cell(one, RiderColumn::stage);
        if (const auto said = meaning(stage, stage_words)) {
            rider.stage = *said;
            one.stage_said = true;
        } else if (!stage.empty()) {
            one.problems.push_back(
                problem(one, RiderColumn::stage, ProblemCode::riders_word_unknown, {{"text", stage}}));
        }
        read_birth(one);
        read_weight(one);
        one.measured = !rider.readings.empty() || rider.stature || rider.born;
        if (!one.measured)
            return;
        for (Problem& note : rider_notes(rider, today_)) {
            const bool stature = note.where.find("stature") != std::string::npos;
            note.cell = place(one, stature ? RiderColumn::height : RiderColumn::inseam);
            one.problems.push_back(std::move(note));
        }
    }

    std::optional<Length> length_in(TableRider& one, RiderColumn column, double low_mm, double high_mm) {
        const std::string text = cell(one, column);
        if (text.empty())
            return std::nullopt;
        const LengthUnit unit = heading(column).unit.value_or(units_);
        auto length = read_length(text, unit);
        if (!length) {
            Problem unreadable = std::move(length).problem();
            unreadable.cell = place(one, column);
            one.problems.push_back(std::move(unreadable));
            return std::nullopt;
        }
        const double mm = length->in_millimetres();
        if (mm >= low_mm && mm <= high_mm) {
            // The cell is to say the same wherever it is read again: a bare figure gets its unit.
            const auto elsewhere =
                read_length(text, unit == LengthUnit::metre ? LengthUnit::foot : LengthUnit::metre);
            if (elsewhere && *elsewhere != *length)
                one.cells[static_cast<std::size_t>(column)] = text + ' ' + std::string(unit_name(unit));
            return *length;
        }
        one.problems.push_back(
            problem(one, column, ProblemCode::riders_figure_out_of_range,
                    {{"text", text},
                     {"low", length_figure(Length::millimetres(low_mm), LengthUnit::centimetre)},
                     {"high", length_figure(Length::millimetres(high_mm), LengthUnit::centimetre)}}));
        return std::nullopt;
    }

    void read_birth(TableRider& one) {
        const std::string& born = cell(one, RiderColumn::born);
        const std::string& age = cell(one, RiderColumn::age);
        if (!born.empty()) {
            const auto month = CalendarMonth::from_iso(born);
            one.rider.born = month ? std::optional(month->middle()) : CalendarDate::from_iso(born);
            if (!one.rider.born)
                one.problems.push_back(problem(one, RiderColumn::born, ProblemCode::request_date_malformed,
                                               {{"value", born}, {"form", ProblemWord::day_or_month_form}}));
        }
        if (age.empty() || one.rider.born)
            return;
        // "5 1/2" as a length of so many: the grammar of figures is the same.
        const auto years = read_length(age, LengthUnit::millimetre);
        const auto leading = read_decimal_prefix(age);
        const auto value = years     ? std::optional(years->in_millimetres())
                           : leading ? std::optional(leading->value)
                                     : std::nullopt;
        if (!value || *value < 1.0 || *value > 99.0) {
            one.problems.push_back(
                problem(one, RiderColumn::age, ProblemCode::riders_age_unreadable, {{"text", age}}));
            return;
        }
        // "5" says five and something: half a year more, on average.
        const bool whole = *value == std::floor(*value);
        const double months = (*value + (whole ? 0.5 : 0.0)) * 12.0;
        one.rider.born = today_.plus_months(-static_cast<int>(std::lround(months)));
    }

    void read_weight(TableRider& one) {
        const std::string& text = cell(one, RiderColumn::weight);
        if (text.empty())
            return;
        const auto figure = read_decimal_prefix(text);
        const std::string unit =
            figure ? plain_word(std::string_view(text).substr(figure->length)) : std::string();
        const bool pounds =
            unit == "lb" || unit == "lbs" || (unit.empty() && heading(RiderColumn::weight).in_pounds);
        const bool known = figure && (pounds || unit.empty() || unit == "kg");
        const Mass mass =
            known ? (pounds ? Mass::pounds(figure->value) : Mass::kilograms(figure->value)) : Mass();
        if (mass >= Mass::kilograms(3.0) && mass <= Mass::kilograms(200.0))
            one.rider.mass = mass;
        else
            one.problems.push_back(
                problem(one, RiderColumn::weight, ProblemCode::riders_weight_unreadable, {{"text", text}}));
    }

    static const std::string& cell(const TableRider& one, RiderColumn column) {
        return one.cells[static_cast<std::size_t>(column)];
    }

    Heading heading(RiderColumn column) const {
        const auto found = std::find_if(columns_.begin(), columns_.end(),
                                        [&](const Heading& heading) { return heading.column == column; });
        return found == columns_.end() ? Heading() : *found;
    }

    CellPlace place(const TableRider& one, RiderColumn column) const {
        return {.row = one.row, .column_name = heading(column).words};
    }

    Problem problem(const TableRider& one, RiderColumn column, ProblemCode code, Figures figures) const {
        return {.code = code,
                .figures = std::move(figures),
                .where = std::string(name_of(column)),
                .position = {},
                .cell = place(one, column)};
    }

    std::string_view text_;
    LengthUnit units_;
    CalendarDate today_;
    std::vector<Heading> columns_;
    RiderTable table_;
};

} // namespace

std::string_view name_of(RiderColumn column) {
    constexpr std::array<std::string_view, rider_columns> names{"name", "inseam", "shoes",  "stage",
                                                                "age",  "born",   "weight", "height"};
    return names[static_cast<std::size_t>(column)];
}

Result<RiderTable> read_rider_table(std::string_view text, LengthUnit units, CalendarDate today) {
    return TableReader(text, units, today).read();
}

std::string write_rider_table(std::span<const RiderCells> riders) {
    std::vector<std::size_t> columns;
    for (std::size_t column = 0; column < rider_columns; ++column) {
        const auto has = [column](const RiderCells& cells) { return !cells[column].empty(); };
        if (column == 0 || std::any_of(riders.begin(), riders.end(), has))
            columns.push_back(column);
    }
    std::string table;
    const auto add_row = [&](const auto& cell_of) {
        for (const std::size_t column : columns) {
            if (column != columns.front())
                table += ',';
            append_table_cell(table, cell_of(column), ',');
        }
        table += table_line_end;
    };
    add_row([](std::size_t column) { return std::string(name_of(static_cast<RiderColumn>(column))); });
    for (const RiderCells& cells : riders)
        add_row([&](std::size_t column) { return with_guard(cells[column]); });
    return table;
}

} // namespace saddlerule
