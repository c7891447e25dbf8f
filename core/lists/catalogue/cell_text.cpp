#include "core/lists/catalogue/cell_text.h"

#include "core/base/json/json_figure.h"
#include "core/base/json/json_text.h"
#include "core/base/outcomes/figure_text.h"
#include "core/base/text/ascii_case.h"
#include "core/base/typed_text/decimal_text.h"

#include <algorithm>
#include <array>
#include <limits>
#include <utility>
#include <variant>

namespace saddlerule {
namespace {

using Kind = JsonValue::Kind;

/// In front of JSON that would be read as something else: a figure in a column of texts, or null.
constexpr std::string_view json_mark = "json:";

/// A value in a cell is three levels deep in a list: list, bikes, bike.
constexpr JsonLimits cell_limits{.depth = JsonLimits().depth - 3,
                                 .text_length = std::numeric_limits<std::size_t>::max(),
                                 .values = JsonLimits().values};

constexpr std::array<std::string_view, 4> kilogram_words{"kg", "kgs", "kilo", "kilos"};
constexpr std::array<std::string_view, 4> pound_words{"lb", "lbs", "lb.", "lbs."};
constexpr std::array<std::string_view, 4> degree_words{"\xC2\xB0", "\xC2\xBA", "deg", "degrees"};

// What people and spreadsheets in English, German, French, Spanish and Dutch write.
constexpr std::array<std::string_view, 14> yes_words{"1",         "yes",  "true",      "ja",        "wahr",
                                                     "oui",       "vrai", "s\xC3\xAD", "S\xC3\x8D", "si",
                                                     "verdadero", "waar", "y",         "j"};
constexpr std::array<std::string_view, 11> no_words{"0",    "no",    "false", "nein",   "falsch", "non",
                                                    "faux", "falso", "nee",   "onwaar", "n"};
constexpr std::string_view no_brakes = "none";
constexpr std::array<std::pair<std::string_view, std::string_view>, 0> no_names{};

constexpr std::array<std::pair<std::string_view, std::string_view>, 13> currency_symbols{{
    {"EUR", "\xE2\x82\xAC"},
    {"GBP", "\xC2\xA3"},
    {"USD", "$"},
    {"AUD", "$"},
    {"CAD", "$"},
    {"NZD", "$"},
    {"CHF", "Fr."},
    {"SEK", "kr"},
    {"NOK", "kr"},
    {"DKK", "kr"},
    {"PLN", "z\xC5\x82"},
    {"CZK", "K\xC4\x8D"},
    {"JPY", "\xC2\xA5"},
}};

bool stands_between_items(char c) {
    return c == ',' || c == ';' || c == '+' || c == '/';
}

template <typename Words>
bool is_one_of(std::string_view text, const Words& words) {
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return is_same_word(text, word); });
}

void move_by(JsonValue& value, std::size_t offset) {
    value.begin += offset;
    value.end += offset;
    for (JsonValue& item : value.items)
        move_by(item, offset);
    for (JsonMember& member : value.members) {
        member.name_begin += offset;
        move_by(member.value, offset);
    }
}

/// Writes the value of one cell into a JsonValue and its text.
class CellReader {
public:
    CellReader(const CatalogueField* field, const CellContext& context, JsonValue& value, TextBuffer& json)
        : field_(field), context_(context), value_(value), json_(json), begin_(json.size()) {}

    void read(std::string_view cell) {
        value_.items.clear();
        value_.members.clear();
        if (take_json(cell))
            return;
        if (field_)
            std::visit([&](auto target) { take(cell, target); }, field_->target);
        else
            take_unknown(cell);
    }

private:
    void finish(Kind kind) {
        value_.kind = kind;
        value_.begin = begin_;
        value_.end = json_.size();
    }

    void put_text(std::string_view text) {
        value_.text = text;
        append_json_text(json_, text);
        finish(Kind::text);
    }

    /// `written` may have a decimal comma.
    void put_number(double number, std::string_view written) {
        value_.number = number;
        for (const char c : written)
            json_.append(c == ',' ? '.' : c);
        finish(Kind::number);
    }

