#include "core/exchange/list_desk.h"

#include "core/exchange/catalogue_answer.h"
#include "core/exchange/edit_request.h"
#include "core/exchange/entry_answer.h"
#include "core/exchange/merge_request.h"
#include "core/exchange/problem_answer.h"
#include "core/exchange/save_answer.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/catalogue_reader.h"
#include "core/lists/catalogue/list_header.h"
#include "core/lists/catalogue/table_head.h"
#include "core/lists/keeping/json_list_writer.h"

#include <cmath>
#include <utility>

namespace saddlerule {
namespace {

/// A page that shows rows shows the first few of those set aside in a file that was refused.
constexpr std::size_t most_refused_beside_rows = 100;

/// On demand only: without a wish the file says itself what it is in.
constexpr WireName<TextEncoding> encoding_names[] = {{"windows-1252", TextEncoding::windows_1252}};

constexpr WireName<LengthUnit> list_units[] = {
    {"cm", LengthUnit::centimetre},
    {"mm", LengthUnit::millimetre},
    {"in", LengthUnit::inch},
};

/// `columns`: the fields that are in them, each with the column's place from 1, or null for none.
SaidColumns said_columns(RequestFields& fields) {
    SaidColumns said;
    const JsonValue* given = fields.optional("columns");
    if (given == nullptr)
        return said;
    const auto places = *ClosedRange<double>::between(1.0, double{most_table_columns});
    RequestFields columns(*given, fields.path_of("columns"));
    for (const CatalogueField& field : catalogue_fields()) {
        const JsonMember* const member = given->find(field.name);
        const auto place = columns.optional_number(field.name, places);
        columns.require(!place || std::floor(*place) == *place, field.name, "the place of a column, from 1");
        if (member) // with null it is in none
            said.emplace_back(&field, static_cast<std::size_t>(place.value_or(0.0)));
    }
    if (auto problem = columns.finish())
        fields.report(*std::move(problem));
    return said;
}

ReadingOptions reading_options(RequestFields& fields, const GivenFile& file) {
    return {.encoding =
                fields.optional_choice("encoding", encoding_names).value_or(TextEncoding::told_by_file),
            .table_units = fields.optional_choice("table_units", list_units),
            .columns = said_columns(fields),
            .to_mend = fields.optional_flag("to_mend").value_or(false),
            .sketch = nullptr,
            .progress = file.progress};
}

const auto entry_numbers = *ClosedRange<double>::between(1.0, 1e6);

} // namespace

std::span<const Bike> ListDesk::bikes() const {
    return list_ ? std::span<const Bike>(list_->catalogue.bikes) : std::span<const Bike>();
}

std::string ListDesk::load(RequestFields& fields, const GivenFile& file) {
    const auto view = optional_list_view(fields);
    ReadingOptions options = reading_options(fields, file);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    std::vector<SetAside> refused;
    TableSketch sketch;
    options.sketch = &sketch;
    auto read = read_catalogue(file.bytes, &refused, options);
    const TableSketch* table = sketch.needs_a_word() ? &sketch : nullptr;
    if (!read) {
        if (view && refused.size() > most_refused_beside_rows)
            refused.erase(refused.begin() + most_refused_beside_rows, refused.end());
        return load_refusal(read.problem(), refused, table);
    }
    take(std::move(read).value());
    return view ? view_answer(*view, nullptr, table) : load_answer(*list_, table);
}

std::string ListDesk::new_list(RequestFields& fields, std::string_view request_text) {
    KeptList list;
    for (UnknownField& field : header_fields_of(fields, request_text)) {
        if (!field.json.empty())
            list.header.push_back(std::move(field));
    }
    const auto view = optional_list_view(fields);
    const std::string text = header_json(list.header);
    const auto header = read_json(text, JsonLimits());
    if (!header)
        fields.report(header.problem());
    else if (auto fault = header_fault(*header, text, nullptr))
        fields.report(*std::move(fault));
    if (auto problem = fields.finish())
        return error_answer(*problem);
    std::vector<UnknownField> as_given = list.header;
    take_header(*header, text, list);
    list.header = std::move(as_given);
    list.header_notes = list.catalogue.notes.size();
    take(std::move(list));
    return view ? view_answer(*view) : list_answer(&*list_, slips());
}

std::string ListDesk::list(RequestFields& fields) {
    const auto view = optional_list_view(fields);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    if (view)
        return view_answer(*view);
    return list_ ? list_answer(&*list_, slips()) : list_answer(nullptr, {});
}

std::string ListDesk::entry(RequestFields& fields) {
    auto number = fields.optional_number("number", entry_numbers);
    const auto id = fields.optional_text("id");
    const bool with_next_id = fields.optional_flag("next_id").value_or(false);
    fields.require(number || id, "number", ProblemWord::number_or_id);
    std::size_t place = number ? static_cast<std::size_t>(*number) : 0;
    if (id && !number && list_)
        place = number_of_id(list_->catalogue, *id);
    if (!list_ || place == 0 || place > list_->entries.size()) {
        fields.report(id ? "id" : "number", ProblemCode::request_bike_unknown,
                      {{"id", id ? *id : std::to_string(place)}});
    }
    if (auto problem = fields.finish())
        return error_answer(*problem);
    return entry_answer(*list_, place, with_next_id);
}

std::string ListDesk::check_entry(RequestFields& fields) {
    const JsonValue* value = fields.optional("cells");
    fields.require(value != nullptr, "cells", ProblemWord::cells_of_entry);
    std::vector<FieldCell> cells;
    if (value)
        cells = cells_of_request(fields, *value, "cells");
    const auto number = fields.optional_number("number", entry_numbers);
    const std::size_t place = number ? static_cast<std::size_t>(*number) : 0;
    if (place > (list_ ? list_->entries.size() : 0))
        fields.report("number", ProblemCode::request_bike_unknown, {{"id", std::to_string(place)}});
    if (auto problem = fields.finish())
        return error_answer(*problem);
    const KeptList none;
    return check_entry_answer(list_ ? *list_ : none, place, cells);
}

std::string ListDesk::edit(RequestFields& fields, std::string_view request_text) {
    if (!list_)
        take(KeptList());
    ListEditor editor(*list_);
    apply_changes(fields, request_text, *list_, editor);
    const auto view = optional_list_view(fields);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    return edited(editor, view);
}

std::string ListDesk::compare(RequestFields& fields, const GivenFile& file) {
    const ReadingOptions options = reading_options(fields, file);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    const auto there = read_catalogue(file.bytes, nullptr, options);
    if (!there)
        return error_answer(there.problem());
    const KeptList none;
    return compare_answer(list_ ? *list_ : none, *there);
}

std::string ListDesk::merge(RequestFields& fields, const GivenFile& file) {
    const ReadingOptions options = reading_options(fields, file);
    const MergeWishes wishes = merge_wishes(fields);
    const auto view = optional_list_view(fields);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    const auto there = read_catalogue(file.bytes, nullptr, options);
    if (!there)
        return error_answer(there.problem());
    if (!list_)
        take(KeptList());
    ListEditor editor(*list_);
    apply_merge(fields, *list_, *there, wishes, editor);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    return edited(editor, view);
}

std::string ListDesk::save(RequestFields& fields) {
    const SaveWishes wishes = save_wishes(fields);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    const KeptList none;
    return save_answer(list_ ? *list_ : none, wishes);
}

std::string ListDesk::edited(ListEditor& editor, const std::optional<ListView>& view) {
    if (auto problem = editor.commit())
        return error_answer(*problem);
    slips_.reset();
    const std::vector<ListChange> undo = std::move(editor).undo();
    return view_answer(view.value_or(ListView{.rows = {}, .show = ListShow::all, .find = {}}), &undo);
}

void ListDesk::take(KeptList list) {
    list_ = std::move(list);
    slips_.reset();
}

const std::vector<SlipMark>& ListDesk::slips() {
    if (!slips_) {
        slips_ = SlipFinder(*list_).find();
        surroundings_ = list_surroundings(*list_, *slips_);
    }
    return *slips_;
}

std::string ListDesk::view_answer(const ListView& view, const std::vector<ListChange>* undo,
                                  const TableSketch* table) {
    JsonWriter json;
    json.object([&] {
        if (!list_)
            no_list_fields(json);
        else
            list_view_fields(json, *list_, slips(), surroundings_, view);
        if (undo)
            undo_field(json, *undo);
        table_field(json, table);
    });
    return json.take();
}

} // namespace saddlerule
