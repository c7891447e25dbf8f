// What must hold for every list that can be read, whatever file it came from: saved and opened again it is the same.
#pragma once

#include "core/lists/catalogue/catalogue_reader.h"
#include "core/lists/keeping/json_list_writer.h"
#include "core/lists/keeping/table_list_writer.h"
#include "tests/support/problem_in_english.h"

#include <cstdlib>
#include <memory>
#include <numeric>
#include <string>
#include <utility>
#include <vector>

namespace saddlerule::testing {

inline void demand(bool holds) {
    if (!holds)
        std::abort(); // which the fuzzer reports with the input
}

inline std::vector<std::size_t> all_numbers(const KeptList& list) {
    std::vector<std::size_t> numbers(list.entries.size());
    std::iota(numbers.begin(), numbers.end(), std::size_t{1});
    return numbers;
}

/// Opened to be mended: a table that names no unit is asked about otherwise, and what was set aside alone is no list to choose from.
inline KeptList read_again(std::string text) {
    auto list =
        read_catalogue(std::make_shared<const std::string>(std::move(text)), nullptr, {.to_mend = true});
    demand(list.ok());
    return std::move(list).value();
}

/// Every sentence of a list that was read can be said.
inline void say_all(const Catalogue& list) {
    for (const SetAside& entry : list.set_aside)
        demand(!sentence(entry.problem).empty());
    for (const Problem& note : list.notes)
        demand(!sentence(note).empty());
}

/// JSON leaves out nothing and changes no entry.
inline void check_as_json(const KeptList& list) {
    std::string text = json_list(list, all_numbers(list));
    if (text.size() > largest_file)
        return;
    const KeptList back = read_again(std::move(text));
    demand(back.entries.size() == list.entries.size());
    for (std::size_t i = 0; i < list.entries.size(); ++i)
        demand(back.entries[i].source == list.entries[i].source);
    demand(back.catalogue.bikes.size() == list.catalogue.bikes.size());
}

/// A table leaves out what no row can hold; what it holds reads back, and is then written the same.
inline void check_as_table(const KeptList& list, const TableForm& form) {
    const TableText table = table_list(list, all_numbers(list), form);
    const std::size_t held = list.entries.size() - table.left_out.size();
    if (held == 0 || table.text.size() > largest_file)
        return;
    const KeptList back = read_again(table.text);
    demand(back.entries.size() == held);
    demand(back.header.size() + 2 >= list.header.size()); // format and version are the JSON form's
    say_all(back.catalogue);
    demand(table_list(back, all_numbers(back), form).text == table.text);
}

inline void check_list(const KeptList& list) {
    say_all(list.catalogue);
    check_as_json(list);
    check_as_table(list, {});
    check_as_table(list, {.separator = ';', .decimal_mark = ','});
}

} // namespace saddlerule::testing
