// Headers as people write them.
#include "core/lists/catalogue/table_columns.h"

#include <catch2/catch.hpp>

#include <string>

using namespace saddlerule;

TEST_CASE("the names of columns are free in case, blanks, hyphens and underscores", "[catalogue]") {
    for (const std::string heading : {"saddle_lowest", "Saddle lowest", "SADDLE LOWEST", " saddle-lowest ",
                                      "SaddleLowest", "Saddle\nlowest"}) {
        CAPTURE(heading);
        const TableColumn column = column_of(heading);
        REQUIRE(column.field != nullptr);
        CHECK(column.name == "saddle_lowest");
        CHECK_FALSE(column.unit);
    }
    CHECK(column_of("Mass").name == "mass_kg");
    CHECK(column_of("mass_kg").name == "mass_kg");
    CHECK(column_of("Seat tube angle").name == "seat_tube_angle_deg");
}

TEST_CASE("a unit comes after the name, in square or round brackets", "[catalogue]") {
    CHECK(column_of("Saddle lowest [in]").unit == LengthUnit::inch);
    CHECK(column_of("saddle_lowest(mm)").unit == LengthUnit::millimetre);
    CHECK(column_of("Crank [ cm ]").unit == LengthUnit::centimetre);
    CHECK(column_of("Mass [kg]").name == "mass_kg");
    CHECK_FALSE(column_of("Mass [kg]").in_pounds);
    CHECK(column_of("Mass (lb)").in_pounds);
    CHECK(column_of("Price [GBP]").currency->code() == "GBP");
    CHECK(column_of("Price (\xE2\x82\xAC)").currency->code() == "EUR");
    CHECK(column_of("Seat tube angle [\xC2\xB0]").name == "seat_tube_angle_deg");
    CHECK(column_of("Gears (number)").name == "gears");
    SECTION("where it is not known, the figures would mean something else: the column is one of its own") {
        for (const std::string heading :
             {"Saddle lowest [ell]", "mass_kg [stone]", "mass_kg [lb]", "Price (new)"}) {
            CAPTURE(heading);
            CHECK(column_of(heading).field == nullptr);
            CHECK(column_of(heading).name == heading);
            CHECK(field_meant_by(heading) != nullptr);
        }
    }
}

TEST_CASE("a heading in double quotes is the exact name", "[catalogue]") {
    CHECK(column_of(R"("Saddle Lowest")").name == "Saddle Lowest");
    CHECK(column_of(R"("Saddle Lowest")").field == nullptr);
    CHECK(column_of(R"("saddle_lowest")").field != nullptr);
}

TEST_CASE("every name of a field reads back from the heading that is written for it", "[catalogue]") {
    for (const std::string name : {"id", "saddle_lowest", "mass_kg", "helmet", "Saddle Lowest", "Crank [in]",
                                   "", " a ", "#", "# title: x", "a,b;c\td", "\"a\"", "\"", "a\nb", "=1",
                                   "mass", "'", "\xD7\x90\xD7\x95\xD7\xA4\xD7\xA0\xD7\x99\xD7\x99\xD7\x9D"}) {
        CAPTURE(name);
        const TableColumn column = column_of(heading_of(name));
        CHECK(column.name == name);
        CHECK(column.field == field_named(name));
    }
}
