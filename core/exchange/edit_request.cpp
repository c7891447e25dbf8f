#include "core/exchange/edit_request.h"

#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/keeping/entry_text.h"
#include "core/lists/keeping/free_ids.h"
#include "core/lists/keeping/list_slips.h"

#include <array>
#include <optional>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

using Kind = JsonValue::Kind;

enum class Step { set, add, copy, remove, put, insert, list, repair_all };

constexpr WireName<Step> step_names[] = {
    {"set", Step::set}, {"add", Step::add},       {"copy", Step::copy}, {"remove", Step::remove},
    {"put", Step::put}, {"insert", Step::insert}, {"list", Step::list}, {"repair_all", Step::repair_all},
};

/// What of its header an edit may change.
constexpr std::array<std::string_view, 4> editable_header{"title", "measured_on", "units", "currency"};

std::optional<ProblemCode> slip_named(std::string_view name) {
    for (std::size_t kind = 0; kind < slip_kinds; ++kind) {
        if (code_name(slip_code(kind)) == name)
            return slip_code(kind);
    }
    return std::nullopt;
}

/// Applies one change after the other.
class ChangeReader {
public:
    ChangeReader(std::string_view request_text, const KeptList& list, ListEditor& editor)
        : text_(request_text), list_(list), editor_(editor), free_ids_(list) {}

    std::optional<Problem> apply(const JsonValue& change, std::string path) {
        RequestFields fields(change, std::move(path));
        const JsonValue* value = nullptr;
        std::optional<Step> step;
        for (const auto& [name, named] : step_names) {
            if (step)
                continue; // a second one is refused as a field that is not known
            value = fields.optional(name);
            if (value)
                step = named;
        }
        fields.require(step.has_value(), "", all_names(step_names));
        if (step)
            apply(*step, *value, fields);
        return fields.finish();
    }

private:
    void apply(Step step, const JsonValue& value, RequestFields& fields) {
        switch (step) {
        case Step::set: {
            const auto number = required_number(fields, "number", editor_.count());
            const auto cells = cells_of_request(fields, value, "set");
            if (number)
                set(*number, cells);
            return;
        }
        case Step::add: {
            const auto cells = cells_of_request(fields, value, "add");
            insert(fields, entry_with("{}", cells, context()));
            return;
        }
        case Step::copy:
            if (const auto number = required_number(fields, "copy", editor_.count()))
                editor_.insert(*number + 1, entry_of_text(list_, copy_of(editor_.entry(*number).source)));
            return;
        case Step::remove:
            if (const auto number = required_number(fields, "remove", editor_.count()))
                editor_.remove(*number);
            return;
        case Step::put: {
            const auto number = required_number(fields, "number", editor_.count());
            auto entry = entry_text(fields, "put");
            if (number && entry)
                editor_.put(*number, *std::move(entry));
            return;
        }
        case Step::insert: {
            if (auto entry = entry_text(fields, "insert"))
                insert(fields, *std::move(entry));
            return;
        }
        case Step::list:
            set_header(fields, value);
            return;
        case Step::repair_all:
            break;
        }
        repair_all(fields);
    }

    std::optional<std::size_t> required_number(RequestFields& fields, std::string_view name,
                                               std::size_t most) {
        if (most == 0) {
            fields.report(
                name, ProblemCode::request_value_out_of_range,
                {{"value", ProblemWord::the_number}, {"low", 1}, {"high", ProblemWord::none_in_empty_list}});
            return std::nullopt;
        }
        const auto allowed = *ClosedRange<double>::between(1.0, static_cast<double>(most));
        const auto number = fields.optional_number(name, allowed);
        fields.require(number.has_value(), name, ProblemWord::number_of_entry);
        return number ? std::optional(static_cast<std::size_t>(*number)) : std::nullopt;
    }

    CellContext context() const { return cell_context(editor_.facts()); }

    void set(std::size_t number, const std::vector<FieldCell>& cells) {
        editor_.put(number, entry_of_text(list_, entry_with(editor_.entry(number).source, cells, context())));
    }

    void insert(RequestFields& fields, std::string entry) {
        insert(fields, entry_of_text(list_, std::move(entry)));
    }

    void insert(RequestFields& fields, ListEntry entry) {
        const auto allowed = *ClosedRange<double>::between(1.0, static_cast<double>(editor_.count() + 1));
        const auto before = fields.optional_number("before", allowed);
        const std::size_t number = before ? static_cast<std::size_t>(*before) : editor_.count() + 1;
        editor_.insert(number, std::move(entry));
    }

    std::string copy_of(std::string_view source) {
        const auto entry = read_entry(source);
        const std::string id = entry ? cell_of(*entry, source, "id", context()) : std::string();
        if (id.empty())
            return std::string(source);
        const FieldCell own{"id", free_ids_.like(id)};
        return entry_with(source, {&own, 1}, context());
    }

