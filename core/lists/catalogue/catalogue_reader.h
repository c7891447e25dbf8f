// Catalogue reader: the bytes of a file that somebody opened, from whatever form and encoding, to a
// kept list.
#pragma once

#include "core/base/outcomes/result.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/catalogue/reading_options.h"

#include <memory>
#include <string>
#include <vector>

namespace saddlerule {

/// Reads a list from the bytes of a file. Its form is told by what is in it, never by a name. The list
/// shares the bytes as long as it lasts, where they are its text. What was set aside in a file that is refused
/// as a whole goes to `refused`, where that is given.
///
/// Problems: the codes file_*, json_* and table_*.
Result<KeptList> read_catalogue(std::shared_ptr<const std::string> bytes,
                                std::vector<SetAside>* refused = nullptr, const ReadingOptions& options = {});

} // namespace saddlerule
