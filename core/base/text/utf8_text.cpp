#include "core/base/text/utf8_text.h"

#include "core/base/text/file_kind.h"
#include "core/base/text/text_position.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <optional>
#include <utility>
#include <vector>

namespace saddlerule {
namespace {

using namespace std::string_view_literals;

constexpr std::string_view utf8_mark = "\xEF\xBB\xBF"sv;
constexpr std::string_view utf16_little_mark = "\xFF\xFE"sv;
constexpr std::string_view utf16_big_mark = "\xFE\xFF"sv;
constexpr std::string_view utf32_little_mark = "\xFF\xFE\0\0"sv;
constexpr std::string_view utf32_big_mark = "\0\0\xFE\xFF"sv;

Problem file_problem(ProblemCode code, Figures figures = {}, std::optional<TextPosition> position = {}) {
    return {.code = code, .figures = std::move(figures), .where = {}, .position = position};
}

std::uint8_t byte_at(std::string_view bytes, std::size_t offset) {
    return static_cast<std::uint8_t>(bytes[offset]);
}

/// Whether the eight bytes at `offset` are ASCII: most of most files is.
bool is_ascii_word(std::string_view bytes, std::size_t offset) {
    std::uint64_t word = 0;
    if (bytes.size() - offset < sizeof word)
        return false;
    std::memcpy(&word, bytes.data() + offset, sizeof word);
    return (word & 0x8080808080808080U) == 0;
}

/// How many bytes the character at `offset` takes, or 0 where there is no well-formed one (Unicode 15, table
/// 3-7).
std::size_t well_formed_length(std::string_view bytes, std::size_t offset) {
    const std::uint8_t lead = byte_at(bytes, offset);
    if (lead < 0x80)
        return 1;
    if (lead < 0xC2 || lead > 0xF4)
        return 0;
    const std::size_t length = lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
    if (bytes.size() - offset < length)
        return 0;
    // The second byte is narrower after four lead bytes: no overlong forms, no surrogates, nothing beyond
    // U+10FFFF.
    const std::uint8_t second = byte_at(bytes, offset + 1);
    const std::uint8_t low = lead == 0xE0 ? 0xA0 : lead == 0xF0 ? 0x90 : 0x80;
    const std::uint8_t high = lead == 0xED ? 0x9F : lead == 0xF4 ? 0x8F : 0xBF;
    if (second < low || second > high)
        return 0;
    for (std::size_t i = 2; i < length; ++i) {
        if ((byte_at(bytes, offset + i) & 0xC0U) != 0x80U)
            return 0;
    }
    return length;
}

/// Only a likely name. Windows-1252 has letters and quotes where Latin-1 has control characters (0x80 to
/// 0x9F).
ProblemWord likely_encoding(std::string_view bytes, std::size_t ill_formed) {
    const std::string_view rest = bytes.substr(ill_formed);
    const bool lead = byte_at(rest, 0) >= 0xC2 && byte_at(rest, 0) <= 0xF4;
    const bool half_a_character =
        lead && rest.size() < 4 && std::all_of(rest.begin() + 1, rest.end(), [](char c) {
            return (static_cast<std::uint8_t>(c) & 0xC0U) == 0x80U;
        });
    if (half_a_character)
        return ProblemWord::utf_8_cut_off;
    const bool windows = std::any_of(rest.begin(), rest.end(), [](char c) {
        const auto byte = static_cast<std::uint8_t>(c);
        return byte >= 0x80 && byte <= 0x9F;
    });
    return windows ? ProblemWord::windows_1252 : ProblemWord::windows_1252_or_latin_1;
}

std::string hexadecimal(std::uint8_t byte) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    return {digits[byte >> 4U], digits[byte & 0xFU]};
}

/// UTF-16 without a byte order mark shows as text in which every other byte is zero.
bool looks_like_utf16(std::string_view bytes) {
    if (bytes.size() < 4)
        return false;
    const bool little = bytes[0] != 0 && bytes[1] == 0 && bytes[2] != 0 && bytes[3] == 0;
    const bool big = bytes[0] == 0 && bytes[1] != 0 && bytes[2] == 0 && bytes[3] != 0;
    return little || big;
}

std::optional<Problem> refused_before_decoding(std::string_view bytes) {
    if (bytes.empty())
        return file_problem(ProblemCode::file_empty);
    if (const auto kind = recognised_kind(bytes)) {
        return file_problem(kind->spreadsheet ? ProblemCode::file_is_spreadsheet : ProblemCode::file_is_other,
                            {{"found", kind->name}});
    }
    if (bytes.size() > largest_file) {
        const double mib = static_cast<double>(bytes.size()) / (1024.0 * 1024.0);
        // Rounded up, so that a file just over the limit is not said to have just the limit.
        return file_problem(ProblemCode::file_too_large,
                            {{"size", Number{std::ceil(mib * 10.0) / 10.0}}, {"limit", largest_file_mib}});
    }
    if (bytes.starts_with(utf32_little_mark) || bytes.starts_with(utf32_big_mark))
        return file_problem(ProblemCode::file_encoding_not_read, {{"encoding", ProblemWord::utf_32}});
    if (looks_like_utf16(bytes)) {
        return file_problem(ProblemCode::file_encoding_not_read,
                            {{"encoding", ProblemWord::utf_16_without_mark}});
    }
    return std::nullopt;
}

/// Converts UTF-16 to UTF-8; `low` and `high` say which byte of each unit is which.
std::optional<Problem> convert_utf16(std::string_view bytes, std::size_t low, std::size_t high,
                                     std::string& text) {
    const auto unit_at = [&](std::size_t offset) {
        return static_cast<char32_t>(byte_at(bytes, offset + low) | byte_at(bytes, offset + high) << 8U);
    };
    const auto broken_here = [&] {
        return file_problem(ProblemCode::file_utf16_broken, {}, TextPositions(text).at(text.size()));
    };
    text.clear();
    text.reserve(bytes.size() / 2);
    std::size_t offset = 0;
    for (; offset + 1 < bytes.size(); offset += 2) {
        const char32_t unit = unit_at(offset);
        if (unit < 0xD800 || unit > 0xDFFF) {
            append_utf8(text, unit);
            continue;
        }
        const char32_t next = offset + 3 < bytes.size() ? unit_at(offset + 2) : 0;
        if (unit > 0xDBFF || next < 0xDC00 || next > 0xDFFF)
            return broken_here();
        append_utf8(text, 0x10000 + ((unit - 0xD800) << 10U) + (next - 0xDC00));
        offset += 2;
    }
    if (offset != bytes.size())
        return broken_here();
    return std::nullopt;
}

/// What Windows-1252 has where Latin-1 has control characters, 0x80 to 0x9F; five of them stand for themselves
/// (WHATWG Encoding Standard, index windows-1252, from memory).
constexpr char32_t windows_1252_letters[] = {0x20AC, 0x0081, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021,
                                             0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0x008D, 0x017D, 0x008F,
                                             0x0090, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014,
                                             0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x009D, 0x017E, 0x0178};

void convert_windows_1252(std::string_view bytes, std::string& text) {
    text.clear();
    text.reserve(bytes.size() + bytes.size() / 8);
    for (const char c : bytes) {
        const auto byte = static_cast<std::uint8_t>(c);
        append_utf8(text, byte >= 0x80 && byte <= 0x9F ? windows_1252_letters[byte - 0x80] : byte);
    }
}

} // namespace

