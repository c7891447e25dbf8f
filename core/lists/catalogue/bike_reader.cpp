#include "core/lists/catalogue/bike_reader.h"

#include "core/base/outcomes/figure_text.h"
#include "core/base/text/utf8_text.h"
#include "core/base/typed_text/decimal_text.h"
#include "core/base/typed_text/mass_text.h"
#include "core/lists/table/table_words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

using Kind = JsonValue::Kind;
using Fault = std::optional<Problem>;

const std::string* longer_than_allowed(const JsonMember& member);

/// The first text or name in the value that is too long. The depth of a value was limited when it was read.
const std::string* longer_than_allowed(const JsonValue& value) {
    if (value.kind == Kind::text) {
        const bool too_long = value.text.size() > longest_text && character_count(value.text) > longest_text;
        return too_long ? &value.text : nullptr;
    }
    for (const JsonValue& item : value.items) {
        if (const std::string* found = longer_than_allowed(item))
            return found;
    }
    for (const JsonMember& member : value.members) {
        if (const std::string* found = longer_than_allowed(member))
            return found;
    }
    return nullptr;
}

const std::string* longer_than_allowed(const JsonMember& member) {
    if (member.name.size() > longest_text && character_count(member.name) > longest_text)
        return &member.name;
    return longer_than_allowed(member.value);
}

/// Reads one entry, field by field, and stops at the first fault.
class BikeReader {
public:
    BikeReader(Bike& bike, const JsonValue& entry, const BikeContext& context)
        : entry_(entry), context_(context), bike_(bike) {}

    Fault read() {
        if (entry_.kind != Kind::object)
            return problem(ProblemCode::bike_not_a_group, entry_.begin, {}, {{"found", entry_.kind_name()}});
        if (entry_.members.size() > most_fields) {
            return problem(ProblemCode::bike_too_many_fields, entry_.begin, {},
                           {{"count", entry_.members.size()}, {"limit", most_fields}});
        }
        // Comes first: cells beyond the header mean that those before them have slipped.
        if (const JsonMember* nameless = entry_.find({})) {
            member_ = nameless;
            const std::string value = as_written(nameless->value);
            return field_problem(ProblemCode::bike_field_without_name, nameless->value,
                                 {{"value", value.empty() ? ProblemFigure(ProblemWord::an_empty_cell)
                                                          : ProblemFigure(value)}});
        }
        if (auto fault = row_of_totals())
            return fault;
        for (std::size_t i = 0; i < entry_.members.size(); ++i) {
            member_ = &entry_.members[i];
            field_ = context_.fields.empty() ? find_field() : context_.fields[i];
            auto fault = read_member(*member_);
            if (fault && !may_be_left_open(*fault))
                return fault;
            if (fault) {
                keep_as_it_stands();
                if (!left_open_)
                    left_open_ = std::move(fault);
            }
        }
        if (auto fault = missing_or_contradictory())
            return fault;
        const bool measured = bike_.saddle_lowest && bike_.saddle_highest;
        return measured ? std::nullopt : std::move(left_open_);
    }

private:
    Problem problem(ProblemCode code, std::size_t offset, std::string_view where, Figures figures) const {
        Problem result{
            .code = code, .figures = std::move(figures), .where = std::string(where), .position = {}};
        if (context_.places && context_.origin != no_origin) {
            context_.places->place_in_entry(result, context_.origin, offset - entry_.begin,
                                            where.empty() || !member_ ? where
                                                                      : std::string_view(member_->name));
        }
        return result;
    }

    /// A problem with the value of the field at hand.
    Problem field_problem(ProblemCode code, const JsonValue& value, Figures figures) const {
        figures.add("field", excerpt(member_->name));
        return problem(code, value.begin, excerpt(member_->name), std::move(figures));
    }

    Problem wrong_type(const JsonValue& value, const ProblemFigure& kind) const {
        return field_problem(ProblemCode::bike_field_wrong_type, value,
                             {{"found", value.kind_name()}, {"kind", kind}});
    }

    Problem unknown_value(const JsonValue& value, const ProblemFigure& known) const {
        return field_problem(ProblemCode::bike_value_unknown, value,
                             {{"value", excerpt(value.text)}, {"known", known}});
    }

