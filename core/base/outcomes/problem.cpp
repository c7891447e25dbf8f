#include "core/base/outcomes/problem.h"

#include <iterator>

namespace saddlerule {
namespace {

constexpr std::string_view code_names[] = {
#define SADDLERULE_PROBLEM(code) #code,
#include "core/base/outcomes/problem_codes.inc"
#undef SADDLERULE_PROBLEM
};

} // namespace

Figures::Figures(std::initializer_list<Named> given) : list_(given) {}

[[gnu::noinline]] Figures::Figures(const Figures& other) = default;
[[gnu::noinline]] Figures::Figures(Figures&& other) noexcept = default;
[[gnu::noinline]] Figures& Figures::operator=(const Figures& other) = default;
[[gnu::noinline]] Figures& Figures::operator=(Figures&& other) noexcept = default;
[[gnu::noinline]] Figures::~Figures() = default;

void Figures::add(std::string_view name, ProblemFigure figure) {
    list_.push_back({name, std::move(figure)});
}

void ProblemRemover::operator()(Problem* problem) const {
    delete problem;
}

ProblemApart apart(Problem&& problem) {
    return ProblemApart(new Problem(std::move(problem)));
}

Problem Problem::within(std::string_view outer) && {
    if (where.empty())
        where = outer;
    else if (where.front() == '[')
        where = std::string(outer) + where;
    else
        where = std::string(outer) + '.' + where;
    return std::move(*this);
}

std::string_view code_name(ProblemCode code) {
    return code_names[static_cast<std::size_t>(code)];
}

std::size_t problem_code_count() {
    return std::size(code_names);
}

} // namespace saddlerule
