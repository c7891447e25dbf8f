// Problems, notes and errors as JSON.
#pragma once

#include "core/base/outcomes/problem.h"
#include "core/exchange/json_writer.h"

#include <string>
#include <vector>

namespace saddlerule {

/// The fields of a problem inside an object that is open: code, where, line and column or row and column
/// name where there are any, and figures: a quote as a text (`{ "text", "unit" }` where it counts in a unit), a number as one
/// (`{ "value", "unit" }`), the rest as `{ "word" }`, `{ "date" }`, `{ "names", "are" }` or `{ "problem" }`.
void problem_fields(JsonWriter& json, const Problem& problem);

void write(JsonWriter& json, const Problem& problem);

/// An array of them.
void write(JsonWriter& json, const std::vector<Problem>& problems);

/// `{ "error": ... }`.
std::string error_answer(const Problem& problem);

} // namespace saddlerule
