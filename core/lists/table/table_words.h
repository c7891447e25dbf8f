// Table words: headings and marks as people write them in their own tables, made comparable; and rows that only add up others.
#pragma once

#include <string>
#include <string_view>

namespace saddlerule {

/// Small letters, also those of Latin-1 with their accents, without blanks and marks: "Inside-leg" is insideleg.
std::string plain_word(std::string_view text);

/// Whether that is what a row of totals or averages is called, in English, German, French, Spanish or Dutch.
bool is_word_for_totals(std::string_view text);

} // namespace saddlerule
