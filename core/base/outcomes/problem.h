// Problem: what the engine says instead of failing. A stable code, the figures of this case, and the place;
// the wording is kept in problem_texts.cpp, so that a page in another language can word the same code itself.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <memory>
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
    request_not_utf8,
    request_field_unknown,
    request_field_missing,
    request_field_twice,
    request_field_wrong_type,
    request_value_unknown,
    request_value_out_of_range,
    request_date_malformed,
    request_bike_unknown,
    request_bike_kept_and_out,
    request_given_twice,
    rider_without_measure,
    // Notes on a rider: questions, never refusals.
    reading_outside_plausible,
    readings_spread,
    reading_in_future,
    reading_old,
    reading_before_birth,
    reading_below_earlier,
    reading_grown_too_fast,
    rider_born_in_future,
    rider_under_one,
    rider_over_eighteen,
    rider_stature_doubtful,
    rider_stature_unlikely,
    // Plans for several riders.
    club_too_many_riders,
    club_rider_twice,
    club_rider_unknown,
    club_rider_locked_twice,
    club_bike_locked_too_often,
    club_round_locked_twice,
    club_pair_locked_and_not,
    club_bike_locked_and_absent,
    // Tables of riders.
    riders_none,
    riders_row_of_totals,
    riders_name_twice,
    riders_word_unknown,
    riders_figure_out_of_range,
    riders_age_unreadable,
    riders_weight_unreadable,
    // A bike in a message.
    message_heights_unclear,
    // Files, before anybody looks at what they say.
    file_empty,
    file_blank,
    file_too_large,
    file_is_spreadsheet,
    file_is_other,
    file_is_binary,
    file_encoding_not_read,
    file_not_utf8,
    file_utf16_broken,
    // JSON as such.
    json_empty,
    json_not_json,
    json_cut_off,
    json_comma_missing,
    json_comma_extra,
    json_colon_missing,
    json_value_missing,
    json_bracket_mismatched,
    json_more_after_end,
    json_figure_malformed,
    json_figure_decimal_comma,
    json_figure_too_large,
    json_figure_not_finite,
    json_word_unknown,
    json_quotes_single,
    json_quotes_curly,
    json_name_without_quotes,
    json_comment,
    json_text_not_closed,
    json_quote_inside_text,
    json_text_control_character,
    json_escape_unknown,
    json_surrogate_alone,
    json_character_unexpected,
    json_too_deep,
    json_text_too_long,
    json_too_many_values,
    // Lists of bikes.
    file_not_an_object,
    file_format_unknown,
    file_version_too_new,
    file_field_wrong_type,
    file_value_unknown,
    file_date_malformed,
    file_currency_malformed,
    file_field_twice,
    file_too_many_fields,
    file_without_bikes,
    file_bikes_empty,
    file_too_many_bikes,
    file_no_usable_bike,
    bike_not_a_group,
    bike_without_name,
    bike_without_saddle,
    bike_field_twice,
    bike_field_wrong_type,
    bike_value_unknown,
    bike_figure_out_of_range,
    bike_figure_not_whole,
    bike_figure_without_unit,
    bike_highest_below_lowest,
    bike_text_too_long,
    bike_too_many_fields,
    bike_id_taken,
    bike_id_given_twice,
    // Notes on a list: nothing is refused for them.
    list_field_unknown,
    list_fields_unknown_more,
    list_price_without_currency,
    list_cell_not_read,
    // Tables of separated values.
    table_quote_not_closed,
    table_without_header,
    table_column_twice,
    table_too_many_columns,
    table_without_units,
    table_cannot_hold,
    bike_figure_unreadable,
    bike_field_without_name,
    bike_id_taken_in_row,
    // Likely slips: offered with a repair, refused for none.
    slip_unit,
    slip_swapped,
    slip_id_taken,
    slip_span_narrow,
    slip_span_wide,
    slip_unlike_others,
};

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

/// The parts of a sentence, formatted as text, by their names. Names are literals, of which nothing is copied.
///
/// There is a list of them wherever a problem is made, so it is made, moved and destroyed by calls and not in place.
class Figures {
public:
    using Figure = std::pair<std::string_view, std::string>;
    /// One to be copied.
    struct Given {
        std::string_view name;
        std::string_view text;
    };

    Figures() = default;
    Figures(std::initializer_list<Given> given);
    Figures(const Figures& other);
    Figures(Figures&& other) noexcept;
    Figures& operator=(const Figures& other);
    Figures& operator=(Figures&& other) noexcept;
    ~Figures();

    void add(std::string_view name, std::string_view text);

    auto begin() { return list_.begin(); }
    auto end() { return list_.end(); }
    auto begin() const { return list_.begin(); }
    auto end() const { return list_.end(); }

private:
    std::vector<Figure> list_;
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

/// The English sentence: its place first ("line 7, column 22: ...", "row 14, saddle highest: ..."), then cause,
/// with the figures put in.
std::string sentence(const Problem& problem);

/// What would have been right, in a few English words; empty where the sentence says it all.
std::string expected(const Problem& problem);

} // namespace saddlerule
