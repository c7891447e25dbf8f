#include "core/outcomes/problem_texts.h"

#include <iterator>

namespace saddlerule {
namespace {

constexpr ProblemText texts[] = {
    {ProblemCode::internal, "internal", "the engine made a mistake of its own ({what})", ""},

    {ProblemCode::figure_empty, "figure_empty", "no figure is given", "a figure such as {example}"},
    {ProblemCode::figure_not_a_number, "figure_not_a_number", "\"{text}\" is not a figure",
     "a figure such as {example}"},
    {ProblemCode::figure_unit_unknown, "figure_unit_unknown", "\"{unit}\" is not a unit known here",
     "{units}"},
    {ProblemCode::figure_negative, "figure_negative", "\"{text}\" is below zero", "a figure above zero"},
    {ProblemCode::figure_too_large, "figure_too_large", "\"{text}\" is far too large",
     "a figure such as {example}"},
    {ProblemCode::figure_fraction_malformed, "figure_fraction_malformed",
     "the fraction in \"{text}\" cannot be read", "a fraction such as 1/2, after a whole number"},

    {ProblemCode::request_unreadable, "request_unreadable", "the request is not JSON: {cause}",
     "one JSON object, or an array of them"},
    {ProblemCode::request_field_unknown, "request_field_unknown", "the field \"{field}\" is not known here",
     "{known}"},
    {ProblemCode::request_field_missing, "request_field_missing", "the field \"{field}\" is missing",
     "{kind}"},
    {ProblemCode::request_field_wrong_type, "request_field_wrong_type", "this is {found}", "{kind}"},
    {ProblemCode::request_value_unknown, "request_value_unknown", "\"{value}\" is not known here",
     "one of {known}"},
    {ProblemCode::request_value_out_of_range, "request_value_out_of_range", "{value} is out of range",
     "{low} to {high}"},
    {ProblemCode::request_date_malformed, "request_date_malformed", "\"{value}\" is not a date", "{form}"},
    {ProblemCode::request_not_supported, "request_not_supported",
     "\"{value}\" is not answered by this version", "one of {known}"},
    {ProblemCode::request_no_list_loaded, "request_no_list_loaded", "no list of bikes is loaded",
     "a load request first"},
    {ProblemCode::rider_without_measure, "rider_without_measure",
     "there is nothing to judge the rider's size by", "a reading, the stature or the date of birth"},

    {ProblemCode::reading_outside_plausible, "reading_outside_plausible",
     "an inseam of {inseam} is hard to believe; {slip}", "measure again"},
    {ProblemCode::readings_spread, "readings_spread", "the readings of {on} lie {spread} apart",
     "one more reading"},
};

/// The table is indexed by code, so its rows must stand in the order of the enumeration.
constexpr bool rows_in_order() {
    for (std::size_t i = 0; i < std::size(texts); ++i) {
        if (static_cast<std::size_t>(texts[i].code) != i)
            return false;
    }
    return true;
}
static_assert(rows_in_order());

} // namespace

const ProblemText& text_of(ProblemCode code) {
    return texts[static_cast<std::size_t>(code)];
}

std::size_t problem_code_count() {
    return std::size(texts);
}

} // namespace saddlerule
