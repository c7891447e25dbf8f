// Any bytes as a list in a table, told by what is in it or taken for Windows-1252: read without a fault of the
// engine, and what was read saved without loss.
#include "core/base/text/utf8_text.h"
#include "core/lists/catalogue/table_catalogue_reader.h"
#include "tests/fuzz/saved_and_read_again.h"

#include <cstdint>
#include <string_view>

using namespace saddlerule;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    for (const TextEncoding encoding : {TextEncoding::told_by_file, TextEncoding::windows_1252}) {
        std::string converted;
        const auto text = utf8_text(bytes, converted, encoding);
        if (!text)
            continue;
        std::vector<SetAside> refused;
        const auto list = read_table_catalogue(*text, &refused);
        if (list)
            testing::check_list(*list);
        else
            testing::demand(!sentence(list.problem()).empty());
        break;
    }
    return 0;
}
