// The pieces that answers are made of, as JSON. Figures are rounded here and nowhere else: lengths to a tenth
// of a millimetre, shares to a millionth, so that native and wasm builds answer the same bytes.
#pragma once

#include "core/bike/bike.h"
#include "core/outcomes/problem.h"
#include "core/quantities/calendar_date.h"
#include "core/quantities/length.h"
#include "core/quantities/mass.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

namespace saddlerule {

/// Keeps its fields in the order in which they were put in.
using Json = nlohmann::ordered_json;

/// `value` to that many decimals; never minus zero; null where it is not finite.
Json rounded(double value, int decimals);

Json to_json(Length length);      ///< millimetres
Json to_json(Mass mass);          ///< kilograms
Json to_json(CalendarDate date);  ///< ISO 8601
Json share_to_json(double share); ///< a probability

/// What is not known is null.
template <typename Quantity>
Json to_json(const std::optional<Quantity>& quantity) {
    return quantity ? to_json(*quantity) : Json();
}

/// Text that may be absent: empty is null.
Json text_or_null(const std::string& text);

/// A note or an error: code, where, line and column where there are any, sentence, what was expected,
/// figures.
Json to_json(const Problem& problem);

Json problem_list(const std::vector<Problem>& problems);

/// `{ "error": ... }`.
Json error_answer(const Problem& problem);

/// Compact UTF-8. Bytes that are not UTF-8 are replaced, so that an answer can always be read.
std::string to_text(const Json& json);

/// Appends a JSON array of what `write` makes of each item, one at a time: a long list never stands in memory
/// as a tree.
template <typename Items, typename Write>
void append_list(std::string& text, const Items& items, Write write) {
    text += '[';
    const char* separator = "";
    for (const auto& item : items) {
        text += separator;
        text += to_text(write(item));
        separator = ",";
    }
    text += ']';
}

} // namespace saddlerule
