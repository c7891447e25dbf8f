// Catalogue reader: the bytes of a file that somebody opened, from whatever form and encoding, to a
// catalogue.
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outcomes/result.h"

#include <string_view>
#include <vector>

namespace saddlerule {

/// Reads a list from the bytes of a file. Its form is told by what stands in it, never by a name. What was
/// set aside in a file that is refused as a whole goes to `refused`, where that is given.
///
/// Problems: the codes file_* and json_*.
Result<Catalogue> read_catalogue(std::string_view bytes, std::vector<SetAside>* refused = nullptr);

} // namespace saddlerule
