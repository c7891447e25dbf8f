#include "core/exchange/check_json.h"

namespace saddlerule {
namespace {

constexpr int figure_decimals = 3;

void put_figure(Json& json, const std::string& name, const Figure& figure) {
    json[name + '_' + std::string(field_suffix(figure.unit()))] = rounded(figure.value(), figure_decimals);
}

void put_limit(Json& json, const CheckLimit& limit) {
    if (limit.at_least && limit.at_most) {
        put_figure(json, "limit_low", *limit.at_least);
        put_figure(json, "limit_high", *limit.at_most);
    } else if (limit.at_least) {
        put_figure(json, "limit", *limit.at_least);
    } else if (limit.at_most) {
        put_figure(json, "limit", *limit.at_most);
    }
}

} // namespace

Json check_json(const CheckResult& result) {
    const Finding& finding = result.finding;
    Json json = {{"what", result.check->what}, {"state", name_of(finding.state)}};
    if (finding.figure)
        put_figure(json, "value", *finding.figure);
    put_limit(json, finding.limit);
    json["code"] = text_of(finding.reason).code;
    json["why"] = why(finding);
    json["source"] = result.check->source;
    Json figures = Json::object();
    for (const NamedFigure& further : finding.further) {
        if (!further.name.empty())
            put_figure(figures, std::string(further.name), further.figure);
    }
    json["figures"] = std::move(figures);
    Json to_measure = Json::array();
    finding.to_measure.for_each([&](Measure measure) { to_measure.push_back(field_of(measure)); });
    json["to_measure"] = std::move(to_measure);
    return json;
}

Json check_list(const std::vector<CheckResult>& results) {
    Json list = Json::array();
    for (const CheckResult& result : results)
        list.push_back(check_json(result));
    return list;
}

} // namespace saddlerule
