#include "core/lists/keeping/json_list_writer.h"

#include "core/base/json/json_text.h"
#include "core/base/text/utf8_text.h"
#include "core/lists/catalogue/catalogue_fields.h"

#include <algorithm>
#include <string_view>

namespace saddlerule {
namespace {

constexpr std::string_view between_fields = ",\n  ";
constexpr std::string_view before_bikes = "\"bikes\": [";
constexpr std::string_view line_before_entry = "\n    ";
constexpr std::string_view end_of_header = "\n}\n";
constexpr std::string_view end_of_list = "\n  ]\n}\n";

bool is_known(const UnknownField& field) {
    return std::find(header_fields.begin(), header_fields.end(), field.name) != header_fields.end();
}

} // namespace

std::string header_json(const std::vector<UnknownField>& header) {
    std::string text = "{";
    const auto write = [&](std::string_view name, std::string_view json) {
        text += text.size() > 1 ? between_fields : between_fields.substr(1);
        append_json_text(text, name);
        text += ": ";
        text += json;
    };
    for (const std::string_view name : header_fields) {
        const auto given = std::find_if(header.begin(), header.end(),
                                        [&](const UnknownField& field) { return field.name == name; });
        if (given != header.end() && given->json != "null")
            write(name, given->json);
        else if (name == "format")
            write(name, "\"saddlerule-catalogue\"");
        else if (name == "version")
            write(name, "1");
    }
    for (const UnknownField& field : header) {
        if (!is_known(field))
            write(field.name, field.json);
    }
    text += end_of_header;
    return text;
}

std::string json_list(const KeptList& list, const std::vector<std::size_t>& numbers) {
    const std::size_t size = least_json_size(list.entries, list.header);
    const std::size_t with_lines = size + list.entries.size() * line_before_entry.size();
    const std::string_view before_entry = with_lines <= largest_file ? line_before_entry : std::string_view();
    std::string text = header_json(list.header);
    text.reserve(size + numbers.size() * before_entry.size());
    text.resize(text.size() - end_of_header.size());
    text += between_fields;
    text += before_bikes;
    for (const std::size_t number : numbers) {
        if (number != numbers.front())
            text += ',';
        text += before_entry;
        text += list.entries[number - 1].source;
    }
    text += end_of_list;
    return text;
}

std::size_t least_json_size(const std::vector<ListEntry>& entries, const std::vector<UnknownField>& header) {
    std::size_t size =
        header_json(header).size() + between_fields.size() + before_bikes.size() + end_of_list.size();
    for (const ListEntry& entry : entries)
        size += 1 + entry.source.size();
    return size;
}

} // namespace saddlerule
