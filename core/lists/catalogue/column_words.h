// Column words: how people head the columns of their own tables, in English, German, French, Spanish and Dutch.
#pragma once

#include "core/lists/catalogue/catalogue_fields.h"

#include <string_view>

namespace saddlerule {

/// The field that a heading means which has not the field's own name: "Sattel min", "saddle low", "Gewicht". What may well
/// mean something else ("height", "size") is no such word. Nullptr where nobody can tell.
const CatalogueField* field_in_own_words(std::string_view heading);

} // namespace saddlerule
