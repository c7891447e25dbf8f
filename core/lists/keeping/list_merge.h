// List merge: two lists of the same bikes, compared bike by bike, and one taken into the other.
#pragma once

#include "core/lists/catalogue/kept_list.h"
#include "core/lists/keeping/free_ids.h"
#include "core/lists/keeping/list_editor.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// A usable bike of the other list with the entry here that is the same bike, by numbers.
struct BikePair {
    std::size_t here = 0; ///< 0 where there is none
    std::size_t there = 0;
    std::string id; ///< there
    /// The names of the fields that differ; none where all are the same by value.
    std::vector<std::string> differs;
};

/// All usable bikes of `there`, each with its like here: the one with its id, or with its name where neither has
/// an id. Lengths count as the same to a tenth of a millimetre, whatever unit they are written in.
std::vector<BikePair> compared(const KeptList& here, const KeptList& there);

/// The entry's text as it means the same in another list: bare lengths with their unit where that list counts in
/// another one, and a price that goes with another currency under a name of its own, "price_gbp".
std::string entry_for(const KeptList& here, const KeptList& there, std::size_t number);

/// What becomes of two versions of one bike.
enum class Keep { here, there, both };

/// Takes one pair into the list that `editor` works on: the other version in place of the one here, or behind
/// all others as a bike of its own.
class ListMerger {
public:
    ListMerger(const KeptList& here, const KeptList& there, ListEditor& editor)
        : here_(here), there_(there), editor_(editor), free_ids_(here) {}

    void take(const BikePair& pair, Keep keep);

private:
    const KeptList& here_;
    const KeptList& there_;
    ListEditor& editor_;
    FreeIds free_ids_;
};

} // namespace saddlerule
