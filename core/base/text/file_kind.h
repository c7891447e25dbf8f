// File kinds: what a file that holds no text seems to be, told by its first bytes.
#pragma once

#include "core/base/outcomes/problem_figure.h"

#include <optional>
#include <string_view>

namespace saddlerule {

struct FileKind {
    ProblemWord name;
    bool spreadsheet = false;
};

/// Recognises archives, spreadsheets, documents and pictures by the signatures that their formats publish.
/// Nothing for a file that has none of them, which may well be text.
std::optional<FileKind> recognised_kind(std::string_view bytes);

} // namespace saddlerule
