// List merge: two lists of the same bikes, compared bike by bike, and one taken into the other.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/keeping/entry_text.h"
#include "core/lists/keeping/free_ids.h"
#include "core/lists/keeping/list_editor.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// What becomes of two versions of one bike.
///
/// `newer`: the one measured later. Of the other one stay only a name, notes and fields of the list's own which it lacks: they
/// are no measurements. Where nobody knows which is newer, the one here stays as it is.
/// `fill`: the one here, with the fields which it lacks.
enum class Keep { here, there, both, newer, fill };

/// A usable bike of the other list with the entry here that is the same bike, by numbers.
struct BikePair {
    std::size_t here = 0; ///< 0 where there is none
    std::size_t there = 0;
    std::string id; ///< there
    /// The names of the fields that differ; none where all are the same by value.
    std::vector<std::string> differs;
    /// `here` or `there`, where they differ; none where a date is missing or both are of one day.
    std::optional<Keep> newer;
    /// What the entry here lacks, as it means the same here. What would make a usable bike unusable is not among it.
    std::vector<FieldCell> gaps;
    /// What becomes of it. A bike that only the other list has stays there unless it is taken.
    Keep keep = Keep::here;
};

/// When that entry was measured: by a "measured_on" of its own, or else by its list's. None where its own cannot be read.
std::optional<CalendarDate> measured_on(const KeptList& list, std::size_t number);

/// All usable bikes of `there`, each with its like here: the one with its id, or with its name where neither has
/// an id. Lengths count as the same to a tenth of a millimetre, whatever unit they are written in.
std::vector<BikePair> compared(const KeptList& here, const KeptList& there);

/// The entry's text as it means the same in another list: bare lengths with their unit where that list counts in
/// another one, and a price that goes with another currency under a name of its own, "price_gbp".
std::string entry_for(const KeptList& here, const KeptList& there, std::size_t number);

/// Takes pairs into the list that `editor` works on: the other version in place of the one here, or behind all others
/// as a bike of its own. A bike that comes from a list of another day keeps that day as its own "measured_on". The list
/// gets the other list's later day only where that is true of all its bikes.
class ListMerger {
public:
    ListMerger(const KeptList& here, const KeptList& there, ListEditor& editor)
        : here_(here), there_(there), editor_(editor), free_ids_(here), day_(here.catalogue.measured_on) {}

    void take(std::span<const BikePair> pairs);

private:
    bool all_of_the_later_day(std::span<const BikePair> pairs) const;
    void take(const BikePair& pair);
    std::string entry_of(const BikePair& pair) const;
    std::string with(const std::string& entry, const std::vector<FieldCell>& cells) const;

    const KeptList& here_;
    const KeptList& there_;
    ListEditor& editor_;
    FreeIds free_ids_;
    std::optional<CalendarDate> day_; ///< of the merged list
};

} // namespace saddlerule
