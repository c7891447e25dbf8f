// From the bytes of a file to a list, whatever the file is.
#include "core/lists/catalogue/catalogue_reader.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

using namespace saddlerule;
using namespace std::string_view_literals;

namespace {

struct Refused {
    std::string_view bytes;
    ProblemCode code;
};

} // namespace

TEST_CASE("a list loads from UTF-8 with and without byte order mark and from UTF-16", "[catalogue]") {
    const std::string json = "{\"units\":\"cm\",\"bikes\":[{\"id\":\"A\",\"saddle_lowest\":49.5}]}";
    std::string little = "\xFF\xFE";
    std::string big = "\xFE\xFF";
    for (const char c : json) {
        little += c;
        little += '\0';
        big += '\0';
        big += c;
    }
    for (const std::string& bytes : {json, "\xEF\xBB\xBF" + json, "\r\n " + json + "\r\n", little, big}) {
        const auto list = read_catalogue(std::make_shared<const std::string>(bytes));
        REQUIRE(list.ok());
        REQUIRE(list->catalogue.bikes.size() == 1);
        CHECK(list->catalogue.bikes[0].id == "A");
    }
}

TEST_CASE("the form of a file is told by what is in it", "[catalogue]") {
    using enum ProblemCode;
    const auto refused = GENERATE(values<Refused>({
        {"", file_empty},
        {" \n", file_blank},
        {"PK\x03\x04", file_is_other},
        {"{\"a\":\"\xFC\"}", file_not_utf8},
        {"{\"bikes\":", json_cut_off},
        {"[]", file_not_an_object},
        {"<html><body>{}</body></html>", file_is_other},
        {"id,saddle lowest\nA,49.5\n", table_without_units},
        {"id;saddle lowest\nA;49,5\n", table_without_units},
        {"id\tsaddle lowest\nA\t49.5\n", table_without_units},
        {"# units: cm\nid\nA\n", table_without_header},
        {"bikes", json_not_json},
        {"'bikes'", json_quotes_single},
    }));
    CAPTURE(refused.bytes);
    const auto list = read_catalogue(std::make_shared<const std::string>(refused.bytes));
    REQUIRE_FALSE(list.ok());
    CHECK(code_name(list.problem().code) == code_name(refused.code));
}
