// What would change the answer: for one question about one list, the smallest change that puts another bike
// first.
#pragma once

#include "core/fit/choice/answer_changes.h"
#include "core/fit/choice/rider_judge.h"

#include <optional>
#include <span>
#include <vector>

namespace saddlerule {

struct ChangedAnswer {
    ChangeKind kind;
    Supposition supposition;
    const Bike* first = nullptr; ///< the bike that then comes first
};

struct AnswerChanges {
    const Bike* first =
        nullptr; ///< the bike that comes first now; null where none that no check stops fits or comes close
    std::vector<ChangedAnswer> changes;
};

/// The next stage on the way to riding; nothing after it.
std::optional<Stage> stage_after(Stage stage);

/// The question is answered anew for every change that is looked at: a reading moved by up to 40 mm either
/// way, the next stage, a budget up or down. A rider without readings has none to move.
AnswerChanges what_would_change(const FitQuestion& question, std::span<const Bike> list,
                                std::span<const Bike> taped);

} // namespace saddlerule
