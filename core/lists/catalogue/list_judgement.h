// List judgement: what no entry alone can tell, about a list whose entries are judged.
#pragma once

#include "core/base/json/located_json.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/kept_list.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace saddlerule {

/// Judges the entry of that number, of which `value` was read from `text`, and puts it among the bikes or among
/// what was set aside. Nothing may be there yet under that number. Ids are not compared. `fields` are those of
/// the entry's members where they are known already (see BikeContext).
void judge_entry(KeptList& list, std::size_t number, const JsonValue& value, std::string_view text,
                 std::span<const CatalogueField* const> fields = {});

/// Of two bikes with one id the later one is set aside; bikes without an id get one.
void settle_ids(KeptList& list);

/// Notes fields that are not known and prices without a currency, each told once, behind the list's
/// header_notes and in place of what was there.
void note_remarks(KeptList& list);

/// The number of the bike of that index in `catalogue.bikes`: numbers count what was set aside as well.
std::size_t number_of_bike(const Catalogue& catalogue, std::size_t index);

/// How many of those set aside come before that number.
std::size_t set_aside_before(const Catalogue& catalogue, std::size_t number);

/// What was read of an entry: a bike, or why it was set aside.
struct JudgedEntry {
    const Bike* bike = nullptr;
    const SetAside* set_aside = nullptr;

    const std::string& id() const { return bike ? bike->id : set_aside->id; }
    const std::string& name() const { return bike ? bike->name : set_aside->name; }
};

JudgedEntry judged_entry(const Catalogue& catalogue, std::size_t number);

} // namespace saddlerule
