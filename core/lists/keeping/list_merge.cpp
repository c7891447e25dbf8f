#include "core/lists/keeping/list_merge.h"

#include "core/base/sorting/sorting.h"
#include "core/base/text/ascii_case.h"
#include "core/lists/catalogue/bike_reader.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/list_header.h"
#include "core/lists/catalogue/list_judgement.h"

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
        if (!done && name != day_field && (known_ones_too || !field_named(name)) &&
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

/// Whether a field is there and says something; an empty text does not.
bool says(const JsonValue& entry, std::string_view name) {
    const JsonValue* value = given(entry, name);
    return value && !(value->kind == JsonValue::Kind::text && value->text.empty());
}

/// What no measuring makes anew.
bool outlives_measuring(std::string_view field) {
    return field == "name" || field == "notes" || !field_named(field);
}

/// What of the other entry's fields this one lacks.
std::vector<FieldCell> gaps_of(const KeptList& here, std::string_view text, std::string_view other_text,
                               bool measurements_too) {
    const auto entry = read_entry(text);
    const auto other = read_entry(other_text);
    std::vector<FieldCell> gaps;
    if (!entry || !other)
        return gaps;
    const CellContext context = cell_context(here.facts);
    for (FieldCell& cell : cells_of(*other, other_text, context)) {
        // The day is that of the measurements, which stay.
        if (cell.name != day_field && says(*other, cell.name) && !says(*entry, cell.name) &&
            (measurements_too || outlives_measuring(cell.name)))
            gaps.push_back(std::move(cell));
    }
    const auto is_usable = [&](std::span<const FieldCell> cells) {
        const std::string filled = entry_with(text, cells, context);
        const auto value = read_entry(filled);
        return value && bike_read_here(here, *value, filled);
    };
    if (!bike_read_here(here, *entry, text) || is_usable(gaps))
        return gaps;
    // Measurements of two days can contradict each other, such as a highest saddle below the lowest.
    std::vector<FieldCell> agreeing;
    for (FieldCell& gap : gaps) {
        agreeing.push_back(std::move(gap));
        if (!is_usable(agreeing))
            agreeing.pop_back();
    }
    return agreeing;
}

std::optional<Keep> newer_of(const KeptList& here, const KeptList& there, const BikePair& pair) {
    const auto day_here = measured_on(here, pair.here);
    const auto day_there = measured_on(there, pair.there);
    if (!day_here || !day_there || *day_here == *day_there)
        return std::nullopt;
    return *day_there > *day_here ? Keep::there : Keep::here;
}

std::vector<std::string> differences(const KeptList& here, const KeptList& there, const BikePair& pair,
                                     std::string_view there_text) {
    std::vector<std::string> differs;
    const Bike* a = judged_entry(here.catalogue, pair.here).bike;
    const std::string_view here_text = here.entries[pair.here - 1].source;
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
        // Lists of two days alone are no difference of every bike in them.
        if ((given(*here_entry, day_field) || given(*there_entry, day_field)) &&
            measured_on(here, pair.here) != measured_on(there, pair.there))
            differs.emplace_back(day_field);
    }
    return differs;
}

} // namespace

std::optional<CalendarDate> measured_on(const KeptList& list, std::size_t number) {
    const auto entry = read_entry(list.entries[number - 1].source);
    const JsonValue* own = entry ? given(*entry, day_field) : nullptr;
    return own ? CalendarDate::from_iso(own->text) : list.catalogue.measured_on;
}

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
            const std::string there_text = entry_for(here, there, pair.there);
            pair.differs = differences(here, there, pair, there_text);
            if (!pair.differs.empty()) {
                pair.newer = newer_of(here, there, pair);
                pair.gaps = gaps_of(here, here.entries[pair.here - 1].source, there_text, true);
            }
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
            own_name += in_lower_case(c);
        while (entry->find(own_name))
            own_name += '_';
        cells.push_back({std::move(own_name), cell});
        cells.push_back({member.name, {}});
    }
    return cells.empty() ? std::string(source) : entry_with(source, cells, context);
}

void ListMerger::take(std::span<const BikePair> pairs) {
    const auto later = there_.catalogue.measured_on;
    if (later && (!day_ || *later > *day_) && all_of_the_later_day(pairs)) {
        day_ = later;
        editor_.set_header({.name = std::string(day_field), .json = '"' + later->to_iso() + '"'});
    }
    for (const BikePair& pair : pairs)
        take(pair);
}

bool ListMerger::all_of_the_later_day(std::span<const BikePair> pairs) const {
    std::vector<bool> as_there(here_.entries.size() + 1, false);
    for (const BikePair& pair : pairs) {
        as_there[pair.here] = pair.differs.empty() || pair.keep == Keep::there ||
                              (pair.keep == Keep::newer && pair.newer == Keep::there);
    }
    for (std::size_t number = 1; number <= here_.entries.size(); ++number) {
        const auto entry = read_entry(here_.entries[number - 1].source);
        if (!as_there[number] && !(entry && given(*entry, day_field)))
            return false;
    }
    return true;
}

std::string ListMerger::entry_of(const BikePair& pair) const {
    std::string entry = entry_for(here_, there_, pair.there);
    const auto day = there_.catalogue.measured_on;
    const auto value = read_entry(entry);
    if (!day || day == day_ || !value || given(*value, day_field))
        return entry;
    return with(entry, {{std::string(day_field), day->to_iso()}});
}

std::string ListMerger::with(const std::string& entry, const std::vector<FieldCell>& cells) const {
    return cells.empty() ? entry : entry_with(entry, cells, cell_context(here_.facts));
}

void ListMerger::take(const BikePair& pair) {
    const bool only_there = pair.here == 0;
    if (pair.keep == Keep::here || (!only_there && pair.differs.empty()) ||
        (pair.keep == Keep::newer && !pair.newer))
        return;
    std::string theirs = entry_of(pair);
    if (only_there || pair.keep == Keep::both) {
        const Bike& bike = *judged_entry(there_.catalogue, pair.there).bike;
        if (!only_there && !bike.id_from_name)
            theirs = with(theirs, {{"id", free_ids_.like(bike.id)}});
        editor_.insert(editor_.count() + 1, entry_of_text(here_, std::move(theirs)));
        return;
    }
    const std::string mine(here_.entries[pair.here - 1].source);
    const auto newest = [&](const std::string& newer, const std::string& older) {
        return with(newer, gaps_of(here_, newer, older, false));
    };
    std::string entry = pair.keep == Keep::there    ? std::move(theirs)
                        : pair.keep == Keep::fill   ? with(mine, pair.gaps)
                        : pair.newer == Keep::there ? newest(theirs, mine)
                                                    : newest(mine, theirs);
    if (entry != mine)
        editor_.put(pair.here, entry_of_text(here_, std::move(entry)));
}

} // namespace saddlerule
