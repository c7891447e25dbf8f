// Catalogue reader: the bytes of a file that somebody opened, from whatever form and encoding, to a
// kept list.
#pragma once

#include "core/catalogue/kept_list.h"
#include "core/catalogue/reading_progress.h"
#include "core/outcomes/result.h"
#include "core/text/utf8_text.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace saddlerule {

struct ReadingOptions {
    TextEncoding encoding = TextEncoding::told_by_file;
    /// What bare lengths of a table count in where it says nothing of it. The list says so from then on.
    std::optional<LengthUnit> table_units = std::nullopt;
    ReadingProgress progress; ///< empty where nobody wants to know
};

/// Reads a list from the bytes of a file. Its form is told by what stands in it, never by a name. The list
/// shares the bytes as long as it lasts, where they are its text. What was set aside in a file that is refused
/// as a whole goes to `refused`, where that is given.
///
/// Problems: the codes file_*, json_* and table_*.
Result<KeptList> read_catalogue(std::shared_ptr<const std::string> bytes,
                                std::vector<SetAside>* refused = nullptr, const ReadingOptions& options = {});

} // namespace saddlerule
