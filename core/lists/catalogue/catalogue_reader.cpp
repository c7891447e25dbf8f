#include "core/lists/catalogue/catalogue_reader.h"

#include "core/base/text/utf8_text.h"
#include "core/lists/catalogue/json_catalogue_reader.h"
#include "core/lists/catalogue/table_catalogue_reader.h"

#include <string>
#include <utility>

namespace saddlerule {
namespace {

enum class Form { json, table, markup };

/// Told by the first line that says something. A table may begin with lines of `# key: value`.
Form form_of(std::string_view text) {
    const std::size_t begin = text.find_first_not_of(" \t\r\n");
    const char first = text[begin];
    if (first == '{' || first == '[')
        return Form::json;
    if (first == '<')
        return Form::markup;
    if (first == '#' || text.substr(begin).starts_with("\"#"))
        return Form::table;
    // There may be a title above a table's headings.
    constexpr int upper_lines = 10;
    std::size_t end = begin;
    for (int line = 0; line < upper_lines && end != std::string_view::npos; ++line)
        end = text.find('\n', end + 1);
    const bool separated = text.substr(begin, end - begin).find_first_of(",;\t") != std::string_view::npos;
    return separated ? Form::table : Form::json;
}

Problem refusal(ProblemCode code, Figures figures = {}) {
    return {.code = code, .figures = std::move(figures), .where = {}, .position = {}};
}

} // namespace

Result<KeptList> read_catalogue(std::shared_ptr<const std::string> bytes, std::vector<SetAside>* refused,
                                const ReadingOptions& options) {
    auto converted = std::make_shared<std::string>();
    const auto text = utf8_text(*bytes, *converted, options.encoding);
    if (!text)
        return text.problem();
    switch (form_of(*text)) {
    case Form::table:
        return read_table_catalogue(*text, refused, options);
    case Form::markup:
        return refusal(ProblemCode::file_is_other, {{"found", ProblemWord::markup}});
    case Form::json:
        break;
    }
    auto list = read_json_catalogue(*text, refused, options);
    if (list)
        list.value().texts.push_back(converted->empty() ? std::move(bytes) : std::move(converted));
    return list;
}

} // namespace saddlerule
