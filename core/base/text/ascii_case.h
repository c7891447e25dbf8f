// Upper and lower case of the letters A to Z, and of no others.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

namespace saddlerule {

constexpr char in_lower_case(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

inline std::string in_lower_case(std::string_view text) {
    std::string lower(text);
    for (char& c : lower)
        c = in_lower_case(c);
    return lower;
}

/// Whether they are alike but for the case of their letters.
inline bool is_same_word(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](char x, char y) { return in_lower_case(x) == in_lower_case(y); });
}

} // namespace saddlerule
