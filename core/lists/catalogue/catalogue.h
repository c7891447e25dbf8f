// Catalogue: a list of measured bikes as it was read, with what was set aside and what was noticed.
#pragma once

#include "core/base/outcomes/problem.h"
#include "core/base/quantities/calendar_date.h"
#include "core/base/quantities/money.h"
#include "core/base/typed_text/length_text.h"
#include "core/fit/bike/bike.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace saddlerule {

/// An entry that could not be used. It is kept whole, so that it can be shown, mended and saved.
struct SetAside {
    std::size_t number = 0; ///< which bike in the file, from 1
    std::string id;         ///< as far as they could be read; may be empty
    std::string name;
    Problem problem;
    std::string source; ///< the entry's own JSON text
};

struct Catalogue {
    std::string title;
    std::optional<CalendarDate> measured_on;
    /// What bare numbers count in. Centimetres where the file names none, and then it has no bare numbers.
    LengthUnit units = LengthUnit::centimetre;
    std::optional<Currency> currency;

    std::vector<Bike> bikes;
    std::vector<SetAside> set_aside; ///< by number
    std::vector<Problem> notes;      ///< nothing was refused for these

    /// File-wide fields that this version does not know, or could not read.
    std::vector<UnknownField> unknown_fields;
};

constexpr std::size_t most_bikes = 20'000;

} // namespace saddlerule
