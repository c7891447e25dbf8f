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

[[gnu::noinline]] ProblemFigure::ProblemFigure(Quote quote) : value(std::move(quote)) {}
[[gnu::noinline]] ProblemFigure::ProblemFigure(std::string_view quote)
    : value(Quote{.text = std::string(quote)}) {}
[[gnu::noinline]] ProblemFigure::ProblemFigure(ProblemWord word) : value(word) {}
[[gnu::noinline]] ProblemFigure::ProblemFigure(Number number) : value(number) {}
[[gnu::noinline]] ProblemFigure::ProblemFigure(CalendarDate date) : value(date) {}
[[gnu::noinline]] ProblemFigure::ProblemFigure(KnownNames names) : value(std::move(names)) {}
[[gnu::noinline]] ProblemFigure::ProblemFigure(const Problem& cause)
    : value(std::make_shared<const Problem>(cause)) {}
[[gnu::noinline]] ProblemFigure::ProblemFigure(const ProblemFigure& other) = default;
[[gnu::noinline]] ProblemFigure::ProblemFigure(ProblemFigure&& other) noexcept = default;
[[gnu::noinline]] ProblemFigure& ProblemFigure::operator=(const ProblemFigure& other) = default;
[[gnu::noinline]] ProblemFigure& ProblemFigure::operator=(ProblemFigure&& other) noexcept = default;
[[gnu::noinline]] ProblemFigure::~ProblemFigure() = default;

} // namespace saddlerule
