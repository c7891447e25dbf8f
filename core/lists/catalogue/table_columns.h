// Table columns: what the header of a table says, from the names that people write to the fields of a bike.
#pragma once

#include "core/base/quantities/money.h"
#include "core/lists/catalogue/catalogue_fields.h"
#include "core/lists/catalogue/cell_text.h"

#include <optional>
#include <string>
#include <string_view>

namespace saddlerule {

struct TableColumn {
    std::string heading;                   ///< as the header has it
    std::string name;                      ///< of the field
    const CatalogueField* field = nullptr; ///< or null where it is not known
    std::optional<LengthUnit> unit;        ///< what the heading says that bare figures count in
    bool in_pounds = false;
    std::optional<Currency> currency;
};

/// Reads one cell of a header: `saddle_lowest`, `Saddle lowest [in]`, `Mass (kg)`, `Price [EUR]`. Case, blanks,
/// hyphens and underscores do not matter. What names no field is a column of its own by its whole name, and so
/// is a length, mass or price whose unit is not known here. A heading in double quotes is the exact name.
TableColumn column_of(std::string_view heading);

/// The heading that reads back as the field of that name.
std::string heading_of(std::string_view field_name);

/// Whether the column holds lengths.
bool holds_lengths(const TableColumn& column);

} // namespace saddlerule
