#include "core/lists/keeping/list_merge.h"

#include "core/base/sorting/sorting.h"
#include "core/lists/catalogue/bike_reader.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/list_judgement.h"
#include "core/lists/keeping/entry_text.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>
#include <variant>

namespace saddlerule {
namespace {

/// What a bike is known by: its id, or its name where it has none.
struct Mark {
    bool is_id = false;
    std::string_view text;
    std::size_t number = 0;

    bool same_as(const Mark& other) const { return is_id == other.is_id && text == other.text; }
    friend bool operator<(const Mark& a, const Mark& b) {
        if (a.is_id != b.is_id)
            return a.is_id;
        return a.text != b.text ? a.text < b.text : a.number < b.number;
    }
};

Mark mark_of(const JudgedEntry& entry, std::size_t number) {
    const bool is_id = entry.bike ? !entry.bike->id_from_name : !entry.set_aside->id.empty();
    return {is_id, is_id ? entry.id() : entry.name(), number};
}

std::vector<Mark> sorted_marks(const KeptList& list) {
    std::vector<Mark> marks;
    for (std::size_t number = 1; number <= list.entries.size(); ++number) {
        const Mark mark = mark_of(judged_entry(list.catalogue, number), number);
        if (!mark.text.empty())
            marks.push_back(mark);
    }
    heap_sort(marks);
    return marks;
}

template <typename Value>
bool same(const Value& a, const Value& b) {
    return a == b;
}

bool same(const std::optional<Length>& a, const std::optional<Length>& b) {
    constexpr Length tenth_of_a_millimetre = Length::millimetres(0.1);
    if (!a || !b)
        return a.has_value() == b.has_value();
    return *a - *b < tenth_of_a_millimetre && *b - *a < tenth_of_a_millimetre;
}

bool same(const std::optional<Mass>& a, const std::optional<Mass>& b) {
    constexpr double gram = 0.001;
    if (!a || !b)
        return a.has_value() == b.has_value();
    return std::abs(a->in_kilograms() - b->in_kilograms()) < gram;
}

bool same(const std::optional<Wheel>& a, const std::optional<Wheel>& b) {
    return a.has_value() == b.has_value() && (!a || a->text() == b->text());
}

/// The fields beside those that are read for a bike, and all of them where one of the two is no bike.
void compare_cells(const JsonValue& here, std::string_view here_text, const JsonValue& there,
                   std::string_view there_text, const CellContext& context, bool known_ones_too,
                   std::vector<std::string>& differs) {
    const auto compare = [&](const std::string& name) {
        const bool done = std::find(differs.begin(), differs.end(), name) != differs.end();
        if (!done && (known_ones_too || !field_named(name)) &&
            cell_of(here, here_text, name, context) != cell_of(there, there_text, name, context))
            differs.push_back(name);
    };
    for (const JsonMember& member : here.members)
        compare(member.name);
    for (const JsonMember& member : there.members)
        compare(member.name);
}

/// What the entry says by the facts of this list.
std::optional<Bike> bike_read_here(const KeptList& here, const JsonValue& entry, std::string_view text) {
    auto bike = read_bike(entry, {.text = text,
                                  .units = here.facts.units,
                                  .currency = here.facts.currency,
                                  .places = nullptr,
                                  .origin = no_origin});
    return bike ? std::optional(std::move(bike).value()) : std::nullopt;
}

std::vector<std::string> differences(const KeptList& here, std::size_t here_number, const KeptList& there,
                                     std::size_t there_number) {
    std::vector<std::string> differs;
    const Bike* a = judged_entry(here.catalogue, here_number).bike;
    const std::string_view here_text = here.entries[here_number - 1].source;
    const std::string there_text = entry_for(here, there, there_number);
    const auto there_entry = read_entry(there_text);
    const auto b = there_entry ? bike_read_here(here, *there_entry, there_text) : std::nullopt;
    if (a && b) {
        for (const CatalogueField& field : catalogue_fields()) {
            const bool is_same =
                std::visit([&](auto target) { return same(a->*target, (*b).*target); }, field.target);
            // An id that stands for the name is none, and both have none or the same.
            if (!is_same && field.name != "id")
                differs.emplace_back(field.name);
        }
    }
    const auto here_entry = read_entry(here_text);
    if (here_entry && there_entry) {
        compare_cells(*here_entry, here_text, *there_entry, there_text, cell_context(here.facts), !a || !b,
                      differs);
    }
    return differs;
}

} // namespace

std::vector<BikePair> compared(const KeptList& here, const KeptList& there) {
    const std::vector<Mark> marks = sorted_marks(here);
    std::vector<bool> met(marks.size(), false);
    std::vector<BikePair> pairs;
    for (std::size_t i = 0; i < there.catalogue.bikes.size(); ++i) {
        BikePair pair;
        pair.there = number_of_bike(there.catalogue, i);
        pair.id = there.catalogue.bikes[i].id;
        Mark mark = mark_of(judged_entry(there.catalogue, pair.there), 0);
        auto place =
            static_cast<std::size_t>(std::lower_bound(marks.begin(), marks.end(), mark) - marks.begin());
        while (place < marks.size() && met[place] && marks[place].same_as(mark))
            ++place;
        if (place < marks.size() && marks[place].same_as(mark)) {
            met[place] = true;
            pair.here = marks[place].number;
            pair.differs = differences(here, pair.here, there, pair.there);
        }
        pairs.push_back(std::move(pair));
    }
    return pairs;
}

std::string entry_for(const KeptList& here, const KeptList& there, std::size_t number) {
    const std::string_view source = there.entries[number - 1].source;
    const bool other_units = here.facts.units != there.facts.units;
    const bool other_currency = here.facts.currency != there.facts.currency;
    const auto entry = read_entry(source);
    if (!entry || (!other_units && !other_currency))
        return std::string(source);
    const CellContext context = cell_context(there.facts);
    std::vector<FieldCell> cells;
    for (const JsonMember& member : entry->members) {
        const CatalogueField* field = field_named(member.name);
        if (!field)
            continue;
        const bool is_length = std::holds_alternative<std::optional<Length> Bike::*>(field->target);
        const std::string cell = cell_of(*entry, source, member.name, context);
        if (is_length && other_units && there.facts.units && is_bare_length(member.value))
            cells.push_back({member.name, bare_with_unit(member.value, source, *there.facts.units)});
        if (member.name != "price" || !other_currency || cell.empty())
            continue;
        std::string own_name = "price_";
        for (const char c : there.facts.currency ? there.facts.currency->code() : std::string_view("OPEN"))
            own_name += static_cast<char>(c - 'A' + 'a');
        while (entry->find(own_name))
            own_name += '_';
        cells.push_back({std::move(own_name), cell});
        cells.push_back({member.name, {}});
    }
    return cells.empty() ? std::string(source) : entry_with(source, cells, context);
}

void ListMerger::take(const BikePair& pair, Keep keep) {
    if (pair.here != 0 && (keep == Keep::here || pair.differs.empty()))
        return;
    std::string entry = entry_for(here_, there_, pair.there);
    if (pair.here != 0 && keep == Keep::there) {
        editor_.put(pair.here, entry_of_text(here_, std::move(entry)));
        return;
    }
    const Bike& bike = *judged_entry(there_.catalogue, pair.there).bike;
    if (pair.here != 0 && !bike.id_from_name) {
        const FieldCell own{"id", free_ids_.like(bike.id)};
        entry = entry_with(entry, {&own, 1}, cell_context(here_.facts));
    }
    editor_.insert(editor_.count() + 1, entry_of_text(here_, std::move(entry)));
}

} // namespace saddlerule