    void put_flag(bool flag) {
        value_.boolean = flag;
        json_.append(std::string_view(flag ? "true" : "false"));
        finish(Kind::boolean);
    }

    /// The items of the cell, each by the name that it is a spelling of.
    template <typename Names>
    void put_items(std::string_view cell, const Names& names) {
        json_.append('[');
        while (!cell.empty()) {
            const auto* const mark = std::find_if(cell.begin(), cell.end(), stands_between_items);
            const auto end = static_cast<std::size_t>(mark - cell.begin());
            const std::string_view item = trimmed(cell.substr(0, end));
            if (!item.empty())
                put_item(known_spelling(item, names));
            cell.remove_prefix(std::min(end + 1, cell.size()));
        }
        json_.append(']');
        finish(Kind::array);
    }

    void put_item(std::string_view text) {
        if (!value_.items.empty())
            json_.append(',');
        JsonValue& item = value_.items.emplace_back();
        item.kind = Kind::text;
        item.text = text;
        item.begin = json_.size();
        append_json_text(json_, text);
        item.end = json_.size();
    }

    bool put_json(std::string_view json) {
        auto read = read_json(json, cell_limits);
        if (!read)
            return false;
        value_ = std::move(read).value();
        json_.append(json.substr(value_.begin, value_.end - value_.begin));
        move_by(value_, begin_ - value_.begin);
        return true;
    }

    bool take_json(std::string_view cell) {
        const char first = cell.front();
        const char last = cell.back();
        const bool in_brackets = (first == '[' && last == ']') || (first == '{' && last == '}') ||
                                 (first == '"' && last == '"' && cell.size() > 1);
        if (in_brackets)
            return put_json(cell);
        return first == json_mark.front() && cell.starts_with(json_mark) &&
               put_json(cell.substr(json_mark.size()));
    }

    /// A figure of JSON, or one with a decimal comma or zeros in front.
    bool take_figure(std::string_view text) {
        constexpr std::size_t longest_exact = 16; // 15 digits and the mark
        const auto decimal = read_decimal_prefix(text);
        const bool all_decimal = decimal && decimal->length == text.size();
        if (!all_decimal)
            return json_figure_length(text) == text.size() && put_json(text);
        while (text.size() > 1 && text[0] == '0' && text[1] != '.' && text[1] != ',')
            text.remove_prefix(1);
        if (text.size() > longest_exact) {
            std::string with_point(text);
            std::replace(with_point.begin(), with_point.end(), ',', '.');
            return put_json(with_point);
        }
        put_number(decimal->value, text);
        return true;
    }

    /// A figure with one of the words behind it, or none.
    template <typename Words>
    bool take_figure_with(std::string_view text, const Words& words) {
        const auto decimal = read_decimal_prefix(text);
        return decimal && is_one_of(trimmed(text.substr(decimal->length)), words) &&
               take_figure(text.substr(0, decimal->length));
    }

    // One for each type that a field can have.

    void take(std::string_view cell, std::string Bike::*) {
        // Of an id that is a whole number JSON has both forms, and lists mostly the number.
        const bool digits =
            std::all_of(cell.begin(), cell.end(), [](char c) { return c >= '0' && c <= '9'; });
        constexpr std::size_t longest_exact = 15;
        const bool canonical = digits && cell.size() <= longest_exact && (cell.front() != '0' || cell == "0");
        if (!canonical || field_->name != "id" || !take_figure(cell))
            put_text(cell);
    }

    void take(std::string_view cell, std::optional<Length> Bike::*) {
        const bool other_unit = context_.column_unit && context_.column_unit != context_.units;
        if (!other_unit) {
            if (!take_figure(cell))
                put_text(cell);
            return;
        }
        const auto in_millimetres = read_length(cell, LengthUnit::millimetre);
        const auto in_inches = read_length(cell, LengthUnit::inch);
        const bool has_unit = in_millimetres.ok() && in_inches.ok() && *in_millimetres == *in_inches;
        if (has_unit || !in_millimetres.ok())
            put_text(cell);
        else
            put_text(std::string(cell) + ' ' + std::string(unit_name(*context_.column_unit)));
    }

