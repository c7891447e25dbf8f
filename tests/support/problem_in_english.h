// Problems in English, for tests that hold what people read: the sentences of wasm-bindings/english.json, which ask.mjs and the
// page have as well, with a problem's figures put in as wasm-bindings/in-english.js does it.
#pragma once

#include "core/base/outcomes/problem.h"

#include <string>

namespace saddlerule {

/// The sentence, its place first ("line 7, column 22: ...", "row 14, saddle highest: ..."). It fails the test where a word or a
/// sentence is missing.
std::string sentence(const Problem& problem);

/// What would have been right; empty where the sentence says it all.
std::string expected(const Problem& problem);

/// One figure as it is in a sentence.
std::string in_english(const ProblemFigure& figure);

} // namespace saddlerule
