// The wasm that unpacks, for web/page/unpacking.ts: what goes in and comes out stands in its memory.
#include "wasm-bindings/unpacking/byte_model.h"

#include <span>

namespace {

using namespace saddlerule::unpacking;

// In memory that is zeroed before anything runs.
ByteModel model;
std::array<std::uint8_t, most_bytes> input;
std::array<std::uint8_t, most_bytes> output;

} // namespace

extern "C" {

/// Where what was packed is to be put.
std::uint8_t* saddlerule_packed() {
    return input.data();
}

/// Unpacks the first `length` bytes of what was packed. @returns where they stand, or null where there are not as many
const std::uint8_t* saddlerule_unpack(std::size_t packed_length, std::size_t length, int order) {
    if (packed_length > input.size() || length > output.size())
        return nullptr;
    RangeDecoder packed{std::span(input).first(packed_length)};
    model.begin(order);
    for (std::uint8_t& place : std::span(output).first(length)) {
        const std::optional<std::uint8_t> byte = model.next(packed);
        if (!byte)
            return nullptr;
        place = *byte;
    }
    return output.data();
}
}

// The linker brings these along whether they are called or not, and the C library's own take 8 kB.
#ifdef __EMSCRIPTEN__
extern "C" void* malloc(std::size_t /*size*/) {
    return nullptr;
}
extern "C" void free(void* /*memory*/) {}
#endif