    Fault read_member(const JsonMember& member) {
        if (seen_before()) {
            return problem(ProblemCode::bike_field_twice, member.name_begin, excerpt(member.name),
                           {{"field", excerpt(member.name)}});
        }
        if (const std::string* text = longer_than_allowed(member)) {
            return field_problem(ProblemCode::bike_text_too_long, member.value,
                                 {{"length", character_count(*text)}, {"limit", longest_text}});
        }
        if (!field_) {
            keep_as_it_stands();
            return std::nullopt;
        }
        if (member.value.kind == Kind::null)
            return std::nullopt;
        return std::visit([&](auto target) { return take(member.value, bike_.*target); }, field_->target);
    }

    /// Under the bikes of a spreadsheet: no bike, though it may have figures where saddles have theirs.
    Fault row_of_totals() {
        for (const JsonMember& member : entry_.members) {
            const bool is_called_so = (member.name == "id" || member.name == "name") &&
                                      member.value.kind == Kind::text &&
                                      is_word_for_totals(member.value.text);
            if (!is_called_so)
                continue;
            member_ = &member;
            return field_problem(ProblemCode::riders_row_of_totals, member.value,
                                 {{"text", excerpt(member.value.text)}});
        }
        return std::nullopt;
    }

    /// Fields mostly come in the order of the table, so the search begins behind the one found last.
    const CatalogueField* find_field() {
        const auto fields = catalogue_fields();
        for (std::size_t i = 0; i < fields.size(); ++i) {
            const std::size_t index = (next_field_ + i) % fields.size();
            if (fields[index].name == member_->name) {
                next_field_ = index + 1;
                return &fields[index];
            }
        }
        return nullptr;
    }

    bool seen_before() {
        if (!field_) {
            return std::any_of(bike_.unknown_fields.begin(), bike_.unknown_fields.end(),
                               [&](const UnknownField& field) { return field.name == member_->name; });
        }
        const std::uint64_t bit = std::uint64_t{1}
                                  << static_cast<unsigned>(field_ - catalogue_fields().data());
        const bool seen = (seen_ & bit) != 0;
        seen_ |= bit;
        return seen;
    }

    /// A cell that nobody can read says nothing, which is no reason to lose a bike whose saddle was measured. What a bike
    /// is called, its kind and its saddle decide too much for that.
    bool may_be_left_open(const Problem& fault) const {
        constexpr std::array<std::string_view, 5> needed{"id", "name", "kind", "saddle_lowest",
                                                         "saddle_highest"};
        if (!field_ || std::find(needed.begin(), needed.end(), field_->name) != needed.end())
            return false;
        switch (fault.code) {
        case ProblemCode::bike_value_unknown:
        case ProblemCode::bike_figure_unreadable:
        case ProblemCode::figure_not_a_number:
        case ProblemCode::figure_unit_unknown:
        case ProblemCode::figure_fraction_malformed:
            return true;
        default:
            return false;
        }
    }

    void keep_as_it_stands() {
        bike_.unknown_fields.push_back(
            {.name = member_->name, .json = std::string(member_->value.written_in(context_.text))});
    }

    // One for each type that a field can have.

    Fault take(const JsonValue& value, std::string& target) const {
        const bool mark = field_->name == "id";
        constexpr double largest_exact =
            9007199254740991.0; // 2^53 - 1: every whole number up to it is one double
        if (mark && value.kind == Kind::number && value.number >= 0.0 && value.number <= largest_exact &&
            std::floor(value.number) == value.number) {
            target = std::to_string(static_cast<unsigned long long>(value.number));
            return std::nullopt;
        }
        if (value.kind != Kind::text)
            return wrong_type(value, mark ? ProblemWord::text_or_whole_number : ProblemWord::text_in_quotes);
        target = mark || field_->name == "name" ? trimmed(value.text) : std::string_view(value.text);
        return std::nullopt;
    }

    Fault take(const JsonValue& value, std::optional<Length>& target) const {
        if (value.kind != Kind::number && value.kind != Kind::text)
            return wrong_type(value, ProblemWord::length_or_text);
        if (!context_.units && is_bare_length(value))
            return field_problem(ProblemCode::bike_figure_without_unit, value,
                                 {{"value", as_written(value)}});
        const LengthUnit bare = context_.units.value_or(LengthUnit::centimetre);
        if (value.kind == Kind::number) {
            target = length_of(value.number, bare);
        } else {
            auto length = read_length(value.text, bare);
            if (!length)
                return typed_length_problem(value, std::move(length).problem());
            target = *length;
        }
        if (within_limits(target->in_millimetres()))
            return std::nullopt;
        return out_of_range(value, value.kind == Kind::number ? unit_name(bare) : std::string_view(),
                            length_figure(Length::millimetres(field_->limits.low), bare),
                            length_figure(Length::millimetres(field_->limits.high), bare));
    }

