// StatedConstant: a figure that the engine judges with, and where it comes from, for the list of all of them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

struct StatedConstant {
    std::string name;           ///< its name in the list: room, dot, figure
    std::vector<double> values; ///< one, or a whole column of a table
    std::string_view unit;
    std::string_view source;
    std::string_view reason; ///< why this value, or what it is for
};

} // namespace saddlerule
