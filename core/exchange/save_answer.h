// The answer to `save`: the list as the text of a file, in either form.
#pragma once

#include "core/exchange/request_fields.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/keeping/table_list_writer.h"

#include <optional>
#include <string>

namespace saddlerule {

/// How a list is to be saved.
struct SaveWishes {
    std::optional<TableForm> table; ///< as JSON where absent
    bool only_set_aside = false;
};

/// Reads `form`, `separator`, `decimal` and `only`.
SaveWishes save_wishes(RequestFields& fields);

std::string save_answer(const KeptList& list, const SaveWishes& wishes);

} // namespace saddlerule
