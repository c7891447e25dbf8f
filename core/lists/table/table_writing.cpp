#include "core/lists/table/table_writing.h"

#include <algorithm>

namespace saddlerule {
namespace {

bool is_blank(char c) {
    return c == ' ' || c == '\t';
}

bool needs_quotes(std::string_view cell, char separator) {
    return !cell.empty() && (is_blank(cell.front()) || is_blank(cell.back()) ||
                             std::any_of(cell.begin(), cell.end(), [&](char c) {
                                 return c == separator || c == '"' || c == '\n' || c == '\r';
                             }));
}

} // namespace

void append_table_cell(std::string& table, std::string_view cell, char separator) {
    if (!needs_quotes(cell, separator)) {
        table += cell;
        return;
    }
    table += '"';
    for (const char c : cell) {
        if (c == '"')
            table += '"';
        table += c;
    }
    table += '"';
}

} // namespace saddlerule
