#include "core/lists/keeping/free_ids.h"

#include "tests/core/lists/keeping/kept_list_builders.h"

namespace saddlerule {
namespace {

using testing::kept;

constexpr std::string_view marked = R"({"format": "saddlerule-catalogue", "version": 1, "bikes": [
  {"id": "L07", "saddle_lowest": "50 cm"},
  {"id": "L08", "saddle_lowest": "50 cm"},
  {"id": "L09", "saddle_lowest": "no figure"},
  {"id": "99", "saddle_lowest": "50 cm"},
  {"id": "B", "saddle_lowest": "50 cm"}]})";

TEST_CASE("an id is counted on from its last figure to the first that is free, set aside or not") {
    const KeptList list = kept(marked);
    CHECK(FreeIds(list).after("L06") == "L10");
    CHECK(FreeIds(list).after("L10") == "L11");
    CHECK(FreeIds(list).after("98") == "100");
    CHECK(FreeIds(list).after("L099") == "L100");
    CHECK(FreeIds(list).after("7-2 9") == "7-2 10");
    CHECK(FreeIds(list).after("99999999999999999999") == "100000000000000000000");
}

TEST_CASE("an id that ends in no figure has none after it") {
    const KeptList list = kept(marked);
    CHECK(FreeIds(list).after("B").empty());
    CHECK(FreeIds(list).after("").empty());
    CHECK(FreeIds(list).after("L07 (a)").empty());
}

TEST_CASE("counting on gives nothing out twice") {
    const KeptList list = kept(marked);
    FreeIds ids(list);
    CHECK(ids.after("L09") == "L10");
    CHECK(ids.after("L09") == "L11");
}

} // namespace
} // namespace saddlerule
