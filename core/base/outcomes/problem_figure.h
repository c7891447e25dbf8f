// ProblemFigure: a part of what a problem says, as the engine knows it. Whoever words the problem puts it into its reader's form.
#pragma once

#include "core/base/quantities/calendar_date.h"

#include <concepts>
#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace saddlerule {

struct Problem;

/// What is told by a code of a fixed set: what a file turned out to be, what a field should hold.
enum class ProblemWord {
#define SADDLERULE_WORD(word) word,
#include "core/base/outcomes/problem_words.inc"
#undef SADDLERULE_WORD
};

/// The stable name of a word, as it is in answers: `an_xlsx`.
std::string_view word_name(ProblemWord word);

/// How many words there are; the tests walk them all.
std::size_t problem_word_count();

/// Text as somebody wrote it. A bare number has the unit that it counts in.
struct Quote {
    std::string text;
    std::string_view unit = {};
};

/// A count, or a quantity in the unit that it is to be told in: that of the list, or that of the rider. `decimals` is how
/// exactly it is known.
struct Number {
    double value = 0.0;
    std::string_view unit = {}; ///< cm, kg, degrees; empty for a count
    int decimals = 2;
};

/// Names of fields or values.
struct KnownNames {
    enum class Are {
        all,    ///< there are no others
        either, ///< one of them and not the other
        guess   ///< perhaps this was meant
    };
    Are are = Are::all;
    std::vector<std::string> names;
};

struct ProblemFigure {
    using Value =
        std::variant<Quote, ProblemWord, Number, CalendarDate, KnownNames, std::shared_ptr<const Problem>>;

    ProblemFigure(Quote quote) : value(std::move(quote)) {}
    ProblemFigure(std::string_view quote);
    ProblemFigure(const std::string& quote) : ProblemFigure(std::string_view(quote)) {}
    ProblemFigure(const char* quote) : ProblemFigure(std::string_view(quote)) {}
    ProblemFigure(ProblemWord word) : value(word) {}
    ProblemFigure(Number number) : value(number) {}
    template <std::integral Count>
    ProblemFigure(Count count) : ProblemFigure(Number{.value = static_cast<double>(count)}) {}
    ProblemFigure(CalendarDate date) : value(date) {}
    ProblemFigure(KnownNames names) : value(std::move(names)) {}
    /// A problem inside: the cause of this one.
    ProblemFigure(const Problem& cause);

    Value value;
};

/// The names of a table of names and values, as all there are.
template <typename Names>
KnownNames all_names(const Names& table) {
    KnownNames known;
    for (const auto& row : table) {
        const auto& [name, value] = row;
        known.names.emplace_back(name);
    }
    return known;
}

} // namespace saddlerule
