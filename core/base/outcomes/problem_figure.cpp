#include "core/base/outcomes/problem_figure.h"

#include "core/base/outcomes/problem.h"

#include <iterator>

namespace saddlerule {
namespace {

constexpr std::string_view word_names[] = {
#define SADDLERULE_WORD(word) #word,
#include "core/base/outcomes/problem_words.inc"
#undef SADDLERULE_WORD
};

} // namespace

std::string_view word_name(ProblemWord word) {
    return word_names[static_cast<std::size_t>(word)];
}

std::size_t problem_word_count() {
    return std::size(word_names);
}

ProblemFigure::ProblemFigure(std::string_view quote) : value(Quote{.text = std::string(quote)}) {}

ProblemFigure::ProblemFigure(const Problem& cause) : value(std::make_shared<const Problem>(cause)) {}

} // namespace saddlerule
