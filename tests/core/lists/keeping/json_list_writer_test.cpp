// Lists written as JSON: what nobody touched as it was, what they say of themselves in one order.
#include "core/lists/keeping/json_list_writer.h"

#include "tests/core/lists/keeping/kept_list_builders.h"

#include <catch2/catch.hpp>

using namespace saddlerule;
using namespace saddlerule::testing;

TEST_CASE("a list is written with its header in order and an entry a line", "[keeping]") {
    const KeptList list = kept(R"({"hall":{"size":1.50},"units":"cm","title":null,"currency":"EUR",
        "bikes":[{"id":"A",  "saddle_lowest":5.0e1},7,{"id":"B","saddle_lowest":60}]})");
    CHECK(json_list(list, {1, 2, 3}) == R"({
  "format": "saddlerule-catalogue",
  "version": 1,
  "units": "cm",
  "currency": "EUR",
  "hall": {"size":1.50},
  "bikes": [
    {"id":"A",  "saddle_lowest":5.0e1},
    7,
    {"id":"B","saddle_lowest":60}
  ]
}
)");
}

TEST_CASE("only the entries asked for are written", "[keeping]") {
    const KeptList list = kept(R"({"units":"cm","bikes":[{"id":"A","saddle_lowest":50},7]})");
    const std::string text = json_list(list, {2});
    CHECK(text.find("\"A\"") == std::string::npos);
    CHECK(text.find("\n    7\n") != std::string::npos);
    CHECK(json_list(list, {}).find(R"("bikes": [)") != std::string::npos);
}

TEST_CASE("a list that just fits is written without line breaks rather than too large to open", "[keeping]") {
    constexpr std::size_t limit = std::size_t{8} << 20U;
    std::string text = R"({"units":"cm","bikes":[{"id":"A","saddle_lowest":50})";
    const std::string filler = ",\"" + std::string(1900, 'x') + '"';
    while (text.size() + filler.size() + 400 < limit)
        text += filler;
    text += ",\"" + std::string(limit - text.size() - 300, 'y') + "\"]}";
    KeptList list = kept(text);
    std::vector<std::size_t> all;
    for (std::size_t number = 1; number <= list.entries.size(); ++number)
        all.push_back(number);
    const std::string saved = json_list(list, all);
    CHECK(saved.size() <= limit);
    CHECK(sources_of(kept(saved)) == sources_of(list));
}
