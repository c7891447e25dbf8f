// Text buffer: texts that grow by very many small pieces, one text after the other. The library's string appends each
// piece through a function of its own, which in wasm takes most of the time of reading a table.
#pragma once

#include <cstddef>
#include <cstring>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace saddlerule {

class TextBuffer {
public:
    /// Of the text at hand.
    std::size_t size() const { return size_; }
    std::string_view view() const { return {text_, size_}; }

    void append(std::string_view piece) {
        make_room(piece.size());
        char* const to = text_ + size_;
        if (piece.size() <= worth_a_loop) {
            for (std::size_t i = 0; i < piece.size(); ++i)
                to[i] = piece[i];
        } else {
            std::memcpy(to, piece.data(), piece.size());
        }
        size_ += piece.size();
    }
    void append(char c) {
        make_room(1);
        text_[size_++] = c;
    }

    /// Cuts the text off at `size`, which is no more than it has.
    void cut(std::size_t size) { size_ = size; }

    /// Ends the text at hand and begins the next one. What was written stays where it is as long as the blocks do.
    void begin_next() {
        text_ += size_;
        room_ -= size_;
        size_ = 0;
    }

    /// The memory of the texts. Nothing can be appended afterwards.
    std::vector<std::shared_ptr<const std::string>> take_blocks() { return std::move(blocks_); }

private:
    static constexpr std::size_t worth_a_loop = 8; ///< bytes; the call of memcpy takes longer

    void make_room(std::size_t more) {
        if (room_ - size_ < more)
            add_block(more);
    }
    void add_block(std::size_t more);

    char* text_ = nullptr; ///< in the last block
    std::size_t size_ = 0;
    std::size_t room_ = 0; ///< from `text_` to the end of the block
    std::vector<std::shared_ptr<const std::string>> blocks_;
};

} // namespace saddlerule
