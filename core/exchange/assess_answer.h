// The answer to `assess`: an assessment as JSON.
#pragma once

#include "core/exchange/json_writer.h"
#include "core/exchange/rows_request.h"
#include "core/fit/choice/assessment.h"
#include "core/lists/catalogue/catalogue.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace saddlerule {

/// How much is said of each bike.
enum class Detail {
    full,
    brief, ///< without raise list and checks, which are counted
    spans, ///< only how low and how high the saddle goes and when that fits, for a picture of the whole list
};

/// What surrounds an assessment in its answer.
struct AssessAnswerParts {
    Detail detail = Detail::full;
    std::optional<Rows> rows; ///< only these places are written, and bikes left out are counted, not listed
    std::optional<std::vector<std::string>>
        only;                    ///< ids, sorted: the other bikes are ranked, but not written
    std::span<const Bike> taped; ///< handed over with the request
    std::span<const std::vector<Problem>> taped_notes; ///< of each of them
    std::span<const SetAside> list_set_aside;          ///< as `load` has them
    std::span<const SetAside> taped_set_aside;
    const std::vector<Problem>& notes; ///< questions about the rider's figures
};

std::string assess_answer(const Assessment& assessment, const Rider& rider, const AssessAnswerParts& parts);

/// `low`, `target` and `high`.
void write(JsonWriter& json, const SaddleWindow& window);

/// `fits_now` and so on.
std::string_view name_of(Verdict verdict);

} // namespace saddlerule