std::size_t first_ill_formed(std::string_view bytes) {
    std::size_t offset = 0;
    while (offset < bytes.size()) {
        if (is_ascii_word(bytes, offset)) {
            offset += sizeof(std::uint64_t);
            continue;
        }
        const std::size_t length = well_formed_length(bytes, offset);
        if (length == 0)
            break;
        offset += length;
    }
    return offset;
}

Result<std::string_view> utf8_text(std::string_view bytes, std::string& converted, TextEncoding encoding) {
    if (auto refused = refused_before_decoding(bytes))
        return *std::move(refused);

    std::string_view text = bytes;
    const bool little = bytes.starts_with(utf16_little_mark);
    if (little || bytes.starts_with(utf16_big_mark)) {
        if (auto broken = convert_utf16(bytes.substr(2), little ? 0 : 1, little ? 1 : 0, converted))
            return *std::move(broken);
        text = converted;
    } else if (text.starts_with(utf8_mark)) {
        text.remove_prefix(utf8_mark.size());
    } else if (encoding == TextEncoding::windows_1252) {
        convert_windows_1252(bytes, converted);
        text = converted;
    }

    const std::size_t nul = text.find('\0');
    if (nul != std::string_view::npos)
        return file_problem(ProblemCode::file_is_binary, {}, TextPositions(text).at(nul));
    const std::size_t ill_formed = first_ill_formed(text);
    if (ill_formed != text.size()) {
        return file_problem(ProblemCode::file_not_utf8,
                            {{"byte", hexadecimal(byte_at(text, ill_formed))},
                             {"encoding", likely_encoding(text, ill_formed)}},
                            TextPositions(text).at(ill_formed));
    }
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return file_problem(ProblemCode::file_blank);
    return text;
}

std::size_t character_count(std::string_view utf8) {
    return static_cast<std::size_t>(std::count_if(
        utf8.begin(), utf8.end(), [](char c) { return (static_cast<std::uint8_t>(c) & 0xC0U) != 0x80U; }));
}

void append_utf8(std::string& text, char32_t character) {
    const auto append = [&](char32_t bits) { text += static_cast<char>(bits); };
    const auto append_continuation = [&](unsigned shift) { append(0x80U | (character >> shift & 0x3FU)); };
    if (character < 0x80) {
        append(character);
        return;
    }
    if (character < 0x800) {
        append(0xC0U | character >> 6U);
    } else if (character < 0x10000) {
        append(0xE0U | character >> 12U);
        append_continuation(6);
    } else {
        append(0xF0U | character >> 18U);
        append_continuation(12);
        append_continuation(6);
    }
    append_continuation(0);
}

} // namespace saddlerule