    void take(std::string_view cell, std::optional<Mass> Bike::*) {
        if (!context_.column_in_pounds && take_figure(cell))
            return;
        constexpr int to_a_milligram = 6;
        const auto figure = read_decimal_prefix(cell);
        const std::string_view word = trimmed(cell.substr(figure ? figure->length : 0));
        const bool in_pounds = word.empty() ? context_.column_in_pounds : is_one_of(word, pound_words);
        if (figure && in_pounds) {
            const double kilograms = Mass::pounds(figure->value).in_kilograms();
            put_number(kilograms, figure_text(kilograms, to_a_milligram));
        } else if (!take_figure(cell) && !take_figure_with(cell, kilogram_words)) {
            put_text(cell);
        }
    }

    void take(std::string_view cell, std::optional<double> Bike::*) {
        if (!take_figure(cell) && !take_figure_with(cell, degree_words))
            put_text(cell);
    }

    void take(std::string_view cell, std::optional<int> Bike::*) {
        if (!take_figure(cell))
            put_text(cell);
    }

    void take(std::string_view cell, std::optional<Money> Bike::*) {
        if (!take_amount(cell) && !take_amount(without_currency(cell)))
            put_text(cell);
    }

    bool take_amount(std::string_view amount) { return !may_be_thousands(amount) && take_figure(amount); }

    /// 1,200 is a thousand and more to some, and little more than one to others.
    static bool may_be_thousands(std::string_view amount) {
        const std::size_t mark = amount.find_first_of(".,");
        return mark != std::string_view::npos && amount.size() - mark == 4;
    }

    std::string_view without_currency(std::string_view cell) const {
        if (!context_.currency)
            return cell;
        const std::string_view code = context_.currency->code();
        const auto without = [&](std::string_view mark) {
            if (cell.starts_with(mark))
                return trimmed(cell.substr(mark.size()));
            if (cell.ends_with(mark))
                return trimmed(cell.substr(0, cell.size() - mark.size()));
            return cell;
        };
        for (const auto& [of, symbol] : currency_symbols) {
            if (of == code && without(symbol) != cell)
                return without(symbol);
        }
        return without(code);
    }

    void take(std::string_view cell, std::optional<bool> Bike::*) {
        if (is_one_of(cell, yes_words))
            put_flag(true);
        else if (is_one_of(cell, no_words))
            put_flag(false);
        else
            take_unknown(cell);
    }

    void take(std::string_view cell, std::optional<Wheel> Bike::*) { put_text(cell); }

    void take(std::string_view cell, BikeKind Bike::*) { put_text(known_spelling(cell, kind_names)); }

    void take(std::string_view cell, std::optional<std::vector<Brake>> Bike::*) {
        if (is_same_word(cell, no_brakes))
            return put_items({}, brake_names);
        put_items(cell, brake_names);
        if (value_.items.empty()) {
            json_.cut(begin_);
            put_text(cell);
        }
    }

    void take(std::string_view cell, std::vector<std::string> Bike::*) { put_items(cell, no_names); }

    template <typename Names>
    static std::string_view known_spelling(std::string_view text, const Names& names) {
        for (const auto& [name, value] : names) {
            if (is_same_word(text, name))
                return name;
        }
        return text;
    }

    void take_unknown(std::string_view cell) {
        const bool scalar =
            cell == "true" || cell == "false" || cell == "null" || json_figure_length(cell) == cell.size();
        if (!scalar || !put_json(cell))
            put_text(cell);
    }

    const CatalogueField* field_;
    const CellContext& context_;
    JsonValue& value_;
    TextBuffer& json_;
    std::size_t begin_;
};

bool same_value(const JsonValue& a, std::string_view a_text, const JsonValue& b, std::string_view b_text);

bool same_members(const JsonMember& a, std::string_view a_text, const JsonMember& b,
                  std::string_view b_text) {
    return a.name == b.name && same_value(a.value, a_text, b.value, b_text);
}

