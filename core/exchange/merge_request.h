// Merge request: two lists side by side over the wire.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/lists/keeping/list_merge.h"

#include <string>
#include <vector>

namespace saddlerule {

std::string compare_answer(const KeptList& here, const KeptList& there);

/// What a merge takes, by the conflict's id, and whether it takes bikes that only the other list has.
struct MergeWishes {
    std::vector<std::pair<std::string, Keep>> take;
    bool add = true;
};

/// Reads `take` and `add`.
MergeWishes merge_wishes(RequestFields& fields);

/// Takes the other list in as wished. An id under `take` that names no conflict is reported to `fields`.
void apply_merge(RequestFields& fields, const KeptList& here, const KeptList& there,
                 const MergeWishes& wishes, ListEditor& editor);

} // namespace saddlerule
