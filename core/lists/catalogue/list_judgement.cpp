#include "core/lists/catalogue/list_judgement.h"

#include "core/base/outcomes/figure_text.h"
#include "core/base/sorting/sorting.h"
#include "core/lists/catalogue/bike_ids.h"
#include "core/lists/catalogue/bike_reader.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/list_header.h"

#include <algorithm>
#include <iterator>
#include <numeric>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace saddlerule {
namespace {

/// Many names that nobody knows are a file gone wrong; telling the first of them is enough.
constexpr std::size_t most_remarks = 50;

/// Where a field is in an entry: its name and its value, in bytes behind the entry's beginning.
struct FieldOffsets {
    std::size_t name = 0;
    std::size_t value = 0;
};

FieldOffsets offsets_of(const ListEntry& entry, std::string_view field) {
    const auto value = read_json(entry.source, JsonLimits());
    const JsonMember* member = value ? value->find(field) : nullptr;
    return member ? FieldOffsets{member->name_begin, member->value.begin} : FieldOffsets();
}

void place(const KeptList& list, Problem& problem, const ListEntry& entry, std::size_t offset,
           std::string_view field) {
    if (list.places && entry.origin != no_origin)
        list.places->place_in_entry(problem, entry.origin, offset, field);
}

/// An id that an earlier bike has.
Problem id_taken(const KeptList& list, const std::string& id, std::size_t number, std::size_t first) {
    Problem problem{.code = ProblemCode::bike_id_given_twice,
                    .figures = {{"id", excerpt(id)}},
                    .where = entry_path(number) + ".id",
                    .position = {}};
    const ListEntry& entry = list.entries[number - 1];
    place(list, problem, entry, offsets_of(entry, "id").value, "id");
    const ListEntry& earlier = list.entries[first - 1];
    Problem there;
    place(list, there, earlier, offsets_of(earlier, "id").value, "id");
    if (there.position) {
        problem.code = ProblemCode::bike_id_taken;
        problem.figures.add("line", there.position->line);
    } else if (there.cell) {
        problem.code = ProblemCode::bike_id_taken_in_row;
        problem.figures.add("row", there.cell->row);
    }
    return problem;
}

/// Something that is told once, however often it comes up.
struct Remark {
    std::string_view field;
    std::size_t bike; ///< where it came up first
    std::size_t times;
};

/// Fields that are not known, in the order in which they came up, and how many more there are.
struct Remarks {
    std::vector<Remark> unknown;
    std::size_t further = 0;
    std::optional<Remark> price;  ///< which no currency goes with
    std::vector<Remark> not_read; ///< of known fields, cells that were left open

    void add(const UnknownField& kept, std::size_t bike) {
        const std::string_view field = kept.name;
        if (field_named(field)) {
            const bool no_currency = field == "price" && !kept.json.starts_with('"');
            if (!no_currency)
                count(not_read, field, bike);
            else if (price)
                ++price->times;
            else
                price = Remark{field, bike, 1};
            return;
        }
        if (field == day_field && is_day(kept.json))
            return;
        const auto known = std::find_if(unknown.begin(), unknown.end(),
                                        [&](const Remark& remark) { return remark.field == field; });
        if (known != unknown.end())
            ++known->times;
        else if (unknown.size() < most_remarks)
            unknown.push_back({field, bike, 1});
        else
            ++further;
    }

private:
    static bool is_day(std::string_view json) {
        return json.size() > 2 && CalendarDate::from_iso(json.substr(1, json.size() - 2));
    }

    static void count(std::vector<Remark>& remarks, std::string_view field, std::size_t bike) {
        for (Remark& remark : remarks) {
            if (remark.field == field) {
                ++remark.times;
                return;
            }
        }
        remarks.push_back({field, bike, 1});
    }
};

Problem note_on(const KeptList& list, const Remark& remark, ProblemCode code) {
    const std::size_t number = number_of_bike(list.catalogue, remark.bike);
    const ListEntry& entry = list.entries[number - 1];
    Problem note{.code = code,
                 .figures = {{"times", remark.times}},
                 .where = entry_path(number) + '.' + std::string(remark.field),
                 .position = {}};
    place(list, note, entry, offsets_of(entry, remark.field).name, remark.field);
    return note;
}

} // namespace

void judge_entry(KeptList& list, std::size_t number, const JsonValue& value, std::string_view text,
                 std::span<const CatalogueField* const> fields) {
    Catalogue& catalogue = list.catalogue;
    const auto aside_before = static_cast<std::ptrdiff_t>(set_aside_before(catalogue, number));
    const auto index = static_cast<std::ptrdiff_t>(number) - 1 - aside_before;
    const auto bike = catalogue.bikes.emplace(catalogue.bikes.begin() + index); // read in its place
    auto fault = read_bike_into(*bike, value,
                                {.text = text,
                                 .units = list.facts.units,
                                 .currency = list.facts.currency,
                                 .places = list.places.get(),
                                 .origin = list.entries[number - 1].origin,
                                 .fields = fields});
    if (!fault)
        return;
    catalogue.bikes.erase(bike);
    catalogue.set_aside.insert(
        catalogue.set_aside.begin() + aside_before,
        set_aside_entry(value, number, std::move(*fault).within(entry_path(number)), text));
}

