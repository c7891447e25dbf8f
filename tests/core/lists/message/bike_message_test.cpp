// Messages as people write them, in five languages; figures and words are invented.
#include "core/lists/message/bike_message.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>

using namespace saddlerule;

namespace {

struct Said {
    std::string_view text;
    std::string_view lowest;
    std::string_view highest;
    std::string_view wheel = "";
    std::string_view price = "";
};

void check_read(const Said& said) {
    INFO(said.text);
    const auto message = read_bike_message(said.text, LengthUnit::centimetre);
    REQUIRE(message.ok());
    CHECK(message->saddle_lowest == said.lowest);
    CHECK(message->saddle_highest == said.highest);
    CHECK(message->wheel == said.wheel);
    CHECK(message->price == said.price);
}

std::string count_of(std::string_view text) {
    const auto message = read_bike_message(text, LengthUnit::centimetre);
    REQUIRE_FALSE(message.ok());
    CHECK(message.problem().code == ProblemCode::message_heights_unclear);
    return in_english(message.problem().figures.begin()->figure);
}

} // namespace

TEST_CASE("a seller's answer gives the two heights in any order and language") {
    check_read({"Lowest 48 cm, highest 62 cm.", "48 cm", "62 cm"});
    check_read({"Highest: 62cm. Lowest: 48cm.", "48 cm", "62 cm"});
    check_read({"Hallo, unten 48,5 cm und oben 62 cm, Gruß", "48,5 cm", "62 cm"});
    check_read({"en bas 485 mm, en haut 620 mm", "485 mm", "620 mm"});
    check_read({"la más baja 48 y la más alta 62", "48 cm", "62 cm"});
    check_read({"Sill\u00EDn de 48 a 62 cm", "48 cm", "62 cm"});
    check_read({"Zadel van 48 tot 62 cm", "48 cm", "62 cm"});
    check_read({"zwischen 48 und 62 cm, 4 Jahre alt", "48 cm", "62 cm"});
    check_read({"19 1/2 in to 24 in", "19 1/2 in", "24 in"});
    check_read({"19½\" - 24\"", "19 1/2 in", "24 in"});
}

TEST_CASE("both ends of a span have the unit behind it") {
    check_read({"saddle 52-66 cm", "52 cm", "66 cm"});
    check_read({"Sattel 52\u201366\u00A0cm", "52 cm", "66 cm"});
    check_read({"19 - 25 inches", "19 in", "25 in"});
}

TEST_CASE("one height alone is the lowest unless a word before it says high") {
    check_read({"it starts at 48 cm", "48 cm", ""});
    check_read({"highest 62 cm", "", "62 cm"});
    check_read({"oben 62 cm", "", "62 cm"});
    check_read({"Saddle up to 62 cm; lowest not measured", "", "62 cm"});
    check_read({"Selle jusqu\u2019\u00E0 62 cm ; position basse non mesur\u00E9e", "", "62 cm"});
    check_read({"vom Boden bis zur Mitte 48 cm", "48 cm", ""});
}

TEST_CASE("wheel and price are told from heights by the words beside them") {
    check_read({"16 inch wheels, saddle 19 to 25 inches", "19 in", "25 in", "16"});
    check_read({"Saddle 48 to 62 cm. Tyre size 47-305. 80 euros.", "48 cm", "62 cm", "47-305", "80"});
}

TEST_CASE("the text of a code is read with its id, wheel and price") {
    const auto message =
        read_bike_message("#L07: Sattel 52\u201366 cm, Reifen 47-305, 80 \u20AC", LengthUnit::inch);
    REQUIRE(message.ok());
    CHECK(message->id == "L07");
    CHECK(message->kind.empty());
    CHECK(message->wheel == "47-305");
    CHECK(message->saddle_lowest == "52 cm");
    CHECK(message->saddle_highest == "66 cm");
    CHECK(message->price == "80");
    check_read({"\u00A380, 16-Zoll-R\u00E4der, 50 cm / 62 cm", "50 cm", "62 cm", "16", "80"});
    CHECK(read_bike_message("#3: Laufrad, Sattel 30-38 cm", LengthUnit::centimetre)->kind == "balance");
}

TEST_CASE(
    "figures that no saddle is at are passed over, and what is left unclear is refused with their number") {
    check_read({"for 4 years, 2 brakes, 48 and 62", "48 cm", "62 cm"});
    CHECK(count_of("") == "0");
    CHECK(count_of("No idea, sorry!") == "0");
    CHECK(count_of("48 cm, 55 cm and 62 cm") == "3");
    CHECK(count_of("9999999999999999999999999999999999 cm") == "0");
    CHECK(count_of("#: ") == "0");
    CHECK(count_of("1/0 cm") == "0");
}
