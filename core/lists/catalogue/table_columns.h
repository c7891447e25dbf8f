// Table columns: what the header of a table says, from the names that people write to the fields of a bike.
#pragma once

#include "core/base/quantities/money.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/cell_text.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

struct TableColumn {
    std::string heading;                   ///< as the header has it
    std::string name;                      ///< of the field
    const CatalogueField* field = nullptr; ///< or null where it is not known
    std::optional<LengthUnit> unit;        ///< what the heading says that bare figures count in
    bool in_pounds = false;
    std::optional<Currency> currency;
    bool in_own_words = false; ///< the heading is not the field's own name
};

/// Reads one cell of a header: `saddle_lowest`, `Saddle lowest [in]`, `Mass (kg)`, `Price [EUR]`. Case, blanks,
/// hyphens and underscores do not matter. What names no field is a column of its own by its whole name, and so
/// is a length, mass or price whose unit is not known here. Words of people's own are read as well, with the unit in brackets or
/// behind them: `Sattel min (cm)`, `Gewicht kg`, `Preis in Euro`. A heading in double quotes is the exact name.
TableColumn column_of(std::string_view heading);

/// The column of that field, whatever its heading says beside a unit.
TableColumn column_for(const CatalogueField& field, std::string_view heading);

/// A column that holds no field.
TableColumn unknown_column(std::string_view heading);

/// Takes the field from the columns that have it in words of people's own where another one has it by name, or before them.
void settle_own_words(std::vector<TableColumn>& columns);

/// The heading that reads back as the field of that name.
std::string heading_of(std::string_view field_name);

/// Whether the column holds lengths.
bool holds_lengths(const TableColumn& column);

} // namespace saddlerule
