#include "core/exchange/answer_json.h"

#include <cmath>

namespace saddlerule {

Json rounded(double value, int decimals) {
    if (!std::isfinite(value))
        return {};
    const double scale = std::pow(10.0, decimals);
    const double result = std::round(value * scale) / scale;
    return result == 0.0 ? 0.0 : result; // minus zero is equal to zero, and would be written "-0.0"
}

Json to_json(Length length) {
    return rounded(length.in_millimetres(), 1);
}

Json to_json(Mass mass) {
    return rounded(mass.in_kilograms(), 3);
}

Json to_json(CalendarDate date) {
    return date.to_iso();
}

Json share_to_json(double share) {
    return rounded(share, 6);
}

Json text_or_null(const std::string& text) {
    return text.empty() ? Json() : Json(text);
}

Json to_json(const Problem& problem) {
    Json json = {{"code", code_name(problem.code)}, {"where", problem.where}};
    if (problem.position) {
        json["line"] = problem.position->line;
        json["column"] = problem.position->column;
    }
    json["problem"] = sentence(problem);
    json["expected"] = expected(problem);
    Json figures = Json::object();
    for (const auto& [name, value] : problem.figures)
        figures[name] = value;
    json["figures"] = std::move(figures);
    return json;
}

Json problem_list(const std::vector<Problem>& problems) {
    Json list = Json::array();
    for (const Problem& problem : problems)
        list.push_back(to_json(problem));
    return list;
}

Json error_answer(const Problem& problem) {
    return {{"error", to_json(problem)}};
}

std::string to_text(const Json& json) {
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace saddlerule
