// Editing a kept list: every change with its reverse, and all of them or none.
#include "core/lists/keeping/list_editor.h"

#include "tests/core/lists/keeping/kept_list_builders.h"

#include <catch2/catch.hpp>

using namespace saddlerule;
using namespace saddlerule::testing;

namespace {

constexpr std::string_view three = R"({"title":"Shed","units":"cm","bikes":[
  {"id":"A","saddle_lowest":50},
  {"id":"B","saddle_lowest":5},
  {"id":"C","saddle_lowest":60,"shelf":2}
]})";

using Texts = std::vector<std::string>;

ListEntry entry(const KeptList& list, const char* text) {
    return entry_of_text(list, text);
}

/// Applies changes as an undo has them.
void apply(ListEditor& editor, std::vector<ListChange> changes) {
    for (ListChange& change : changes) {
        switch (change.kind) {
        case ListChange::Kind::put:
            editor.put(change.number, std::move(change.entry));
            break;
        case ListChange::Kind::insert:
            editor.insert(change.number, std::move(change.entry));
            break;
        case ListChange::Kind::remove:
            editor.remove(change.number);
            break;
        case ListChange::Kind::header:
            editor.set_header(std::move(change.header_field));
            break;
        }
    }
}

} // namespace

TEST_CASE("an entry that is mended becomes a bike, and one that is spoilt is set aside", "[keeping]") {
    KeptList list = kept(three);
    REQUIRE(list.catalogue.bikes.size() == 2);
    ListEditor editor(list);
    editor.put(2, entry(list, R"({"id":"B","saddle_lowest":55})"));
    editor.put(3, entry(list, R"({"id":"C"})"));
    REQUIRE_FALSE(editor.commit());
    CHECK(ids_of(list) == Texts{"A", "B", "C"});
    CHECK(list.catalogue.bikes.size() == 2);
    CHECK(list.catalogue.bikes[1].id == "B");
    REQUIRE(list.catalogue.set_aside.size() == 1);
    CHECK(list.catalogue.set_aside[0].number == 3);
    CHECK(list.catalogue.set_aside[0].problem.where == "bikes[2]");
}

TEST_CASE("entries that nobody touched keep their place in the file and get their new number", "[keeping]") {
    KeptList list = kept(three);
    ListEditor editor(list);
    editor.insert(1, entry(list, R"({"id":"new","saddle_lowest":40})"));
    REQUIRE_FALSE(editor.commit());
    REQUIRE(list.catalogue.set_aside.size() == 1);
    const SetAside& aside = list.catalogue.set_aside[0];
    CHECK(aside.number == 3);
    CHECK(aside.problem.where == "bikes[2].saddle_lowest");
    CHECK(aside.problem.position == TextPosition{3, 29});
    REQUIRE(list.catalogue.notes.size() == 1);
    CHECK(list.catalogue.notes[0].where == "bikes[3].shelf");
    CHECK(list.catalogue.notes[0].position == TextPosition{4, 32});
}

TEST_CASE("a typed entry has no place in the file", "[keeping]") {
    KeptList list = kept(three);
    ListEditor editor(list);
    editor.put(1, entry(list, R"({"id":"A","saddle_lowest":5})"));
    REQUIRE_FALSE(editor.commit());
    REQUIRE(list.catalogue.set_aside.size() == 2);
    CHECK_FALSE(list.catalogue.set_aside[0].problem.position);
}

TEST_CASE("the undo of an edit brings the list back as it was, and its undo the edit", "[keeping]") {
    KeptList list = kept(three);
    const Texts before = sources_of(list);
    ListEditor editor(list);
    editor.remove(1);
    editor.insert(3, entry(list, R"({"id":"D","saddle_lowest":70})"));
    editor.put(1, entry(list, R"({"id":"B","saddle_lowest":55})"));
    editor.set_header({.name = "title", .json = R"("Barn")"});
    editor.set_header({.name = "currency", .json = R"("EUR")"});
    REQUIRE_FALSE(editor.commit());
    const Texts after = sources_of(list);
    CHECK(after.size() == 3);
    CHECK(list.catalogue.title == "Barn");

    ListEditor back(list);
    apply(back, std::move(editor).undo());
    REQUIRE_FALSE(back.commit());
    CHECK(sources_of(list) == before);
    CHECK(list.catalogue.title == "Shed");
    CHECK_FALSE(list.catalogue.currency);
    REQUIRE(list.catalogue.set_aside.size() == 1);
    CHECK(list.catalogue.set_aside[0].problem.position == TextPosition{3, 29});

    ListEditor again(list);
    apply(again, std::move(back).undo());
    REQUIRE_FALSE(again.commit());
    CHECK(sources_of(list) == after);
    CHECK(list.catalogue.title == "Barn");
}

