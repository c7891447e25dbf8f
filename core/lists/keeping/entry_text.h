// Entry text: one entry of a list as JSON, changed field by field with everything else left as it was written.
#pragma once

#include "core/base/json/located_json.h"
#include "core/base/outcomes/result.h"
#include "core/lists/catalogue/cell_text.h"
#include "core/lists/catalogue/kept_list.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// A field as people type it. An empty cell takes the field out.
struct FieldCell {
    std::string name;
    std::string cell;
};

/// Reads the text of an entry, of which only depth and number of values are limited, as in a file.
Result<JsonValue> read_entry(std::string_view source);

/// What cells of that list are read by.
CellContext cell_context(const ReadingFacts& facts);

/// The entry with those fields in place of its own. Fields that it does not have come behind the last one that
/// comes before them in the table of fields. What is no group of fields is given up for one. A cell that says
/// what the field says already leaves it as it is.
std::string entry_with(std::string_view source, std::span<const FieldCell> cells, const CellContext& context);

/// All fields of the entry as cells, in its order; none where it is no group of fields. Of a field that comes
/// there twice only the first.
std::vector<FieldCell> cells_of(const JsonValue& entry, std::string_view source, const CellContext& context);

/// A bare length as people would type it: "49.5".
std::string bare_figure(const JsonValue& length, std::string_view source);

/// The cell that says a bare length with the unit it counts in: "49.5 cm".
std::string bare_with_unit(const JsonValue& length, std::string_view source, LengthUnit unit);

/// The value of a field as a cell; empty where it is not given.
std::string cell_of(const JsonValue& entry, std::string_view source, std::string_view field,
                    const CellContext& context);

} // namespace saddlerule
