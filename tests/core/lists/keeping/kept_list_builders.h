// Shared by the tests of kept lists: lists from short texts, and what is in them.
#pragma once

#include "core/lists/catalogue/json_catalogue_reader.h"
#include "core/lists/catalogue/list_judgement.h"
#include "tests/support/problem_in_english.h"

#include <catch2/catch.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace saddlerule::testing {

/// `text` must outlive the list.
inline KeptList kept(std::string_view text) {
    auto list = read_json_catalogue(text);
    if (!list)
        FAIL(sentence(list.problem()));
    return std::move(list).value();
}

/// Of its entries, as they are written.
inline std::vector<std::string> sources_of(const KeptList& list) {
    std::vector<std::string> sources;
    for (const ListEntry& entry : list.entries)
        sources.emplace_back(entry.source);
    return sources;
}

inline std::vector<std::string> ids_of(const KeptList& list) {
    std::vector<std::string> ids;
    for (std::size_t number = 1; number <= list.entries.size(); ++number)
        ids.push_back(judged_entry(list.catalogue, number).id());
    return ids;
}

} // namespace saddlerule::testing
