#include "core/exchange/save_answer.h"

#include "core/exchange/json_writer.h"
#include "core/exchange/problem_answer.h"
#include "core/lists/catalogue/list_judgement.h"
#include "core/lists/keeping/json_list_writer.h"

#include <cstddef>
#include <vector>

namespace saddlerule {
namespace {

constexpr WireName<ListForm> form_names[] = {{"json", ListForm::json}, {"csv", ListForm::table}};
constexpr WireName<char> separator_names[] = {{",", ','}, {";", ';'}, {"tab", '\t'}};
constexpr WireName<char> decimal_names[] = {{".", '.'}, {",", ','}};
constexpr WireName<bool> only_names[] = {{"set_aside", true}};

} // namespace

SaveWishes save_wishes(RequestFields& fields) {
    SaveWishes wishes;
    const auto form = fields.optional_choice("form", form_names);
    fields.require(form.has_value(), "form", ProblemWord::json_or_csv);
    const TableForm table{.separator = fields.optional_choice("separator", separator_names).value_or(','),
                          .decimal_mark = fields.optional_choice("decimal", decimal_names).value_or('.')};
    if (form == ListForm::table)
        wishes.table = table;
    wishes.only_set_aside = fields.optional_choice("only", only_names).value_or(false);
    return wishes;
}

std::string save_answer(const KeptList& list, const SaveWishes& wishes) {
    std::vector<std::size_t> numbers;
    for (std::size_t number = 1; number <= list.entries.size(); ++number) {
        if (!wishes.only_set_aside || judged_entry(list.catalogue, number).set_aside)
            numbers.push_back(number);
    }
    const TableText saved = wishes.table ? table_list(list, numbers, *wishes.table)
                                         : TableText{.text = json_list(list, numbers), .left_out = {}};
    JsonWriter json(saved.text.size() + saved.text.size() / 4); // its quotes get a backslash each
    json.object([&] {
        field(json, "text", saved.text);
        field(json, "entries", numbers.size() - saved.left_out.size());
        json.key("left_out").array_of(saved.left_out, [&](const SetAside& entry) {
            json.object([&] {
                field(json, "number", entry.number);
                text_field(json, "id", entry.id);
                text_field(json, "name", entry.name);
                problem_fields(json, entry.problem);
            });
        });
    });
    return json.take();
}

} // namespace saddlerule
