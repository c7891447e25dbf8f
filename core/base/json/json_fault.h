// JSON faults: why a text stopped being JSON, in words of our own and with the likely cause.
#pragma once

#include "core/base/outcomes/problem.h"

#include <cstddef>
#include <string_view>
#include <vector>

namespace saddlerule {

struct OpenBracket {
    char character; ///< { or [
    std::size_t offset;
};

/// How far a text was well-formed JSON.
struct JsonStop {
    enum class After { nothing, bracket, name, value };

    std::vector<OpenBracket> open; ///< outermost first
    After after = After::nothing;  ///< the last piece that was read; a bracket is an opening one
    std::size_t offset = 0;        ///< just behind that piece
};

/// The fault that follows the stop: a comma may have been passed and a colon, and then something does not
/// fit.
Problem explain_fault(std::string_view text, const JsonStop& stop);

} // namespace saddlerule
