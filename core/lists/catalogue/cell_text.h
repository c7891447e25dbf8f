// Cell text: the value of a field as people type it into a cell of a table or into the page, and back.
#pragma once

#include "core/base/json/located_json.h"
#include "core/base/quantities/money.h"
#include "core/base/text/text_buffer.h"
#include "core/base/typed_text/length_text.h"
#include "core/lists/catalogue/catalogue_fields.h"

#include <optional>
#include <string>
#include <string_view>

namespace saddlerule {

/// What cells are read by, beside the field they belong to.
struct CellContext {
    std::optional<LengthUnit> units;  ///< what bare lengths count in, in the whole list
    std::optional<Currency> currency; ///< of the list
    /// What the column's header says that bare figures count in, where it says something.
    std::optional<LengthUnit> column_unit = std::nullopt;
    bool column_in_pounds = false;
};

/// Reads one cell. `field` is null for a column that is not known.
///
/// What is JSON in brackets, braces or double quotes is that value, and so is any JSON behind `json:`. Else it
/// is read as people write it: figures with a point or a comma, lengths with a unit of their own ("49,5 cm"),
/// masses in kg or lb, a price with the list's currency, `70°`, yes and no in five languages, `front hand, rear
/// hand`, `none` for brakes known to be none. What cannot be read that way stays a text, for the bike reader to
/// judge. In a column that is not known, figures, true, false and null are those, and all else is a text.
///
/// The value goes into `value` with its JSON text appended to `json`, where its begin and end count. False,
/// and nothing appended, where the cell is blank: the field is not given.
bool read_cell(std::string_view cell, const CatalogueField* field, const CellContext& context,
               JsonValue& value, TextBuffer& json);

/// The currency of a code such as EUR, or of a symbol that only one currency has.
std::optional<Currency> currency_named(std::string_view text);

/// The currency whose code or symbol is at either end of a price as people write it: "120 EUR".
std::optional<Currency> currency_in_price(std::string_view cell);

/// The JSON text of what a cell says for the field of that name, known or not; empty for a blank cell.
std::string json_of_cell(std::string_view field_name, std::string_view cell, const CellContext& context);

/// The cell that reads back as the same value: as people write it where that is possible, else as JSON.
/// `text` is what `value` was read from. `decimal_mark` is a point or a comma.
std::string cell_of_json(std::string_view field_name, const JsonValue& value, std::string_view text,
                         const CellContext& context, char decimal_mark = '.');

} // namespace saddlerule
