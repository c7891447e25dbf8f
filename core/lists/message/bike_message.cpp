#include "core/lists/message/bike_message.h"

#include "core/base/text/ascii_case.h"
#include "core/lists/catalogue/catalogue_fields.h"

#include <optional>
#include <utility>
#include <vector>

namespace saddlerule {
namespace {

/// Words with a blank before and behind each.
using Words = std::string_view;

constexpr Words wheel_words = " wheel wheels tyre tyres tire tires rad r\u00E4der reifen roue roues pneu "
                              "pneus rueda ruedas wiel wielen band ";
constexpr Words high_words = " high highest hoch oben h\u00F6chste haut alto alta hoog hoogste max maximum ";
constexpr Words up_to_words = " to bis \u00E0 hasta tot ";
constexpr Words balance_words = " balance laufrad draisienne equilibrio loopfiets ";
constexpr Words span_words = " to and bis und \u00E0 et a y hasta tot en ";
constexpr Words money_words = " eur euro euros gbp usd chf ";

bool is_one_of(std::string_view word, Words words) {
    for (std::size_t at = words.find(word); at != Words::npos; at = words.find(word, at + 1)) {
        if (words[at - 1] == ' ' && words[at + word.size()] == ' ')
            return true;
    }
    return false;
}

/// The message in small letters, with what keeps words apart in one form.
std::string plain_text(std::string_view text) {
    constexpr std::pair<std::string_view, std::string_view> plainer[] = {
        {"\u2013", "-"},  {"\u2014", "-"},  {"\u00A0", " "},     {"\u202F", " "},
        {"\u2033", "\""}, {"\u201D", "\""}, {"\u20AC", " eur "}, {"\u00A3", " gbp "},
        {"$", " usd "},   {"\u2019", "'"},  {"\u00BD", " 1/2"}};
    std::string plain;
    while (!text.empty()) {
        std::size_t read = 1;
        const char c = text.front();
        std::string_view written = text.substr(0, 1);
        for (const auto& [from, to] : plainer) {
            if (text.starts_with(from)) {
                read = from.size();
                written = to;
            }
        }
        if (in_lower_case(c) != c)
            plain += in_lower_case(c);
        else
            plain += written;
        text.remove_prefix(read);
    }
    return plain;
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// Letters of any script: what is beyond ASCII counts as one.
bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

/// Takes characters off the front of a text for as long as they are of that kind.
template <typename Kind>
std::string_view taken(std::string_view& rest, Kind kind) {
    std::size_t size = 0;
    while (size < rest.size() && kind(rest[size]))
        ++size;
    const std::string_view front = rest.substr(0, size);
    rest.remove_prefix(size);
    return front;
}

struct Token {
    std::string_view text; ///< a word, or a figure without its unit
    bool is_figure;
    std::optional<LengthUnit> unit; ///< of a figure
    bool ends_clause = false;       ///< a comma, full stop or line end is behind it
    bool in_span = false;           ///< a hyphen or dash joins the figure to the next
    bool is_used = false;           ///< as a wheel or a price
};

/// 49.5, 49,5, 1/2 or 19 1/2.
std::string_view taken_figure(std::string_view& rest) {
    const std::string_view all = rest;
    taken(rest, is_digit);
    for (const std::string_view joint :
         {std::string_view(".,/"), std::string_view(" "), std::string_view("/")}) {
        std::string_view more = rest;
        if (more.empty() || joint.find(more.front()) == std::string_view::npos)
            continue;
        more.remove_prefix(1);
        // A blank joins only a fraction.
        if (taken(more, is_digit).empty() || (joint == " " && !more.starts_with('/')))
            break;
        rest = more;
    }
    return all.substr(0, all.size() - rest.size());
}

/// "62 cm", "24\"", "16-Zoll"
std::optional<LengthUnit> taken_unit(std::string_view& rest) {
    std::string_view behind = rest;
    taken(behind, [](char c) { return c == ' ' || c == '-'; });
    const std::string_view from = behind;
    if (behind.starts_with('"') || behind.starts_with('\''))
        behind.remove_prefix(1);
    else
        taken(behind, is_letter);
    const auto unit = unit_from_text(from.substr(0, from.size() - behind.size()));
    if (unit)
        rest = behind;
    return unit;
}

/// Words and figures of a plain text. All else only keeps them apart.
std::vector<Token> tokens_of(std::string_view rest) {
    constexpr std::string_view clause_ends = ".,;()\n";
    std::vector<Token> tokens;
    while (!rest.empty()) {
        if (is_digit(rest.front())) {
            const std::string_view figure = taken_figure(rest);
            tokens.push_back({.text = figure, .is_figure = true, .unit = taken_unit(rest)});
            continue;
        }
        // Digits behind letters belong to the word, such as the id L07.
        const std::string_view word = taken(rest, [](char c) { return is_letter(c) || is_digit(c); });
        if (!word.empty()) {
            tokens.push_back({.text = word, .is_figure = false, .unit = {}});
            continue;
        }
        if (!tokens.empty()) {
            tokens.back().in_span |= rest.front() == '-';
            tokens.back().ends_clause |= clause_ends.find(rest.front()) != std::string_view::npos;
        }
        rest.remove_prefix(1);
    }
    return tokens;
}

class MessageReader {
public:
    /// Refers to `plain`.
    MessageReader(std::string_view plain, LengthUnit bare) : bare_(bare), tokens_(tokens_of(plain)) {}

    Result<BikeMessage> read(BikeMessage message) {
        share_units();
        for (std::size_t i = 0; i < tokens_.size(); ++i) {
            const std::string_view word = tokens_[i].text;
            if (is_one_of(word, wheel_words))
                take_beside(i, message.wheel);
            if (is_one_of(word, money_words))
                take_beside(i, message.price);
            if (is_one_of(word, balance_words))
                message.kind = "balance";
        }
        if (count_heights(true) == 0)
            count_heights(false);
        if (heights_ == 0 || heights_ > 2) {
            return Problem{.code = ProblemCode::message_heights_unclear,
                           .figures = {{"count", heights_}},
                           .where = {},
                           .position = {}};
        }
        if (heights_ == 1) {
            (says_high(lowest_) ? message.saddle_highest : message.saddle_lowest) = cell(lowest_);
        } else {
            message.saddle_lowest = cell(lowest_);
            message.saddle_highest = cell(highest_);
        }
        return message;
    }

private:
    /// Both ends of a span ("48-62 cm", "48 to 62 cm") have the unit that is behind it.
    void share_units() {
        for (std::size_t i = tokens_.size(); i-- > 1;) {
            const bool by_word = i > 1 && is_one_of(tokens_[i - 1].text, span_words);
            Token& first = tokens_[by_word ? i - 2 : i - 1];
            if (first.is_figure && !first.unit && (by_word || first.in_span))
                first.unit = tokens_[i].unit;
        }
    }

    /// The figure before a word, or else the next within two words, all in one clause. A marking such as 47-305 is one.
    void take_beside(std::size_t word, std::string& found) {
        std::size_t figure = word;
        if (word > 0 && is_free(word - 1) && !tokens_[word - 1].ends_clause)
            figure = word - 1;
        for (std::size_t i = word; figure == word && i < word + 2 && i < tokens_.size(); ++i) {
            if (tokens_[i].ends_clause)
                break;
            if (is_free(i + 1))
                figure = i + 1;
        }
        if (figure == word || !found.empty())
            return;
        found = tokens_[figure].text;
        tokens_[figure].is_used = true;
        if (tokens_[figure].in_span && is_free(figure + 1)) {
            found += '-';
            found += tokens_[figure + 1].text;
            tokens_[figure + 1].is_used = true;
        }
    }

    bool is_free(std::size_t i) const {
        return i < tokens_.size() && tokens_[i].is_figure && !tokens_[i].is_used;
    }

    /// Figures that a saddle can be at, with a unit or all without.
    int count_heights(bool with_unit) {
        const FieldLimits limits = field_named("saddle_lowest")->limits;
        Length shortest;
        Length longest;
        for (std::size_t i = 0; i < tokens_.size(); ++i) {
            if (!is_free(i) || tokens_[i].unit.has_value() != with_unit)
                continue;
            const auto length = read_length(tokens_[i].text, tokens_[i].unit.value_or(bare_));
            if (!length || *length < Length::millimetres(limits.low) ||
                *length > Length::millimetres(limits.high))
                continue;
            if (heights_ == 0 || *length < shortest) {
                shortest = *length;
                lowest_ = i;
            }
            if (heights_ == 0 || *length >= longest) {
                longest = *length;
                highest_ = i;
            }
            ++heights_;
        }
        return heights_;
    }

    /// "highest 62 cm", "up to 62 cm"
    bool says_high(std::size_t figure) const {
        if (figure > 0 && is_one_of(tokens_[figure - 1].text, up_to_words))
            return true;
        while (figure-- > 0 && !tokens_[figure].is_figure) {
            if (is_one_of(tokens_[figure].text, high_words))
                return true;
        }
        return false;
    }

    std::string cell(std::size_t i) const {
        std::string text(tokens_[i].text);
        text += ' ';
        text += unit_name(tokens_[i].unit.value_or(bare_));
        return text;
    }

    LengthUnit bare_;
    std::vector<Token> tokens_;
    int heights_ = 0;
    std::size_t lowest_ = 0;
    std::size_t highest_ = 0;
};

} // namespace

Result<BikeMessage> read_bike_message(std::string_view text, LengthUnit bare) {
    BikeMessage message;
    const std::size_t mark = text.find('#');
    const std::size_t colon = text.find(": ", mark);
    if (mark != std::string_view::npos && colon != std::string_view::npos) {
        message.id = text.substr(mark + 1, colon - mark - 1);
        text.remove_prefix(colon);
    }
    const std::string plain = plain_text(text);
    return MessageReader(plain, bare).read(std::move(message));
}

} // namespace saddlerule