void settle_ids(KeptList& list) {
    std::vector<Bike>& bikes = list.catalogue.bikes;
    for (Bike& bike : bikes) {
        if (std::exchange(bike.id_from_name, false))
            bike.id.clear();
    }
    // Lists are mostly kept in the order of their ids, and then no two are the same.
    const bool in_order = std::adjacent_find(bikes.begin(), bikes.end(), [](const Bike& a, const Bike& b) {
                              return a.id.empty() || a.id >= b.id;
                          }) == bikes.end();
    if (in_order) {
        give_missing_ids(bikes);
        return;
    }
    std::vector<std::size_t> by_id(bikes.size());
    std::iota(by_id.begin(), by_id.end(), std::size_t{0});
    heap_sort(by_id, [&](std::size_t a, std::size_t b) {
        const int order = bikes[a].id.compare(bikes[b].id);
        return order != 0 ? order < 0 : a < b;
    });
    std::vector<bool> taken(bikes.size(), false);
    std::vector<SetAside> set_aside;
    for (std::size_t i = 1, first = 0; i < by_id.size(); ++i) {
        const Bike& bike = bikes[by_id[i]];
        if (bike.id.empty() || bike.id != bikes[by_id[first]].id) {
            first = i;
            continue;
        }
        taken[by_id[i]] = true;
        const std::size_t number = number_of_bike(list.catalogue, by_id[i]);
        set_aside.push_back(
            {.number = number,
             .id = bike.id,
             .name = bike.name,
             .problem = id_taken(list, bike.id, number, number_of_bike(list.catalogue, by_id[first])),
             .source = std::string(list.entries[number - 1].source)});
    }
    if (!set_aside.empty()) {
        std::size_t kept = 0;
        for (std::size_t i = 0; i < bikes.size(); ++i) {
            if (taken[i])
                continue;
            if (kept != i)
                bikes[kept] = std::move(bikes[i]);
            ++kept;
        }
        bikes.resize(kept);
        std::vector<SetAside>& all = list.catalogue.set_aside;
        std::move(set_aside.begin(), set_aside.end(), std::back_inserter(all));
        heap_sort(all, [](const SetAside& a, const SetAside& b) { return a.number < b.number; });
    }
    give_missing_ids(bikes);
}

void note_remarks(KeptList& list) {
    const std::vector<Bike>& bikes = list.catalogue.bikes;
    Remarks remarks;
    for (std::size_t i = 0; i < bikes.size(); ++i) {
        for (const UnknownField& field : bikes[i].unknown_fields)
            remarks.add(field, i);
    }
    std::vector<Problem>& notes = list.catalogue.notes;
    notes.erase(notes.begin() + static_cast<std::ptrdiff_t>(list.header_notes), notes.end());
    if (remarks.price)
        notes.push_back(note_on(list, *remarks.price, ProblemCode::list_price_without_currency));
    for (const Remark& remark : remarks.not_read) {
        Problem note = note_on(list, remark, ProblemCode::list_cell_not_read);
        for (const UnknownField& field : bikes[remark.bike].unknown_fields) {
            if (field.name == remark.field)
                note.figures.add("value", excerpt(field.json));
        }
        note.figures.add("field", excerpt(remark.field));
        notes.push_back(std::move(note));
    }
    for (const Remark& remark : remarks.unknown) {
        Problem note = note_on(list, remark, ProblemCode::list_field_unknown);
        const CatalogueField* meant = field_meant_by(remark.field);
        note.figures.add("field", excerpt(remark.field));
        if (meant)
            note.figures.add("known",
                             KnownNames{.are = KnownNames::Are::guess, .names = {std::string(meant->name)}});
        notes.push_back(std::move(note));
    }
    if (remarks.further > 0) {
        notes.push_back({.code = ProblemCode::list_fields_unknown_more,
                         .figures = {{"count", remarks.further}},
                         .where = {},
                         .position = {}});
    }
}

std::size_t number_of_bike(const Catalogue& catalogue, std::size_t index) {
    // The k-th of those set aside comes after its number less k bikes, counted from 1.
    std::size_t low = 0;
    std::size_t high = catalogue.set_aside.size();
    while (low < high) {
        const std::size_t middle = (low + high) / 2;
        if (catalogue.set_aside[middle].number - 1 - middle <= index)
            low = middle + 1;
        else
            high = middle;
    }
    return index + 1 + low;
}

std::size_t set_aside_before(const Catalogue& catalogue, std::size_t number) {
    const auto found =
        std::lower_bound(catalogue.set_aside.begin(), catalogue.set_aside.end(), number,
                         [](const SetAside& entry, std::size_t wanted) { return entry.number < wanted; });
    return static_cast<std::size_t>(found - catalogue.set_aside.begin());
}

JudgedEntry judged_entry(const Catalogue& catalogue, std::size_t number) {
    const std::size_t aside = set_aside_before(catalogue, number);
    if (aside < catalogue.set_aside.size() && catalogue.set_aside[aside].number == number)
        return {.bike = nullptr, .set_aside = &catalogue.set_aside[aside]};
    return {.bike = &catalogue.bikes[number - 1 - aside], .set_aside = nullptr};
}

} // namespace saddlerule
