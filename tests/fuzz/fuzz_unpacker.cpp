// Whatever is unpacked, nothing is read or written beside what it should be, and it ends.
#include "wasm-bindings/unpacking/byte_model.h"

#include <cstddef>
#include <cstdint>
#include <span>

using namespace saddlerule::unpacking;

namespace {

// As in the wasm: in memory that is zeroed before anything runs.
ByteModel model;

} // namespace

/// The first byte is the order, as in what web/building/packing.mjs packs.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0)
        return 0;
    constexpr std::size_t most = 20'000;
    RangeDecoder packed(std::span(data, size).subspan(1));
    model.begin(data[0]);
    for (std::size_t i = 0; i < most && model.next(packed); ++i) {
    }
    return 0;
}
