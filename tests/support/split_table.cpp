// Splits a table natively, for the tests that compare with other readers: split_table FILE SEPARATOR
// Writes its rows as JSON, an array of texts each.
#include "core/base/json/json_text.h"
#include "core/lists/table/table_records.h"

#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

using namespace saddlerule;

int main(int count, char** arguments) {
    if (count != 3)
        return 2;
    std::ifstream file(arguments[1], std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    TableRecords records(text, arguments[2][0]);
    std::string rows = "[";
    while (records.next()) {
        rows += rows.size() > 1 ? ",[" : "[";
        for (const TableCell& cell : records.cells()) {
            if (&cell != records.cells().data())
                rows += ',';
            append_json_text(rows, cell.text);
        }
        rows += ']';
    }
    rows += "]\n";
    std::fwrite(rows.data(), 1, rows.size(), stdout);
    return records.unclosed_quote() ? 1 : 0;
}