    std::string as_written(const JsonValue& value) const {
        return excerpt(value.kind == Kind::text ? std::string_view(value.text)
                                                : value.written_in(context_.text));
    }

    Fault take(const JsonValue& value, std::optional<Mass>& target) const {
        // "14 lb": the only text that is a mass; its limits are those of the number.
        if (value.kind == Kind::text) {
            if (const auto mass = mass_with_unit(value.text)) {
                if (!within_limits(mass->in_kilograms()))
                    return out_of_range(value, {}, Number{field_->limits.low, "kg"},
                                        Number{field_->limits.high, "kg"});
                target = mass;
                return std::nullopt;
            }
        }
        if (auto fault = check_figure(value, "kg"))
            return fault;
        target = Mass::kilograms(value.number);
        return std::nullopt;
    }

    Fault take(const JsonValue& value, std::optional<double>& target) const {
        if (auto fault = check_figure(value, "degrees"))
            return fault;
        target = value.number;
        return std::nullopt;
    }

    Fault take(const JsonValue& value, std::optional<int>& target) const {
        if (auto fault = check_figure(value, {}))
            return fault;
        if (std::floor(value.number) != value.number) {
            return field_problem(ProblemCode::bike_figure_not_whole, value, {{"value", as_written(value)}});
        }
        target = static_cast<int>(value.number);
        return std::nullopt;
    }

    Fault take(const JsonValue& value, std::optional<Money>& target) {
        if (auto fault = check_figure(value, {}))
            return fault;
        if (context_.currency)
            target = Money::amount(value.number, *context_.currency);
        else
            keep_as_it_stands();
        return std::nullopt;
    }

    Fault take(const JsonValue& value, std::optional<bool>& target) const {
        constexpr auto known = ProblemWord::yes_or_no;
        if (value.kind == Kind::text)
            return unknown_value(value, known);
        if (value.kind != Kind::boolean)
            return wrong_type(value, known);
        target = value.boolean;
        return std::nullopt;
    }

    Fault take(const JsonValue& value, std::optional<Wheel>& target) const {
        if (value.kind != Kind::number && value.kind != Kind::text)
            return wrong_type(value, ProblemWord::wheel_text);
        std::string figure;
        if (value.kind == Kind::number)
            figure = figure_text(value.number, 3);
        const std::string& text = value.kind == Kind::number ? figure : value.text;
        target = Wheel::from_text(text);
        if (target)
            return std::nullopt;
        return field_problem(ProblemCode::bike_value_unknown, value,
                             {{"value", excerpt(text)}, {"known", ProblemWord::tyre_marking}});
    }

    Fault take(const JsonValue& value, BikeKind& target) const {
        return take_named(value, kind_names, target);
    }

    Fault take(const JsonValue& value, std::optional<std::vector<Brake>>& target) const {
        if (value.kind != Kind::array)
            return wrong_type(value, ProblemWord::brakes_list);
        target.emplace().reserve(value.items.size());
        for (const JsonValue& item : value.items) {
            Brake brake{};
            if (auto fault = take_named(item, brake_names, brake)) {
                target.reset();
                return at_item(value, item, *std::move(fault));
            }
            target->push_back(brake);
        }
        return std::nullopt;
    }

    Fault take(const JsonValue& value, std::vector<std::string>& target) const {
        if (value.kind != Kind::array)
            return wrong_type(value, ProblemWord::texts_list);
        target.reserve(value.items.size());
        for (const JsonValue& item : value.items) {
            if (item.kind != Kind::text)
                return at_item(value, item, wrong_type(item, ProblemWord::text_in_quotes));
            target.push_back(item.text);
        }
        return std::nullopt;
    }

    template <typename Names, typename Value>
    Fault take_named(const JsonValue& value, const Names& names, Value& target) const {
        if (value.kind != Kind::text)
            return wrong_type(value, all_names(names));
        for (const auto& [name, named] : names) {
            if (name == value.text) {
                target = named;
                return std::nullopt;
            }
        }
        return unknown_value(value, all_names(names));
    }

