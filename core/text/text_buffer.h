// Text buffer: a text that grows by very many small pieces. The library's string appends each of them through a
// function of its own, which in wasm takes most of the time of reading a table.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstring>
#include <memory>
#include <string_view>
#include <utility>

namespace saddlerule {

class TextBuffer {
public:
    std::size_t size() const { return size_; }
    std::string_view view() const { return {text_.get(), size_}; }

    void append(std::string_view piece) {
        if (piece.empty())
            return;
        make_room(piece.size());
        char* const to = text_.get() + size_;
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

    /// Cuts the text off at `size`, which is no more than it has. Its room stays.
    void cut(std::size_t size) { size_ = size; }

private:
    static constexpr std::size_t first_room = 1024;
    static constexpr std::size_t worth_a_loop = 8; ///< bytes; the call of memcpy takes longer

    void make_room(std::size_t more) {
        if (room_ - size_ >= more)
            return;
        room_ = std::max(first_room, std::max(size_ + more, 2 * room_));
        auto larger = std::make_unique<char[]>(room_);
        if (size_ > 0)
            std::memcpy(larger.get(), text_.get(), size_);
        text_ = std::move(larger);
    }

    std::unique_ptr<char[]> text_;
    std::size_t size_ = 0;
    std::size_t room_ = 0;
};

} // namespace saddlerule
