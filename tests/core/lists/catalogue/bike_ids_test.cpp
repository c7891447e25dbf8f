// Every bike has an id of its own.
#include "core/lists/catalogue/bike_ids.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>
#include <vector>

using namespace saddlerule;

namespace {

Bike bike(std::string_view id, std::string_view name) {
    Bike result;
    result.id = std::string(id);
    result.name = std::string(name);
    return result;
}

std::vector<std::string> ids_given(std::vector<Bike> bikes) {
    give_missing_ids(bikes);
    std::vector<std::string> ids;
    for (const Bike& one : bikes)
        ids.push_back(one.id);
    return ids;
}

using Ids = std::vector<std::string>;

} // namespace

TEST_CASE("a name stands in for a missing id, numbered where it is taken", "[catalogue]") {
    CHECK(ids_given({bike("A", "Green"), bike("", "Green"), bike("", "Green"), bike("", "Red")}) ==
          Ids{"A", "Green", "Green (2)", "Red"});
}

TEST_CASE("ids that were given stay, even where they come later", "[catalogue]") {
    CHECK(ids_given({bike("", "Green"), bike("", "Green"), bike("Green", ""), bike("Green (2)", "")}) ==
          Ids{"Green (3)", "Green (4)", "Green", "Green (2)"});
}

TEST_CASE("a bike remembers that its id is its name", "[catalogue]") {
    std::vector<Bike> bikes{bike("A", "Green"), bike("", "Green")};
    give_missing_ids(bikes);
    CHECK_FALSE(bikes[0].id_from_name);
    CHECK(bikes[1].id_from_name);
}
