#include "core/lists/keeping/list_editor.h"

#include "core/base/json/located_json.h"
#include "core/base/outcomes/figure_text.h"
#include "core/base/text/utf8_text.h"
#include "core/lists/catalogue/list_header.h"
#include "core/lists/catalogue/list_judgement.h"
#include "core/lists/keeping/entry_text.h"
#include "core/lists/keeping/json_list_writer.h"

#include <algorithm>
#include <iterator>
#include <memory>
#include <utility>

namespace saddlerule {
namespace {

template <typename Items>
auto at(Items& items, std::size_t number) {
    return items.begin() + static_cast<std::ptrdiff_t>(number - 1);
}

/// Set aside for what another bike says, so that it may be usable once that one has changed.
bool hangs_on_others(const SetAside& entry) {
    const ProblemCode code = entry.problem.code;
    return code == ProblemCode::bike_id_taken || code == ProblemCode::bike_id_taken_in_row ||
           code == ProblemCode::bike_id_given_twice;
}

void renumber(SetAside& entry, std::size_t number) {
    if (entry.number == number)
        return;
    entry.number = number;
    std::string& where = entry.problem.where;
    where = entry_path(number) + where.substr(where.find(']') + 1);
}

std::string_view json_of(const std::vector<UnknownField>& header, std::string_view name) {
    const auto found = std::find_if(header.begin(), header.end(),
                                    [&](const UnknownField& field) { return field.name == name; });
    return found == header.end() ? std::string_view() : std::string_view(found->json);
}

} // namespace

ListEntry entry_of_text(const KeptList& list, std::string json, std::size_t origin) {
    if (list.form == ListForm::json && origin != no_origin) {
        for (const auto& text : list.texts) {
            const std::string_view there = std::string_view(*text).substr(std::min(origin, text->size()));
            if (there.starts_with(json))
                return {.source = there.substr(0, json.size()), .origin = origin, .own = nullptr};
        }
        origin = no_origin;
    }
    auto own = std::make_shared<const std::string>(std::move(json));
    return {.source = *own, .origin = origin, .own = own};
}

ListEditor::ListEditor(KeptList& list) : list_(list), entries_(list.entries), header_(list.header) {
    judged_.reserve(entries_.size());
    Judged bike = 0;
    auto set_aside = static_cast<Judged>(list.catalogue.bikes.size());
    auto next_aside = list.catalogue.set_aside.begin();
    for (std::size_t number = 1; number <= entries_.size(); ++number) {
        const bool is_aside = next_aside != list.catalogue.set_aside.end() && next_aside->number == number;
        judged_.push_back(is_aside ? set_aside++ : bike++);
        if (is_aside)
            ++next_aside;
    }
}

void ListEditor::put(std::size_t number, ListEntry entry) {
    ListEntry& here = *at(entries_, number);
    undo_.push_back({.kind = ListChange::Kind::put,
                     .number = number,
                     .entry = std::exchange(here, std::move(entry)),
                     .header_field = {}});
    *at(judged_, number) = touched;
}

void ListEditor::insert(std::size_t number, ListEntry entry) {
    entries_.insert(at(entries_, number), std::move(entry));
    judged_.insert(at(judged_, number), touched);
    undo_.push_back({.kind = ListChange::Kind::remove, .number = number, .entry = {}, .header_field = {}});
}

void ListEditor::remove(std::size_t number) {
    undo_.push_back({.kind = ListChange::Kind::insert,
                     .number = number,
                     .entry = std::move(*at(entries_, number)),
                     .header_field = {}});
    entries_.erase(at(entries_, number));
    judged_.erase(at(judged_, number));
}

void ListEditor::set_header(UnknownField field) {
    const auto found = std::find_if(header_.begin(), header_.end(),
                                    [&](const UnknownField& had) { return had.name == field.name; });
    undo_.push_back({.kind = ListChange::Kind::header,
                     .number = 0,
                     .entry = {},
                     .header_field = {.name = field.name, .json = {}}});
    if (found != header_.end())
        undo_.back().header_field.json = found->json;
    if (found == header_.end() && !field.json.empty())
        header_.push_back(std::move(field));
    else if (field.json.empty() && found != header_.end())
        header_.erase(found);
    else if (found != header_.end())
        found->json = std::move(field.json);
    header_touched_ = true;
}

ReadingFacts ListEditor::facts() const {
    if (!header_touched_)
        return list_.facts;
    const auto header = read_json(header_json(header_), JsonLimits());
    return header ? reading_facts(*header) : ReadingFacts();
}

std::optional<Problem> ListEditor::header_fault() const {
    const std::string text = header_json(header_);
    const auto header = read_json(text, JsonLimits());
    return header ? saddlerule::header_fault(*header, text, nullptr) : header.problem();
}

std::optional<Problem> ListEditor::fault() const {
    const auto problem = [](ProblemCode code, std::string_view where, Figures figures) {
        return Problem{.code = code,
                       .figures = std::move(figures),
                       .where = std::string(where),
                       .position = {},
                       .cell = {}};
    };
    if (entries_.size() > most_bikes) {
        return problem(ProblemCode::file_too_many_bikes, {},
                       {{"count", entries_.size()}, {"limit", most_bikes}});
    }
    constexpr double mib = 1024.0 * 1024.0;
    const std::size_t size = least_json_size(entries_, header_);
    if (size > largest_file) {
        return problem(ProblemCode::file_too_large, {},
                       {{"size", Number{.value = static_cast<double>(size) / mib, .decimals = 1}},
                        {"limit", largest_file_mib}});
    }
    return std::nullopt;
}

std::optional<Problem> ListEditor::commit() {
    if (auto problem = fault())
        return problem;
    list_.entries = std::move(entries_);
    const ReadingFacts before = list_.facts;
    if (header_touched_)
        take_header_anew();
    judge_anew(list_.facts != before);
    return std::nullopt;
}

void ListEditor::take_header_anew() {
    std::vector<Problem>& notes = list_.catalogue.notes;
    notes.erase(notes.begin() + static_cast<std::ptrdiff_t>(list_.header_notes), notes.end());
    if (list_.header_in_file.empty()) {
        list_.header_in_file = list_.header;
        list_.header_notes_in_file = notes;
    }
    const std::string text = header_json(header_);
    const auto header = read_json(text, JsonLimits());
    // The text is a new one, which nobody has seen: what comes up in it has no place.
    auto places = std::exchange(list_.places, nullptr);
    take_header(*header, text, list_);
    list_.places = std::move(places);
    list_.header = std::move(header_); // without what was filled in
    for (Problem& note : notes) {
        const std::vector<Problem>& in_file = list_.header_notes_in_file;
        const auto same = std::find_if(in_file.begin(), in_file.end(), [&](const Problem& had) {
            return had.where == note.where && had.code == note.code;
        });
        if (same != in_file.end() &&
            json_of(list_.header, note.where) == json_of(list_.header_in_file, note.where))
            note = *same;
    }
    list_.header_notes = notes.size();
}

void ListEditor::judge_anew(bool all) {
    Catalogue& catalogue = list_.catalogue;
    std::vector<Bike> bikes = std::exchange(catalogue.bikes, {});
    std::vector<SetAside> set_aside = std::exchange(catalogue.set_aside, {});
    catalogue.bikes.reserve(std::min(list_.entries.size(), bikes.size() + 1));
    for (std::size_t number = 1; number <= list_.entries.size(); ++number) {
        const Judged judged = all ? touched : judged_[number - 1];
        if (judged < bikes.size()) {
            catalogue.bikes.push_back(std::move(bikes[judged]));
            continue;
        }
        if (judged != touched && !hangs_on_others(set_aside[judged - bikes.size()])) {
            catalogue.set_aside.push_back(std::move(set_aside[judged - bikes.size()]));
            renumber(catalogue.set_aside.back(), number);
            continue;
        }
        const std::string_view source = list_.entries[number - 1].source;
        judge_entry(list_, number, *read_entry(source), source);
    }
    settle_ids(list_);
    note_remarks(list_);
}

std::vector<ListChange> ListEditor::undo() && {
    std::reverse(undo_.begin(), undo_.end());
    return std::move(undo_);
}

} // namespace saddlerule
