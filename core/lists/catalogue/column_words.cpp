#include "core/lists/catalogue/column_words.h"

#include "core/lists/table/table_words.h"

#include <algorithm>
#include <string>

namespace saddlerule {
namespace {

struct ColumnWords {
    std::string_view field;
    std::string_view words; ///< as plain_word() leaves them, each between blanks
};

constexpr ColumnWords column_words[]{
    {"id",
     " tag no nr number nummer num\xC3\xA9ro n\xC3\xBAmero tagnumber bikeno bikenumber radnr radnummer "},
    {"name", " bike model rad fahrrad modell bezeichnung nom v\xC3\xA9lo mod\xC3\xA8le nombre bici bicicleta "
             "modelo naam fiets "},
    {"wheel", " wheels wheelsize tyre tire zoll laufrad reifen radgr\xC3\xB6\xC3\x9F"
              "e roue roues pneu rueda ruedas wiel wielmaat wielen "},
    {"mass_kg", " weight gewicht poids peso "},
    {"price", " preis prix precio prijs "},
    {"notes", " note remark remarks comment comments bemerkung bemerkungen notiz notizen remarque remarques "
              "nota notas "
              "observaciones opmerking opmerkingen "},
};

/// Parts of words, each between blanks.
constexpr std::string_view saddle_parts = " saddle seat sattel selle sill\xC3\xAD zadel ";
constexpr std::string_view parts_of_else = " tube angle post winkel rohr st\xC3\xBCtz ";
constexpr std::string_view low_parts = " min m\xC3\xADn low unten niedrig tief basse bajo laag ";
/// Not those that are in words for "height" as well.
constexpr std::string_view high_parts = " max m\xC3\xA1x highest hoch h\xC3\xB6"
                                        "chst oben hoogst plushaut alto ";
constexpr std::string_view high_ends = " high haut haute hoog ";

template <typename Suits>
bool any_part(std::string_view parts, Suits suits) {
    for (std::size_t begin = 1; begin < parts.size();) {
        const std::size_t end = parts.find(' ', begin);
        if (suits(parts.substr(begin, end - begin)))
            return true;
        begin = end + 1;
    }
    return false;
}

bool has_part(std::string_view word, std::string_view parts) {
    return any_part(parts, [&](std::string_view part) { return word.find(part) != std::string_view::npos; });
}

} // namespace

const CatalogueField* field_in_own_words(std::string_view heading) {
    constexpr std::size_t longest = 60;
    // What begins with a mark may be a formula, and what has quotes in it was not taken apart.
    constexpr std::string_view marks = "=+-@#'([";
    if (heading.empty() || heading.size() > longest ||
        marks.find(heading.front()) != std::string_view::npos || heading.find('"') != std::string_view::npos)
        return nullptr;
    const std::string word = plain_word(heading);
    if (word.empty())
        return nullptr;
    for (const ColumnWords& column : column_words) {
        if (column.words.find(' ' + word + ' ') != std::string_view::npos)
            return field_named(column.field);
    }
    if (!has_part(word, saddle_parts) || has_part(word, parts_of_else))
        return nullptr;
    if (has_part(word, low_parts))
        return field_named("saddle_lowest");
    const bool high = has_part(word, high_parts) ||
                      any_part(high_ends, [&](std::string_view end) { return word.ends_with(end); });
    return high ? field_named("saddle_highest") : nullptr;
}

} // namespace saddlerule
