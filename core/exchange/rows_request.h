// Rows request: which window of a long answer is wanted.
#pragma once

#include "core/exchange/request_fields.h"

#include <cstddef>
#include <optional>

namespace saddlerule {

/// Some of the places, counted from 0: a page shows a window of a long rack.
struct Rows {
    std::size_t from = 0;
    std::size_t count = 0;
};

/// `rows`: `{ "from": 0, "count": 60 }`.
std::optional<Rows> optional_rows(RequestFields& fields);

} // namespace saddlerule
