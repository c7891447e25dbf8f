#include "core/exchange/catalogue_answer.h"

#include "core/exchange/bike_json.h"

namespace saddlerule {
namespace {

std::string_view unit_name(LengthUnit unit) {
    switch (unit) {
    case LengthUnit::millimetre:
        return "mm";
    case LengthUnit::centimetre:
        return "cm";
    case LengthUnit::metre:
        return "m";
    case LengthUnit::inch:
        return "in";
    case LengthUnit::foot:
        break;
    }
    return "ft";
}

Json summary(const Catalogue& catalogue) {
    return {{"title", text_or_null(catalogue.title)},
            {"measured_on", to_json(catalogue.measured_on)},
            {"units", unit_name(catalogue.units)},
            {"currency", catalogue.currency ? Json(catalogue.currency->code()) : Json()},
            {"bikes", catalogue.bikes.size()}};
}

} // namespace

Json set_aside_json(const std::vector<SetAside>& set_aside) {
    Json list = Json::array();
    for (const SetAside& entry : set_aside) {
        Json json = {
            {"number", entry.number}, {"id", text_or_null(entry.id)}, {"name", text_or_null(entry.name)}};
        json.update(to_json(entry.problem));
        json["source"] = entry.source;
        list.push_back(std::move(json));
    }
    return list;
}

Json load_answer(const Catalogue& catalogue) {
    return {{"list", summary(catalogue)},
            {"set_aside", set_aside_json(catalogue.set_aside)},
            {"notes", problem_list(catalogue.notes)}};
}

std::string list_answer(const Catalogue* catalogue) {
    if (catalogue == nullptr)
        return R"({"list":null,"bikes":[],"set_aside":[],"notes":[]})";
    std::string text = R"({"list":)" + to_text(summary(*catalogue)) + R"(,"bikes":)";
    append_list(text, catalogue->bikes, bike_facts);
    text += R"(,"set_aside":)" + to_text(set_aside_json(catalogue->set_aside));
    text += R"(,"notes":)" + to_text(problem_list(catalogue->notes)) + '}';
    return text;
}

} // namespace saddlerule
