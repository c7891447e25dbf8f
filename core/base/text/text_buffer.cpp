#include "core/base/text/text_buffer.h"

#include <algorithm>

namespace saddlerule {

/// Blocks double up to the usual size: a buffer may hold one word, or a whole list. The text at hand moves to the new one.
void TextBuffer::add_block(std::size_t more) {
    constexpr std::size_t smallest = 256;
    constexpr std::size_t usual = 256 * std::size_t{1024};
    const std::size_t next = blocks_.empty() ? smallest : std::min(2 * blocks_.back()->size(), usual);
    auto block = std::make_shared<std::string>(std::max(next, 2 * (size_ + more)), '\0');
    std::copy_n(text_, size_, block->data());
    text_ = block->data();
    room_ = block->size();
    blocks_.push_back(std::move(block));
}

} // namespace saddlerule
