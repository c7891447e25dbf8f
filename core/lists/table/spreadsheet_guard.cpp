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

bool is_number_below_zero(std::string_view piece) {
    return piece.starts_with('-') && trimmed(piece) == piece && trimmed(piece.substr(1)) == piece.substr(1) &&
           read_decimal(piece.substr(1));
}

/// What parts the cells of a table in some program or country.
constexpr std::string_view separators = ",;|\t\r\n";

/// Where a program that parts cells at another separator would see a cell begin.
bool begins_piece(std::string_view cell, std::size_t place) {
    return place == 0 || separators.find(cell[place - 1]) != std::string_view::npos;
}

bool needs_guard(std::string_view cell, std::size_t place) {
    if (!begins_piece(cell, place) || !may_be_run(cell.substr(place)))
        return false;
    const std::size_t end = std::min(cell.find_first_of(separators, place), cell.size());
    const std::string_view piece = cell.substr(place, end - place);
    // "120,-" is how prices are written in several countries.
    return !is_number_below_zero(piece) && (place == 0 || piece != "-");
}

} // namespace

std::string with_guard(std::string_view cell) {
    std::string guarded;
    for (std::size_t place = 0; place < cell.size(); ++place) {
        if (needs_guard(cell, place))
            guarded += guard;
        guarded += cell[place];
    }
    return guarded;
}

std::string_view without_guard(std::string_view cell, std::string& storage) {
    if (cell.find(guard) == std::string_view::npos)
        return cell;
    storage.clear();
    for (std::size_t place = 0; place < cell.size(); ++place) {
        if (cell[place] != guard || !begins_piece(cell, place) || !may_be_run(cell.substr(place)))
            storage += cell[place];
    }
    return storage;
}

} // namespace saddlerule
