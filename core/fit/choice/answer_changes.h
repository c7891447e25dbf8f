// What would change the answer: the smallest change of reading, stage or budget that puts another bike first.
#pragma once

#include "core/base/quantities/length.h"
#include "core/base/quantities/money.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace saddlerule {

/// The question, changed in one way. The untouched question is `Supposition{}`.
struct Supposition {
    Length reading_shift; ///< added to the inseam
    bool next_stage = false;
    std::optional<Amount> budget; ///< instead of the present one; absent: as it is
};

/// Answers a changed question: the index of the bike that comes first, or nothing where none does.
using FirstBike = std::function<std::optional<std::size_t>(const Supposition&)>;

/// How far to look, and what for.
struct ChangeSearch {
    Length furthest_reading_shift = Length::millimetres(40.0); ///< five times the error of one home reading
    Length reading_step = Length::millimetres(1.0);            ///< as fine as a tape is read
    Length reading_stride = Length::millimetres(5.0);          ///< as coarse as the first look
    bool has_next_stage = true;
    std::optional<Amount> budget;      ///< the present one
    std::span<const Amount> prices;    ///< of all bikes that fit, in any order
    std::optional<Amount> first_price; ///< of the bike that comes first now, where known
};

enum class ChangeKind { longer_reading, shorter_reading, next_stage, higher_budget, lower_budget };

/// Its stable name: `longer_reading`.
std::string_view name_of(ChangeKind kind);

/// One change that is enough, and the bike that then comes first.
struct AnswerChange {
    ChangeKind kind;
    Supposition supposition;
    std::size_t first;
};

/// For each kind the smallest change that is enough; kinds without one are absent. Readings are looked at
/// every `reading_stride` and, where the answer differs, narrowed down to one `reading_step`: an answer that
/// changes and changes back within one stride is missed. A higher budget is exact: a bike that comes within
/// reach and comes first is never put back behind the present first by a still higher budget. A lower budget
/// is the one just below the price of the bike that comes first.
std::vector<AnswerChange> smallest_changes(const FirstBike& first_bike, const ChangeSearch& search);

} // namespace saddlerule
