#include "core/lists/table/spreadsheet_guard.h"

#include "core/base/typed_text/decimal_text.h"

#include <algorithm>
#include <array>

namespace saddlerule {
namespace {

constexpr char guard = '\'';

constexpr std::string_view starts_formula = "=+-@\t\r\n";
constexpr std::array<std::string_view, 4> starts_formula_in_full_width{"\xEF\xBC\x9D", "\xEF\xBC\x8B",
                                                                       "\xEF\xBC\x8D", "\xEF\xBC\xA0"};

bool may_be_run(std::string_view cell) {
    const std::string_view rest = cell.substr(std::min(cell.find_first_not_of(guard), cell.size()));
    if (rest.empty())
        return false;
    return starts_formula.find(rest.front()) != std::string_view::npos ||
           std::any_of(starts_formula_in_full_width.begin(), starts_formula_in_full_width.end(),
                       [&](std::string_view character) { return rest.starts_with(character); });
}

bool is_number_below_zero(std::string_view cell) {
    return cell.starts_with('-') && trimmed(cell) == cell && trimmed(cell.substr(1)) == cell.substr(1) &&
           read_decimal(cell.substr(1));
}

} // namespace

std::string with_guard(std::string_view cell) {
    std::string guarded;
    if (may_be_run(cell) && !is_number_below_zero(cell))
        guarded = guard;
    return guarded += cell;
}

std::string_view without_guard(std::string_view cell) {
    return cell.starts_with(guard) && may_be_run(cell) ? cell.substr(1) : cell;
}

} // namespace saddlerule
