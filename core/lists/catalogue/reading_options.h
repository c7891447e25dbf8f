// Reading options: what whoever opens a file may say of it beforehand.
#pragma once

#include "core/base/text/utf8_text.h"
#include "core/base/typed_text/length_text.h"
#include "core/lists/catalogue/reading_progress.h"
#include "core/lists/catalogue/table_head.h"

#include <optional>

namespace saddlerule {

struct ReadingOptions {
    TextEncoding encoding = TextEncoding::told_by_file;
    /// What bare lengths of a table count in where it says nothing of it. The list says so from then on.
    std::optional<LengthUnit> table_units = std::nullopt;
    /// What its columns hold, where its headings do not say it.
    SaidColumns columns = {};
    /// A list of which nothing can be used is opened all the same, to be mended.
    bool to_mend = false;
    TableSketch* sketch = nullptr; ///< gets what is seen of a table; left alone by all else
    ReadingProgress progress = {}; ///< empty where nobody wants to know
};

} // namespace saddlerule
