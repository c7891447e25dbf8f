// Reading options: what whoever opens a file may say of it beforehand.
#pragma once

#include "core/base/text/utf8_text.h"
#include "core/base/typed_text/length_text.h"
#include "core/lists/catalogue/reading_progress.h"

#include <optional>

namespace saddlerule {

struct ReadingOptions {
    TextEncoding encoding = TextEncoding::told_by_file;
    /// What bare lengths of a table count in where it says nothing of it. The list says so from then on.
    std::optional<LengthUnit> table_units = std::nullopt;
    /// A list of which nothing can be used is opened all the same, to be mended.
    bool to_mend = false;
    ReadingProgress progress = {}; ///< empty where nobody wants to know
};

} // namespace saddlerule
