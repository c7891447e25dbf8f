// Shared by the tests: builders and checkers in the words of the domain, so that a test body is one sentence.
#pragma once

#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/length.h"
#include "core/fit/verdict/fit_verdict.h"
#include "core/fit/verdict/saddle_window.h"

#include <catch2/catch.hpp>

#include <string_view>

namespace saddlerule::testing {

/// Lengths that differ by less than this are the same to anybody with a tape.
constexpr double margin_mm = 1e-6;

inline CalendarDate date(std::string_view iso) {
    return *CalendarDate::from_iso(iso);
}

inline void check_length(Length actual, Length wanted) {
    CHECK(actual.in_millimetres() == Approx(wanted.in_millimetres()).margin(margin_mm));
}

/// One reading with shoes, as exact as a home reading is.
inline InseamEstimate one_reading(Length inseam) {
    return {inseam, Length::millimetres(8.0)};
}

inline Fit fit_for(Length inseam, Stage stage, const SaddleSpan& span) {
    return fit_of(span, one_reading(inseam), window_offsets(stage, Confidence::usual));
}

} // namespace saddlerule::testing