/// The same to every program that reads JSON: figures digit by digit, texts whichever way they are escaped.
bool same_value(const JsonValue& a, std::string_view a_text, const JsonValue& b, std::string_view b_text) {
    if (a.kind != b.kind)
        return false;
    switch (a.kind) {
    case Kind::text:
        return a.text == b.text;
    case Kind::array:
        return std::equal(
            a.items.begin(), a.items.end(), b.items.begin(), b.items.end(),
            [&](const JsonValue& x, const JsonValue& y) { return same_value(x, a_text, y, b_text); });
    case Kind::object:
        return std::equal(
            a.members.begin(), a.members.end(), b.members.begin(), b.members.end(),
            [&](const JsonMember& x, const JsonMember& y) { return same_members(x, a_text, y, b_text); });
    case Kind::null:
    case Kind::boolean:
    case Kind::number:
        break;
    }
    return a.written_in(a_text) == b.written_in(b_text);
}

/// As people would write it, whether or not it can be read back.
std::string plain_form(const CatalogueField* field, const JsonValue& value, std::string_view text,
                       char decimal_mark) {
    std::string plain;
    switch (value.kind) {
    case Kind::text:
        return value.text;
    case Kind::boolean:
        return value.boolean ? "yes" : "no";
    case Kind::number:
        plain = value.written_in(text);
        std::replace(plain.begin(), plain.end(), '.', decimal_mark);
        return plain;
    case Kind::array:
        for (const JsonValue& item : value.items)
            plain += (plain.empty() ? "" : ", ") + item.text;
        return value.items.empty() && field ? std::string(no_brakes) : plain;
    case Kind::null:
    case Kind::object:
        break;
    }
    return std::string(value.written_in(text));
}

} // namespace

bool read_cell(std::string_view cell, const CatalogueField* field, const CellContext& context,
               JsonValue& value, TextBuffer& json) {
    cell = trimmed(cell);
    if (cell.empty())
        return false;
    CellReader(field, context, value, json).read(cell);
    return true;
}

std::optional<Currency> currency_named(std::string_view text) {
    std::string_view code = text;
    const auto is_symbol = [&](const auto& row) { return row.second == text; };
    if (std::count_if(currency_symbols.begin(), currency_symbols.end(), is_symbol) == 1)
        code = std::find_if(currency_symbols.begin(), currency_symbols.end(), is_symbol)->first;
    return Currency::from_code(code);
}

std::optional<Currency> currency_in_price(std::string_view cell) {
    constexpr std::string_view part_of_figure = "0123456789., \t";
    const std::size_t first = cell.find_first_of(part_of_figure);
    const std::size_t last = cell.find_last_of(part_of_figure);
    if (first == std::string_view::npos)
        return std::nullopt;
    const std::string_view in_front = trimmed(cell.substr(0, first));
    return currency_named(in_front.empty() ? trimmed(cell.substr(last + 1)) : in_front);
}

std::string json_of_cell(std::string_view field_name, std::string_view cell, const CellContext& context) {
    JsonValue value;
    TextBuffer json;
    read_cell(cell, field_named(field_name), context, value, json);
    return std::string(json.view());
}

std::string cell_of_json(std::string_view field_name, const JsonValue& value, std::string_view text,
                         const CellContext& context, char decimal_mark) {
    const CatalogueField* field = field_named(field_name);
    const auto reads_back = [&](std::string_view cell) {
        JsonValue back;
        TextBuffer back_text;
        return cell.find('\0') == std::string_view::npos &&
               read_cell(cell, field, context, back, back_text) &&
               same_value(value, text, back, back_text.view());
    };
    std::string plain = plain_form(field, value, text, decimal_mark);
    // A price may tell the currency of a table that names none.
    const bool tells_currency = field_name == "price" && !context.currency && currency_in_price(plain);
    if (!tells_currency && reads_back(plain))
        return plain;
    std::string raw(value.written_in(text));
    if (reads_back(raw))
        return raw;
    return std::string(json_mark) + raw;
}

} // namespace saddlerule
