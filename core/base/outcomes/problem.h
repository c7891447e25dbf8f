// Problem: what the engine says instead of failing. A stable code, the figures of this case, and the place. The engine has no
// sentences: who words them is outside, in the language of its readers.
#pragma once

#include "core/base/outcomes/problem_figure.h"

#include <cstddef>
#include <initializer_list>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace saddlerule {

/// Every problem the engine can name.
enum class ProblemCode {
#define SADDLERULE_PROBLEM(code) code,
#include "core/base/outcomes/problem_codes.inc"
#undef SADDLERULE_PROBLEM
};

/// How many there are; the tests walk them all.
std::size_t problem_code_count();

/// A place in a text that somebody can go to: both count from 1, columns in characters (not bytes).
struct TextPosition {
    std::size_t line = 1;
    std::size_t column = 1;

    friend bool operator==(const TextPosition&, const TextPosition&) = default;
};

/// A place in a table.
struct CellPlace {
    std::size_t row = 1;     ///< as a spreadsheet counts: from 1, the header and all lines above it included
    std::string column_name; ///< as the header has it; empty for the row as a whole

    friend bool operator==(const CellPlace&, const CellPlace&) = default;
};

/// What a problem says, by name. Names are literals, of which nothing is copied.
///
/// There is a list of them wherever a problem is made, so it is made, moved and destroyed by calls and not in place.
class Figures {
public:
    struct Named {
        std::string_view name;
        ProblemFigure figure;
    };

    Figures() = default;
    Figures(std::initializer_list<Named> given);
    Figures(const Figures& other);
    Figures(Figures&& other) noexcept;
    Figures& operator=(const Figures& other);
    Figures& operator=(Figures&& other) noexcept;
    ~Figures();

    void add(std::string_view name, ProblemFigure figure);

    auto begin() { return list_.begin(); }
    auto end() { return list_.end(); }
    auto begin() const { return list_.begin(); }
    auto end() const { return list_.end(); }

private:
    std::vector<Named> list_;
};

/// One problem or one question.
struct Problem {
    ProblemCode code = ProblemCode::internal;
    Figures figures;
    /// The field it is about, as a path: `rider.readings[0].inseam_mm`, `bikes[3].saddle_lowest`. May be
    /// empty.
    std::string where;
    /// Where it is in a file that was read. Requests have a path only.
    std::optional<TextPosition> position;
    /// The same for what is in a table; only faults of the table itself have a position too.
    std::optional<CellPlace> cell = std::nullopt;

    /// The same problem one level further out: `where` is prefixed, code and figures stay.
    [[nodiscard]] Problem within(std::string_view outer) &&;
};

/// A problem in memory of its own, so that a result stays small; see Result.
struct ProblemRemover {
    void operator()(Problem* problem) const;
};
using ProblemApart = std::unique_ptr<Problem, ProblemRemover>;
ProblemApart apart(Problem&& problem);

/// The stable name of a code, as it is in answers: `figure_unit_unknown`.
std::string_view code_name(ProblemCode code);

} // namespace saddlerule
