// The answer to `about`: version, every constant the engine judges with and where it comes from, published
// references, the requests it knows and the problems it can name.
#pragma once

#include <string>

namespace saddlerule {

std::string about_answer();

using AboutAnswer = std::string (*)();

} // namespace saddlerule
