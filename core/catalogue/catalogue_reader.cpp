#include "core/catalogue/catalogue_reader.h"

#include "core/catalogue/json_catalogue_reader.h"
#include "core/text/utf8_text.h"

#include <string>

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
    const std::string_view line = text.substr(begin, text.find_first_of("\r\n", begin) - begin);
    const bool separated = line.find_first_of(",;\t") != std::string_view::npos;
    return separated || first == '#' ? Form::table : Form::json;
}

Problem refusal(ProblemCode code, std::vector<std::pair<std::string, std::string>> figures = {}) {
    return {.code = code, .figures = std::move(figures), .where = {}, .position = {}};
}

} // namespace

Result<Catalogue> read_catalogue(std::string_view bytes, std::vector<SetAside>* refused) {
    std::string converted;
    const auto text = utf8_text(bytes, converted);
    if (!text)
        return text.problem();
    switch (form_of(*text)) {
    case Form::table:
        return refusal(ProblemCode::file_is_table);
    case Form::markup:
        return refusal(ProblemCode::file_is_other, {{"found", "a web page or other markup"}});
    case Form::json:
        break;
    }
    return read_json_catalogue(*text, refused);
}

} // namespace saddlerule
