// Table records: a text of separated values (RFC 4180) as rows and cells that know where they are. Knows no
// bike words.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace saddlerule {

struct TableCell {
    std::string_view text; ///< without its quotes
    std::size_t begin = 0; ///< where the cell begins, in bytes of the table's text
};

/// Reads a table one row at a time, in one pass over its text.
///
/// Lines end with LF, CRLF or a lone CR, mixed as they come. A cell that begins with a double quote ends at
/// the next single one; inside it separators and line breaks count as text, and two quotes are one. What
/// is between its closing quote and the separator belongs to it as it is. Quotes elsewhere are plain
/// characters. A quote that nothing closes ends the table: see unclosed_quote(). A row has at most `most_cells`;
/// what is in it beyond them belongs to the last as it is, so that no row can fill the memory.
class TableRecords {
public:
    static constexpr std::size_t most_cells = 2000;

    /// `text` must outlive this; `begin` is where the first row begins.
    TableRecords(std::string_view text, char separator, std::size_t begin = 0)
        : text_(text), separator_(separator), next_(begin) {}

    /// Goes to the next row that is not empty; rows of nothing but blanks are counted and passed.
    /// False at the end of the table, and where a quote is never closed.
    bool next();

    /// Of the row at hand; views last until the next one.
    std::span<const TableCell> cells() const { return {cells_.data(), count_}; }
    /// As a spreadsheet counts: from 1, empty rows included, a quoted line break being none.
    std::size_t row() const { return row_; }
    /// Where the row at hand begins and ends, in bytes.
    std::size_t begin() const { return begin_; }
    std::size_t end() const { return next_; }

    /// As this was before the row at hand: next() reads that once more.
    TableRecords before_this_row() const;

    /// Where a quote opens that is never closed, in bytes.
    std::optional<std::size_t> unclosed_quote() const { return unclosed_quote_; }

private:
    bool read_row();
    bool read_quoted_cell();
    void read_plain_cell();
    /// The end of what there is from `at` to the next separator or line end.
    std::size_t end_of_cell(std::size_t at) const;
    void pass_line_end();
    void add_cell(std::string_view text, std::size_t begin);
    void put_pieces_in_place();
    void keep_the_rest_as_it_stands();

    std::string_view text_;
    char separator_;
    std::size_t next_;
    std::size_t begin_ = 0;
    std::size_t row_ = 0;
    std::vector<TableCell> cells_; ///< those of the row at hand in front, and room for more behind
    std::size_t count_ = 0;
    /// What cells say whose text is not in one piece, and which cells those are with where they begin
    /// in it.
    std::string pieces_;
    std::vector<std::pair<std::size_t, std::size_t>> in_pieces_;
    std::optional<std::size_t> unclosed_quote_;
};

/// The separator that spreadsheets are told by a first line `sep=;`, and where the line after it begins.
struct SeparatorLine {
    char separator;
    std::size_t end;
};
std::optional<SeparatorLine> separator_line(std::string_view text);

} // namespace saddlerule