    static Problem at_item(const JsonValue& list, const JsonValue& item, Problem problem) {
        problem.where += '[' + std::to_string(&item - list.items.data()) + ']';
        return problem;
    }

    bool within_limits(double figure) const {
        return figure >= field_->limits.low && figure <= field_->limits.high;
    }

    /// `unit` is what the value counts in where it has no unit of its own.
    Problem out_of_range(const JsonValue& value, std::string_view unit, Number low, Number high) const {
        return field_problem(ProblemCode::bike_figure_out_of_range, value,
                             {{"value", Quote{as_written(value), unit}}, {"low", low}, {"high", high}});
    }

    /// That the value is a number within the field's limits.
    Fault check_figure(const JsonValue& value, std::string_view unit) const {
        if (value.kind == Kind::text && !read_decimal(value.text)) {
            return field_problem(ProblemCode::bike_figure_unreadable, value,
                                 {{"value", excerpt(value.text)}});
        }
        if (value.kind != Kind::number)
            return wrong_type(value, "a number, without quotes");
        if (within_limits(value.number))
            return std::nullopt;
        return out_of_range(value, unit, Number{field_->limits.low, unit}, Number{field_->limits.high, unit});
    }

    Problem typed_length_problem(const JsonValue& value, Problem found) const {
        for (auto& [name, figure] : found.figures) {
            if (auto* quote = std::get_if<Quote>(&figure.value))
                quote->text = excerpt(quote->text);
        }
        return field_problem(found.code, value, std::move(found.figures));
    }

    /// What no field alone can tell.
    Fault missing_or_contradictory() {
        if (bike_.id.empty() && bike_.name.empty())
            return problem(ProblemCode::bike_without_name, entry_.begin, {}, {});
        if (!bike_.saddle_lowest && !bike_.saddle_highest)
            return problem(ProblemCode::bike_without_saddle, entry_.begin, {}, {});
        if (bike_.saddle_lowest && bike_.saddle_highest && *bike_.saddle_highest < *bike_.saddle_lowest) {
            const LengthUnit unit = context_.units.value_or(LengthUnit::centimetre);
            member_ = entry_.find("saddle_highest");
            return field_problem(ProblemCode::bike_highest_below_lowest, member_->value,
                                 {{"value", length_figure(*bike_.saddle_highest, unit)},
                                  {"lowest", length_figure(*bike_.saddle_lowest, unit)}});
        }
        return std::nullopt;
    }

    const JsonValue& entry_;
    const BikeContext& context_;
    Bike& bike_;
    const JsonMember* member_ = nullptr;    ///< at hand
    const CatalogueField* field_ = nullptr; ///< or null where it is not known
    std::size_t next_field_ = 0;
    std::uint64_t seen_ = 0; ///< a bit for each known field
    Fault left_open_;        ///< the first fault of a cell that may be left open
};

constexpr std::size_t longest_label = 200;

/// A text field of an entry that could not be used, as far as it is one.
std::string label(const JsonValue& entry, std::string_view name, std::string_view text) {
    const JsonMember* member = entry.find(name);
    if (member && member->value.kind == Kind::text)
        return excerpt(trimmed(member->value.text), longest_label);
    if (member && member->value.kind == Kind::number)
        return excerpt(member->value.written_in(text), longest_label);
    return {};
}

} // namespace

std::optional<Problem> read_bike_into(Bike& bike, const JsonValue& value, const BikeContext& context) {
    return BikeReader(bike, value, context).read();
}

Result<Bike> read_bike(const JsonValue& value, const BikeContext& context) {
    Bike bike;
    if (auto fault = read_bike_into(bike, value, context))
        return *std::move(fault);
    return bike;
}

bool is_bare_length(const JsonValue& value) {
    if (value.kind != Kind::text)
        return value.kind == Kind::number;
    const auto in_millimetres = read_length(value.text, LengthUnit::millimetre);
    const auto in_inches = read_length(value.text, LengthUnit::inch);
    return in_millimetres.ok() && in_inches.ok() && *in_millimetres != *in_inches;
}

SetAside set_aside_entry(const JsonValue& value, std::size_t number, Problem problem, std::string_view text) {
    return {.number = number,
            .id = label(value, "id", text),
            .name = label(value, "name", text),
            .problem = std::move(problem),
            .source = std::string(value.written_in(text))};
}

} // namespace saddlerule
