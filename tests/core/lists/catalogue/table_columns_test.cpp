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

TEST_CASE("people's own words are read in five languages, where they can mean nothing else", "[catalogue]") {
    const auto field = [](std::string_view heading) { return column_of(heading).name; };
    for (const std::string_view lowest :
         {"Sattel min", "saddle low", "Seat min.", "Sattelh\u00F6he min", "hauteur selle min",
          "Sill\u00EDn m\u00EDn", "altura sill\u00EDn min", "zadel laagst", "zadelhoogte min",
          "Sattel unten"})
        CHECK(field(lowest) == "saddle_lowest");
    for (const std::string_view highest :
         {"Sattel max", "saddle high", "Seat max.", "h\u00F6chste Sattelh\u00F6he", "hauteur selle max",
          "selle haute", "sill\u00EDn m\u00E1x", "zadel hoogst", "Sattel oben"})
        CHECK(field(highest) == "saddle_highest");
    for (const std::string_view neither :
         {"Saddle", "Sattelh\u00F6he", "Hauteur de selle", "altura del sill\u00EDn", "zadelhoogte",
          "seat tube min", "=Sattel min", "min", "Bike owner", "Size"})
        CHECK(field(neither) == neither);
    CHECK(field("Gewicht") == "mass_kg");
    CHECK(column_of("Sattel min cm").unit == LengthUnit::centimetre);
    CHECK(column_of("saddle high in mm").unit == LengthUnit::millimetre);
    CHECK(column_of("Preis in Euro").currency == Currency::from_code("EUR"));
    CHECK(column_of("Gewicht lb").in_pounds);
}

TEST_CASE("a field by its name goes before one in people's own words, and so does the first of two",
          "[catalogue]") {
    std::vector<TableColumn> columns{column_of("Nr"), column_of("id"), column_of("Rad"), column_of("Modell")};
    settle_own_words(columns);
    CHECK(columns[0].field == nullptr);
    CHECK(columns[0].name == "Nr");
    CHECK(columns[1].name == "id");
    CHECK(columns[2].name == "name");
    CHECK(columns[3].field == nullptr);
}

TEST_CASE("a heading in double quotes is the exact name", "[catalogue]") {
    CHECK(column_of(R"("Saddle Lowest")").name == "Saddle Lowest");
    CHECK(column_of(R"("Saddle Lowest")").field == nullptr);
    CHECK(column_of(R"("saddle_lowest")").field != nullptr);
}

TEST_CASE("what only sounds like a field is written so that it stays what it is", "[catalogue]") {
    for (const std::string_view name : {"Gewicht", "Sattel min", "Nr"}) {
        const TableColumn column = column_of(heading_of(name));
        CHECK(column.name == name);
        CHECK(column.field == nullptr);
    }
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
