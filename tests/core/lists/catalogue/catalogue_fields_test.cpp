// The table of fields.
#include "core/lists/catalogue/catalogue_fields.h"

#include <catch2/catch.hpp>

#include <set>
#include <string_view>

using namespace saddlerule;

namespace {

struct Slip {
    std::string_view typed;
    std::string_view meant; ///< empty for none
};

} // namespace

TEST_CASE("every field has a name and a place of its own, and limits in order", "[catalogue]") {
    std::set<std::string_view> names;
    for (const CatalogueField& field : catalogue_fields()) {
        CAPTURE(field.name);
        CHECK(names.insert(field.name).second);
        CHECK(field.limits.low <= field.limits.high);
        CHECK(field_named(field.name) == &field);
        for (const CatalogueField& other : catalogue_fields()) {
            if (&other != &field)
                CHECK(field.target != other.target);
        }
    }
}

TEST_CASE("a name that is a slip away is told from one that means something else", "[catalogue]") {
    const auto slip = GENERATE(values<Slip>({
        {"Saddle Lowest", "saddle_lowest"},
        {"saddle-highest", "saddle_highest"},
        {"saddle_lowset", "saddle_lowest"},
        {"sadle_lowest", "saddle_lowest"},
        {"saddlelow", ""},
        {"Price", "price"},
        {"prise", "price"},
        {"colors", "colours"},
        {"colour", "colours"},
        {"ID", "id"},
        {"if", ""},
        {"frame", ""},
        {"geers", "gears"},
        {"", ""},
    }));
    CAPTURE(slip.typed);
    const CatalogueField* meant = field_meant_by(slip.typed);
    CHECK((meant ? meant->name : std::string_view()) == slip.meant);
    CHECK(field_meant_by(std::string(100'000, 'x')) == nullptr);
}