    /// The JSON text of an entry, as `source` and `undo` give it.
    std::optional<ListEntry> entry_text(RequestFields& fields, std::string_view name) {
        auto text = fields.optional_text(name);
        constexpr double largest_origin = 1e8;
        const auto origin =
            fields.optional_number("origin", *ClosedRange<double>::between(0.0, largest_origin));
        if (!text)
            return std::nullopt;
        const auto read = read_entry(*text);
        if (!read) {
            fields.report(Problem(read.problem()).within(fields.path_of(name)));
            return std::nullopt;
        }
        *text = text->substr(read->begin, read->end - read->begin);
        return entry_of_text(list_, *std::move(text), origin ? static_cast<std::size_t>(*origin) : no_origin);
    }

    void set_header(RequestFields& fields, const JsonValue& value) {
        RequestFields header(value, fields.path_of("list"));
        for (UnknownField& field : header_fields_of(header, text_))
            editor_.set_header(std::move(field));
        if (auto problem = header.finish())
            fields.report(*std::move(problem));
        else if (auto fault = editor_.header_fault())
            fields.report(std::move(*fault).within(fields.path_of("list")));
    }

    void repair_all(RequestFields& fields) {
        const auto name = fields.optional_text("repair_all");
        const auto code = name ? slip_named(*name) : std::nullopt;
        if (!code || editor_.touched_at_all()) {
            KnownNames known;
            for (std::size_t kind = 0; kind < slip_kinds; ++kind)
                known.names.emplace_back(code_name(slip_code(kind)));
            fields.report(
                "repair_all", ProblemCode::request_value_unknown,
                {{"value", name.value_or(std::string())},
                 {"known", code ? ProblemFigure(ProblemWord::first_change_only) : ProblemFigure(known)}});
            return;
        }
        SlipFinder finder(list_);
        for (const SlipMark& mark : SlipFinder(list_).find()) {
            if (!mark.has(*code))
                continue;
            for (const Slip& slip : finder.slips_of(mark.number)) {
                if (slip.problem.code == *code && !slip.repair.empty())
                    set(mark.number, slip.repair);
            }
        }
    }

    std::string_view text_;
    const KeptList& list_;
    ListEditor& editor_;
    FreeIds free_ids_;
};

} // namespace

void apply_changes(RequestFields& fields, std::string_view request_text, const KeptList& list,
                   ListEditor& editor) {
    const JsonValue* changes = fields.optional("changes");
    fields.require(changes != nullptr, "changes", ProblemWord::some_changes);
    if (!changes)
        return;
    if (changes->kind != Kind::array) {
        fields.report("changes", ProblemCode::request_field_wrong_type,
                      {{"found", changes->kind_name()}, {"kind", ProblemWord::list_of_changes}});
        return;
    }
    ChangeReader reader(request_text, list, editor);
    for (std::size_t i = 0; i < changes->items.size(); ++i) {
        if (auto problem = reader.apply(changes->items[i], "changes[" + std::to_string(i) + ']')) {
            fields.report(*std::move(problem));
            return;
        }
    }
}

std::vector<UnknownField> header_fields_of(RequestFields& fields, std::string_view request_text) {
    std::vector<UnknownField> header;
    for (const std::string_view name : editable_header) {
        if (fields.given_as_null(name)) {
            header.push_back({std::string(name), {}});
        } else if (const JsonValue* value = fields.optional(name)) {
            const bool empty = value->kind == Kind::text && value->text.empty();
            header.push_back({std::string(name), empty ? std::string()
                                                       : std::string(request_text.substr(
                                                             value->begin, value->end - value->begin))});
        }
    }
    return header;
}

std::vector<FieldCell> cells_of_request(RequestFields& fields, const JsonValue& value,
                                        std::string_view name) {
    std::vector<FieldCell> cells;
    if (value.kind != Kind::object) {
        fields.report(name, ProblemCode::request_field_wrong_type,
                      {{"found", value.kind_name()}, {"kind", ProblemWord::cells_in_braces}});
    }
    for (const JsonMember& member : value.members) {
        if (member.value.kind == Kind::text || member.value.kind == Kind::null) {
            cells.push_back({member.name, member.value.text});
        } else {
            fields.report(std::string(name) + '.' + member.name, ProblemCode::request_field_wrong_type,
                          {{"found", member.value.kind_name()}, {"kind", ProblemWord::cell_or_null}});
        }
    }
    return cells;
}

void undo_field(JsonWriter& json, const std::vector<ListChange>& changes) {
    const auto entry_fields = [&](std::string_view step, std::string_view place, const ListChange& change) {
        field(json, step, change.entry.source);
        field(json, place, change.number);
        if (change.entry.origin != no_origin)
            field(json, "origin", change.entry.origin);
    };
    json.key("undo").array_of(changes, [&](const ListChange& change) {
        json.object([&] {
            switch (change.kind) {
            case ListChange::Kind::put:
                entry_fields("put", "number", change);
                return;
            case ListChange::Kind::insert:
                entry_fields("insert", "before", change);
                return;
            case ListChange::Kind::remove:
                field(json, "remove", change.number);
                return;
            case ListChange::Kind::header:
                break;
            }
            json.key("list").object([&] {
                json.key(change.header_field.name)
                    .raw(change.header_field.json.empty() ? "null" : change.header_field.json);
            });
        });
    });
}

} // namespace saddlerule