TEST_CASE("an entry that comes back to its file has its place there again", "[keeping]") {
    const auto text = std::make_shared<const std::string>(three);
    KeptList list = kept(*text);
    list.texts.push_back(text);
    const ListEntry original = list.entries[1];
    const ListEntry back = entry_of_text(list, std::string(original.source), original.origin);
    CHECK(back.origin == original.origin);
    CHECK(back.own == nullptr);
    CHECK(entry_of_text(list, "{}", original.origin).origin == no_origin);
}

TEST_CASE("a bike set aside for its id comes in when the other one leaves, and goes out again", "[keeping]") {
    KeptList list =
        kept(R"({"units":"cm","bikes":[{"id":"A","saddle_lowest":50},{"id":"A","saddle_lowest":60}]})");
    REQUIRE(list.catalogue.set_aside.size() == 1);
    ListEditor editor(list);
    editor.put(1, entry(list, R"({"id":"B","saddle_lowest":50})"));
    REQUIRE_FALSE(editor.commit());
    CHECK(list.catalogue.set_aside.empty());
    ListEditor back(list);
    apply(back, std::move(editor).undo());
    REQUIRE_FALSE(back.commit());
    REQUIRE(list.catalogue.set_aside.size() == 1);
    CHECK(list.catalogue.set_aside[0].number == 2);
    CHECK(list.catalogue.set_aside[0].problem.position.has_value());
}

TEST_CASE("names that stand in for ids are given anew", "[keeping]") {
    KeptList list = kept(
        R"({"units":"cm","bikes":[{"name":"Red","saddle_lowest":50},{"name":"Red","saddle_lowest":60}]})");
    CHECK(ids_of(list) == Texts{"Red", "Red (2)"});
    ListEditor editor(list);
    editor.remove(1);
    REQUIRE_FALSE(editor.commit());
    CHECK(ids_of(list) == Texts{"Red"});
}

TEST_CASE("another unit for the list has all its bare figures read anew", "[keeping]") {
    KeptList list = kept(three);
    ListEditor editor(list);
    editor.set_header({.name = "units", .json = R"("in")"});
    REQUIRE_FALSE(editor.header_fault());
    REQUIRE_FALSE(editor.commit());
    CHECK(list.catalogue.units == LengthUnit::inch);
    REQUIRE(list.catalogue.bikes.size() == 1);
    CHECK(list.catalogue.bikes[0].saddle_lowest->in_inches() == Approx(50.0));
}

TEST_CASE("a unit that is not known is a fault of the header", "[keeping]") {
    KeptList list = kept(three);
    ListEditor editor(list);
    editor.set_header({.name = "units", .json = R"("ells")"});
    const auto fault = editor.header_fault();
    REQUIRE(fault);
    CHECK(fault->code == ProblemCode::file_value_unknown);
    CHECK(fault->where == "units");
}

TEST_CASE("notes on the header keep their place when entries change, and go with what they are about",
          "[keeping]") {
    KeptList list = kept(R"({"title":7,"hall":"big","units":"cm","bikes":[{"id":"A","saddle_lowest":50}]})");
    REQUIRE(list.catalogue.notes.size() == 2);
    ListEditor editor(list);
    editor.set_header({.name = "title", .json = R"("Shed")"});
    REQUIRE_FALSE(editor.commit());
    CHECK(list.catalogue.title == "Shed");
    REQUIRE(list.catalogue.notes.size() == 1);
    CHECK(list.catalogue.notes[0].where == "hall");
    CHECK(list.catalogue.notes[0].position == TextPosition{1, 12});
}

TEST_CASE("an edited list may be without usable bikes, or without any", "[keeping]") {
    KeptList list = kept(three);
    ListEditor editor(list);
    for (int i = 0; i < 3; ++i)
        editor.remove(1);
    REQUIRE_FALSE(editor.commit());
    CHECK(list.entries.empty());
    CHECK(list.catalogue.bikes.empty());
}

TEST_CASE("a list that could not be opened again is not made", "[keeping]") {
    KeptList list = kept(three);
    const Texts before = sources_of(list);
    SECTION("too many bikes") {
        ListEditor editor(list);
        for (std::size_t i = 0; i < most_bikes; ++i)
            editor.insert(editor.count() + 1, entry(list, "7"));
        const auto problem = editor.commit();
        REQUIRE(problem);
        CHECK(problem->code == ProblemCode::file_too_many_bikes);
    }
    SECTION("too many bytes") {
        ListEditor editor(list);
        editor.insert(1, entry_of_text(list, '"' + std::string(std::size_t{9} << 20U, 'x') + '"'));
        const auto problem = editor.commit();
        REQUIRE(problem);
        CHECK(problem->code == ProblemCode::file_too_large);
    }
    CHECK(sources_of(list) == before);
    CHECK(list.catalogue.bikes.size() == 2);
}
