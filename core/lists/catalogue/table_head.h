// Table head: what is above the bikes of a table: lines of `# key: value`, and the names of the columns.
#pragma once

#include "core/base/outcomes/result.h"
#include "core/lists/catalogue/table_columns.h"
#include "core/lists/table/table_records.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace saddlerule {

struct TableHead {
    TableRecords rows; ///< the next one is the first bike
    std::vector<TableColumn> columns;
    std::size_t width = 0; ///< cells of the header, with the empty ones behind its columns
    std::size_t row = 0;   ///< of the columns' names
    /// What the list says of itself, as the members of an object in JSON, and in which row each is.
    std::string json;
    std::vector<std::pair<std::string, std::size_t>> fields;
};

/// What whoever opens a table says of its columns: the fields that are in them, by places from 1. Place 0: in none.
using SaidColumns = std::vector<std::pair<const CatalogueField*, std::size_t>>;

/// A column as somebody who is asked what it holds sees it.
struct SketchedColumn {
    std::string heading;
    const CatalogueField* field = nullptr; ///< that it is taken for
    std::string values;                    ///< the first ones, with commas between them
};

/// What is seen of a table before its columns are settled.
struct TableSketch {
    std::size_t heading_row = 0;
    std::vector<SketchedColumn> columns;

    bool has(std::string_view field_name) const;
    /// What every list needs is in none of the columns that are understood, and others are there that may have it.
    bool needs_a_word() const;
};

/// A table has no more than these.
constexpr std::size_t most_table_columns = 1000;

/// Reads the head of a table, with the separator that suits it best. Its headings are those of the upper rows that say most; what
/// is above them is the list's title, and remarks. With `said` a table may have headings that nobody knows here.
/// `sketch`, where it is given, gets what can be seen of a table whose headings may need a word of whoever opens it.
///
/// Problems: table_quote_not_closed, table_without_header, table_column_twice, table_too_many_columns.
Result<TableHead> read_table_head(std::string_view utf8, const SaidColumns& said = {},
                                  TableSketch* sketch = nullptr);

/// The line that reads back as that; empty for what only the JSON form says of itself (its format and version).
std::string head_line(const UnknownField& field);

} // namespace saddlerule
