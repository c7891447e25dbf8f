// Any bytes as a list in JSON: read without a fault of the engine, and what was read saved without loss.
#include "core/base/text/utf8_text.h"
#include "core/lists/catalogue/json_catalogue_reader.h"
#include "tests/fuzz/saved_and_read_again.h"

#include <cstdint>
#include <string_view>

using namespace saddlerule;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::string converted;
    const auto text = utf8_text({reinterpret_cast<const char*>(data), size}, converted);
    if (!text)
        return 0;
    std::vector<SetAside> refused;
    const auto list = read_json_catalogue(*text, &refused);
    if (list)
        testing::check_list(*list);
    else
        testing::demand(!sentence(list.problem()).empty());
    return 0;
}
