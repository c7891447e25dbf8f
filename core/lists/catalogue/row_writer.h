// Row writer: the rows of a table as entries in JSON.
#pragma once

#include "core/base/json/located_json.h"
#include "core/base/text/text_buffer.h"
#include "core/lists/catalogue/cell_text.h"
#include "core/lists/catalogue/kept_list.h"
#include "core/lists/catalogue/table_head.h"
#include "core/lists/table/table_records.h"

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// Puts one row after the other in JSON. The entry and its members are made once and used for all rows.
class RowWriter {
public:
    /// `head` must outlive this.
    RowWriter(const TableHead& head, const ReadingFacts& facts);

    /// The entry that says what the row says, until the next one; json() is what it was read from.
    const JsonValue& write(std::span<const TableCell> cells);

    std::string_view json() const { return json_.view(); }
    /// Of the entry's members.
    std::span<const CatalogueField* const> fields() const { return {fields_.data(), used_}; }
    /// What the rows' JSON is in. No more can be written afterwards.
    std::vector<std::shared_ptr<const std::string>> take_texts() { return json_.take_blocks(); }

private:
    struct Column {
        std::string_view name;
        const CatalogueField* field;
        CellContext context;
        std::string json_name; ///< between a comma and a colon
    };

    JsonValue& next_member(const Column& column);
    void drop_member();
    void add_cell(const Column& column, std::string_view cell);
    void add_nameless();

    std::vector<Column> columns_;
    std::size_t width_; ///< of the header, empty cells at its end included
    Column no_column_{.name = {}, .field = nullptr, .context = {}, .json_name = ",\"\":"};
    JsonValue entry_;
    std::vector<const Column*> columns_of_;     ///< its members
    std::vector<const CatalogueField*> fields_; ///< of its members
    TextBuffer json_;
    std::size_t used_ = 0;  ///< members
    std::size_t begin_ = 0; ///< of the last member in json_
    std::vector<std::string> nameless_;
    std::string unguarded_; ///< of the cell in hand
};

} // namespace saddlerule
