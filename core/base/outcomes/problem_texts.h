// The English wording of every problem code, one row each.
#pragma once

#include "core/base/outcomes/problem.h"

#include <string_view>

namespace saddlerule {

/// One row of the table. `{name}` stands for the figure of that name.
struct ProblemText {
    ProblemCode code;
    std::string_view name;
    std::string_view sentence;
    std::string_view expected;
};

const ProblemText& text_of(ProblemCode code);

/// How many codes there are; the tests walk them all.
std::size_t problem_code_count();

} // namespace saddlerule
