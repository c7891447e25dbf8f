// Rider table: the riders of a morning as volunteers have them: pasted from a spreadsheet, saved as CSV, or typed row by row.
#pragma once

#include "core/base/outcomes/problem.h"
#include "core/base/outcomes/result.h"
#include "core/base/quantities/calendar_date.h"
#include "core/base/typed_text/length_text.h"
#include "core/fit/rider/rider.h"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// What a column of the table may hold.
enum class RiderColumn { name, inseam, shoes, stage, age, born, weight, height };

inline constexpr std::size_t rider_columns = 8;

/// `name`, `inseam` and so on; each is a heading too.
std::string_view name_of(RiderColumn column);

/// One row: what is in its cells, and what was read from them.
struct TableRider {
    std::size_t row = 0; ///< as a spreadsheet counts: from 1, with everything above it
    std::array<std::string, rider_columns> cells; ///< without the guard against formulas
    std::string id;        ///< the name or number; that of the row where the table has none
    Rider rider;           ///< what could be read
    bool measured = false; ///< there is something to judge the size by
    bool stage_said = false;
    std::vector<Problem> problems; ///< cells that were left out, and questions; each with its place
};

struct RiderTable {
    std::vector<TableRider> riders;
    std::vector<Problem> set_aside;           ///< rows that are no riders, each with its place
    std::vector<RiderColumn> columns;         ///< that were found
    std::vector<std::string> unknown_columns; ///< headings that say nothing known here
    std::optional<std::size_t>
        heading_row; ///< nothing: the table has none, and its columns were taken as name and inside leg
};

/// Reads a table whose cells are separated by tabs, semicolons or commas. Its headings are looked for in the first rows, in five
/// languages; rows above them are a title, and a row of totals is set aside. Lengths without a unit count in what their heading
/// says, or else in `units`. Readings count as taken today. Ages are whole or broken years.
///
/// Problems: table_quote_not_closed, riders_none.
Result<RiderTable> read_rider_table(std::string_view text, LengthUnit units, CalendarDate today);

using RiderCells = std::array<std::string, rider_columns>;

/// The table that reads as these cells: separated by commas (RFC 4180), with the columns that any rider has, and guarded where a
/// spreadsheet would take a cell for a formula.
std::string write_rider_table(std::span<const RiderCells> riders);

} // namespace saddlerule
