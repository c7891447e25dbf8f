#include "core/lists/table/table_words.h"

#include <algorithm>
#include <array>

namespace saddlerule {
namespace {

// As plain_word() leaves them.
constexpr std::array<std::string_view, 17> words_for_totals{
    "total", "totals",  "sum",  "average", "mean",     "summe",  "gesamt", "mittel",    "durchschnitt",
    "somme", "moyenne", "suma", "media",   "promedio", "totaal", "som",    "gemiddelde"};

} // namespace

std::string plain_word(std::string_view text) {
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if (byte >= 'A' && byte <= 'Z') {
            result += static_cast<char>(byte + 32);
        } else if ((byte >= 'a' && byte <= 'z') || (byte >= '0' && byte <= '9') || byte == '/') {
            result += static_cast<char>(byte);
        } else if (byte == 0xC3 && i + 1 < text.size()) {
            const auto next = static_cast<unsigned char>(text[++i]);
            result += static_cast<char>(byte);
            result += static_cast<char>(next >= 0x80 && next <= 0x9E ? next + 0x20 : next);
        } else if (byte >= 0xC4) {
            result += static_cast<char>(byte);
            while (i + 1 < text.size() && (static_cast<unsigned char>(text[i + 1]) & 0xC0) == 0x80)
                result += text[++i];
        }
    }
    return result;
}

bool is_word_for_totals(std::string_view text) {
    constexpr std::size_t longest = 16;
    if (text.size() > longest)
        return false;
    const std::string word = plain_word(text);
    return std::find(words_for_totals.begin(), words_for_totals.end(), word) != words_for_totals.end();
}

} // namespace saddlerule
