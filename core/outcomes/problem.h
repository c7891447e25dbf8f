// Problem: what the engine says instead of failing. A stable code, the figures of this case, and the place;
// the wording is kept in problem_texts.cpp, so that a page in another language can word the same code itself.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace saddlerule {

/// Every problem the engine can name. The order is that of the table in problem_texts.cpp; names on the wire
/// are there. How to add one: a line here, a row there, a test that provokes it.
enum class ProblemCode {
    // Our own mistake, never the user's.
    internal,
    // Typed figures.
    figure_empty,
    figure_not_a_number,
    figure_unit_unknown,
    figure_negative,
    figure_too_large,
    figure_fraction_malformed,
    // Requests.
    request_unreadable,
    request_field_unknown,
    request_field_missing,
    request_field_wrong_type,
    request_value_unknown,
    request_value_out_of_range,
    request_date_malformed,
    request_not_supported,
    request_no_list_loaded,
    rider_without_measure,
    // Notes on a rider: questions, never refusals.
    reading_outside_plausible,
    readings_spread,
};

/// A place in a text that somebody can go to: both count from 1, columns in characters (not bytes).
struct TextPosition {
    std::size_t line = 1;
    std::size_t column = 1;

    friend bool operator==(const TextPosition&, const TextPosition&) = default;
};

/// One problem or one question. `figures` are the named parts of the sentence, already formatted as text.
struct Problem {
    ProblemCode code = ProblemCode::internal;
    std::vector<std::pair<std::string, std::string>> figures;
    /// The field it is about, as a path: `rider.readings[0].inseam_mm`, `bikes[3].saddle_lowest`. May be
    /// empty.
    std::string where;
    /// Where it stands in a file that was read. Requests have a path only.
    std::optional<TextPosition> position;

    /// The same problem one level further out: `where` is prefixed, code and figures stay.
    [[nodiscard]] Problem within(std::string_view outer) &&;
};

/// The stable name of a code, as it stands in answers: `figure_unit_unknown`.
std::string_view code_name(ProblemCode code);

/// The English sentence: its position first ("line 7, column 22: ..."), then cause, with the figures put in.
std::string sentence(const Problem& problem);

/// What would have been right, in a few English words; empty where the sentence says it all.
std::string expected(const Problem& problem);

} // namespace saddlerule
