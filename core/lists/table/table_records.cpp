#include "core/lists/table/table_records.h"

#include <algorithm>

namespace saddlerule {
namespace {

constexpr char quote = '"';

bool says_something(std::string_view cell) {
    return std::any_of(cell.begin(), cell.end(), [](char c) { return c != ' ' && c != '\t'; });
}

} // namespace

bool TableRecords::next() {
    while (next_ < text_.size() && !unclosed_quote_) {
        ++row_;
        begin_ = next_;
        if (text_[next_] == '\n' || text_[next_] == '\r') {
            pass_line_end();
            continue;
        }
        if (read_row())
            return true;
    }
    count_ = 0;
    return false;
}

TableRecords TableRecords::before_this_row() const {
    TableRecords before(text_, separator_, begin_);
    before.row_ = row_ - 1;
    return before;
}

void TableRecords::add_cell(std::string_view text, std::size_t begin) {
    if (count_ == cells_.size())
        cells_.resize(std::max<std::size_t>(16, 2 * count_));
    cells_[count_++] = {.text = text, .begin = begin};
}

/// True where something is in the row.
bool TableRecords::read_row() {
    count_ = 0;
    pieces_.clear();
    in_pieces_.clear();
    bool too_many = false;
    while (true) {
        const bool quoted = next_ < text_.size() && text_[next_] == quote;
        if (quoted && !read_quoted_cell())
            return false;
        if (!quoted)
            read_plain_cell();
        if (count_ > most_cells) {
            too_many = true;
            --count_;
        }
        if (next_ == text_.size() || text_[next_] != separator_)
            break;
        ++next_;
    }
    put_pieces_in_place();
    if (too_many)
        keep_the_rest_as_it_stands();
    pass_line_end();
    const auto row = cells();
    return std::any_of(row.begin(), row.end(),
                       [](const TableCell& cell) { return says_something(cell.text); });
}

void TableRecords::put_pieces_in_place() {
    for (std::size_t i = 0; i < in_pieces_.size() && in_pieces_[i].first < count_; ++i) {
        const auto [cell, begin] = in_pieces_[i];
        const std::size_t end = i + 1 < in_pieces_.size() ? in_pieces_[i + 1].second : pieces_.size();
        cells_[cell].text = std::string_view(pieces_).substr(begin, end - begin);
    }
}

/// Empty cells at the end of a row say nothing, however many they are.
void TableRecords::keep_the_rest_as_it_stands() {
    TableCell& last = cells_[count_ - 1];
    const std::size_t begin = last.begin;
    std::size_t end = next_;
    while (end > begin && (text_[end - 1] == separator_ || text_[end - 1] == ' ' || text_[end - 1] == '\t'))
        --end;
    const std::string_view rest = text_.substr(begin, end - begin);
    if (rest.find(separator_) != std::string_view::npos)
        last.text = rest;
}

void TableRecords::read_plain_cell() {
    const std::size_t begin = next_;
    next_ = end_of_cell(begin);
    add_cell({text_.data() + begin, next_ - begin}, begin);
}

std::size_t TableRecords::end_of_cell(std::size_t at) const {
    const char* const text = text_.data();
    const std::size_t size = text_.size();
    const char separator = separator_;
    while (at < size && text[at] != separator && (text[at] > '\r' || (text[at] != '\n' && text[at] != '\r')))
        ++at;
    return at;
}

/// False where the quote is never closed.
bool TableRecords::read_quoted_cell() {
    const std::size_t begin = next_;
    const std::size_t pieces_begin = pieces_.size();
    bool in_one_piece = true;
    std::size_t piece = begin + 1;
    std::size_t at = piece;
    while (true) {
        at = text_.find(quote, at);
        if (at == std::string_view::npos) {
            unclosed_quote_ = begin;
            return false;
        }
        if (at + 1 == text_.size() || text_[at + 1] != quote)
            break;
        in_one_piece = false;
        pieces_ += text_.substr(piece, at + 1 - piece);
        at += 2;
        piece = at;
    }
    std::string_view last = text_.substr(piece, at - piece);
    next_ = at + 1;
    const std::size_t rest = next_;
    next_ = end_of_cell(rest);
    if (next_ > rest) {
        in_one_piece = false;
        pieces_ += last;
        last = text_.substr(rest, next_ - rest);
    }
    if (!in_one_piece) {
        pieces_ += last;
        in_pieces_.emplace_back(count_, pieces_begin);
    }
    add_cell(last, begin);
    return true;
}

void TableRecords::pass_line_end() {
    if (next_ == text_.size())
        return;
    const bool both = text_[next_] == '\r' && next_ + 1 < text_.size() && text_[next_ + 1] == '\n';
    next_ += both ? 2 : 1;
}

std::optional<SeparatorLine> separator_line(std::string_view text) {
    constexpr std::string_view mark = "sep=";
    const bool in_quotes = text.starts_with(quote);
    const std::size_t begin = in_quotes ? 1 : 0;
    if (!text.substr(begin).starts_with(mark) || text.size() == begin + mark.size())
        return std::nullopt;
    const char separator = text[begin + mark.size()];
    std::size_t end = begin + mark.size() + 1;
    if (in_quotes && text.substr(end).starts_with(quote))
        ++end;
    const std::string_view rest = text.substr(end);
    if (!rest.empty() && !rest.starts_with('\n') && !rest.starts_with('\r'))
        return std::nullopt;
    return SeparatorLine{.separator = separator,
                         .end = end + (rest.starts_with("\r\n") ? 2
                                       : rest.empty()           ? 0
                                                                : 1)};
}

} // namespace saddlerule
