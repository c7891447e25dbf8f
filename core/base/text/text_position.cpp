#include "core/base/text/text_position.h"

#include <algorithm>

namespace saddlerule {

TextPosition TextPositions::at(std::size_t offset) {
    offset = std::min(offset, text_.size());
    const std::size_t wanted = offset / mark_every;
    while (marks_.size() <= wanted) {
        const std::size_t from = (marks_.size() - 1) * mark_every;
        TextPosition mark = marks_.back();
        advance(mark, from, from + mark_every);
        marks_.push_back(mark);
    }
    TextPosition position = marks_[wanted];
    advance(position, wanted * mark_every, offset);
    return position;
}

void TextPositions::advance(TextPosition& position, std::size_t from, std::size_t to) const {
    for (std::size_t i = from; i < to; ++i) {
        const char c = text_[i];
        const bool line_ends = c == '\n' || (c == '\r' && !(i + 1 < text_.size() && text_[i + 1] == '\n'));
        const bool starts_character = (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
        if (line_ends)
            position = {.line = position.line + 1, .column = 1};
        else if (starts_character)
            ++position.column;
    }
}

} // namespace saddlerule
