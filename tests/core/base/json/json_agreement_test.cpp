// The located tree beside nlohmann_json's own, which is the outside check of this file: they agree on what is JSON and
// what it says, for texts that are well-formed and for thousands that nearly are.
#include "core/base/json/located_json.h"

#include "tests/repeatable_random.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

using namespace saddlerule;
using nlohmann::json;
using saddlerule::testing::RepeatableRandom;

namespace {

std::size_t below(RepeatableRandom& random, std::size_t limit) {
    return static_cast<std::size_t>(random.uniform() * static_cast<double>(limit));
}

/// Of a name that comes twice nlohmann_json keeps one.
bool say_the_same(const JsonValue& ours, const json& theirs) {
    switch (ours.kind) {
    case JsonValue::Kind::null:
        return theirs.is_null();
    case JsonValue::Kind::boolean:
        return theirs == ours.boolean;
    case JsonValue::Kind::number:
        return theirs.is_number() && ours.number == theirs.get<double>();
    case JsonValue::Kind::text:
        return theirs == ours.text;
    case JsonValue::Kind::array: {
        if (!theirs.is_array() || theirs.size() != ours.items.size())
            return false;
        for (std::size_t i = 0; i < ours.items.size(); ++i) {
            if (!say_the_same(ours.items[i], theirs[i]))
                return false;
        }
        return true;
    }
    case JsonValue::Kind::object: {
        if (!theirs.is_object())
            return false;
        for (std::size_t i = 0; i < ours.members.size(); ++i) {
            const JsonMember& member = ours.members[i];
            bool again = false;
            for (std::size_t j = i + 1; j < ours.members.size(); ++j)
                again = again || ours.members[j].name == member.name;
            if (!again && (!theirs.contains(member.name) || !say_the_same(member.value, theirs[member.name])))
                return false;
        }
        return theirs.size() <= ours.members.size();
    }
    }
    return false;
}

void check_agreement(const std::string& text) {
    CAPTURE(text);
    const json theirs = json::parse(text, nullptr, false);
    const auto ours = read_json(text, JsonLimits{});
    REQUIRE(ours.ok() == !theirs.is_discarded());
    if (ours.ok())
        CHECK(say_the_same(*ours, theirs));
}

constexpr std::string_view document = R"({"a": [1, -2.5, 0, 1e3, 49.50E-1, "t\u00fc\n\"", true, false, null],
  "b": {"c": {}, "d": [], "\ud83d\udeb2": "\\\/\b\f\r\t"}, "e": "", "f": [[["x"]], {"g": 0.125}]})";

/// What a mutation puts in: signs that mean something in JSON, and some that do not.
constexpr std::string_view pieces = "{}[],:\"\\ \n0159.-+eEtfnulrsax/'\x01";

} // namespace

TEST_CASE("what was changed by a character or three is JSON in both trees or in neither", "[json]") {
    RepeatableRandom random(20261125);
    for (int round = 0; round < 20'000; ++round) {
        std::string text(document);
        const int changes = 1 + static_cast<int>(below(random, 3));
        for (int change = 0; change < changes; ++change) {
            const std::size_t place = below(random, text.size());
            const char piece = pieces[below(random, pieces.size())];
            switch (below(random, 4)) {
            case 0:
                text.erase(place, 1);
                break;
            case 1:
                text.insert(place, 1, piece);
                break;
            case 2:
                text[place] = piece;
                break;
            default:
                text.resize(place);
            }
            if (text.empty())
                text = "0";
        }
        check_agreement(text);
    }
}

TEST_CASE("a figure beyond every double is none in both trees, and one near nothing is nothing", "[json]") {
    const auto figure = GENERATE(values<std::string>(
        {"1e308", "1e309", "-1e309", "1e99999999999", "1e-99999999999", "0e99999999999", "1e-400", "4e-310",
         "179769313486231570000000000000000000000000000000000000000", "0.000000000000000000000000000000123",
         "123456789012345678901234567890.123456789e-20"}));
    check_agreement(figure);
}
