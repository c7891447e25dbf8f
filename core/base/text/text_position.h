// Text positions: from a byte offset to the line and column that a person can go to.
#pragma once

#include "core/base/outcomes/problem.h"

#include <cstddef>
#include <string_view>
#include <vector>

namespace saddlerule {

/// Finds positions in one UTF-8 text. Lines end with LF, CRLF or a lone CR; columns count Unicode characters
/// (code points), so that of `ä` and a combining accent two are counted.
///
/// Every look-up reads at most 4 KiB beyond what earlier ones have read: marks are kept along the way,
/// whatever the length of the lines. Memory: two counts for each 4 KiB of text.
class TextPositions {
public:
    /// Of `text`, which must outlive this.
    explicit TextPositions(std::string_view text) : text_(text), marks_(1) {}

    /// Of the character at `offset`, or of the end of the text for offsets beyond it.
    TextPosition at(std::size_t offset);

private:
    static constexpr std::size_t mark_every = 4096;

    void advance(TextPosition& position, std::size_t from, std::size_t to) const;

    std::string_view text_;
    std::vector<TextPosition> marks_; ///< of the offsets 0, 4096, 8192, ... as far as anybody has asked
};

} // namespace saddlerule
