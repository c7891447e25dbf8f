#include "core/exchange/rows_request.h"

#include <utility>

namespace saddlerule {
namespace {

const auto possible_place = *ClosedRange<double>::between(0.0, 1e6);

} // namespace

std::optional<Rows> optional_rows(RequestFields& fields) {
    const JsonValue* value = fields.optional("rows");
    if (value == nullptr)
        return std::nullopt;
    RequestFields row_fields(*value, fields.path_of("rows"));
    const auto from = row_fields.optional_number("from", possible_place);
    const auto count = row_fields.optional_number("count", possible_place);
    row_fields.require(count.has_value(), "count", ProblemWord::number_of_rows);
    if (auto problem = row_fields.finish())
        fields.report(*std::move(problem));
    return Rows{static_cast<std::size_t>(from.value_or(0.0)), static_cast<std::size_t>(count.value_or(0.0))};
}

} // namespace saddlerule
