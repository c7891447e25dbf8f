#include "core/exchange/check_json.h"

namespace saddlerule {
namespace {

constexpr int figure_decimals = 3;

void figure_field(JsonWriter& json, std::string_view name, const Figure& figure) {
    json.key(std::string(name) + '_' + std::string(field_suffix(figure.unit())));
    json.number(figure.value(), figure_decimals);
}

void limit_fields(JsonWriter& json, const CheckLimit& limit) {
    const bool two_ends = limit.at_least && limit.at_most;
    if (limit.at_least)
        figure_field(json, two_ends ? "limit_low" : "limit", *limit.at_least);
    if (limit.at_most)
        figure_field(json, two_ends ? "limit_high" : "limit", *limit.at_most);
}

} // namespace

void write(JsonWriter& json, const CheckResult& result) {
    const Finding& finding = result.finding;
    json.object([&] {
        field(json, "what", result.check->what);
        field(json, "state", name_of(finding.state));
        if (finding.figure)
            figure_field(json, "value", *finding.figure);
        limit_fields(json, finding.limit);
        field(json, "basis", name_of(finding.basis));
        field(json, "code", code_of(finding.reason));
        field(json, "source", result.check->source);
        json.key("figures").object([&] {
            for (const NamedFigure& further : finding.further) {
                if (!further.name.empty())
                    figure_field(json, further.name, further.figure);
            }
        });
        json.key("to_measure").array([&] {
            finding.to_measure.for_each([&](Measure measure) { json.text(field_of(measure)); });
        });
    });
}

} // namespace saddlerule
