#include "core/exchange/rider_request.h"

#include "core/fit/growth/rider_history.h"

namespace saddlerule {
namespace {

template <typename Quantity>
ClosedRange<Quantity> range(Quantity low, Quantity high) {
    return *ClosedRange<Quantity>::between(low, high);
}

// Wide on purpose: an unlikely figure is questioned in the answer, only an impossible one is refused here.
const auto possible_length = range(Length::millimetres(1.0), Length::metres(10.0));
const auto possible_sd_mm = range(0.1, 500.0);
const auto possible_sole_mm = range(0.0, 100.0);
const auto possible_mass = *ClosedRange<Mass>::between(Mass::kilograms(1.0), Mass::kilograms(300.0));

Result<Reading> reading_from_request(const JsonValue& value, const std::string& path) {
    RequestFields fields(value, path);
    Reading reading{
        .on = fields.required_day("on"), .inseam = {}, .shoes = fields.optional_flag("shoes").value_or(true)};
    const auto inseam = fields.optional_length("inseam", "unit", possible_length);
    fields.require(inseam.has_value(), "inseam_mm", ProblemWord::number_of_millimetres);
    reading.inseam = inseam.value_or(Length());
    if (auto problem = fields.finish())
        return *std::move(problem);
    return reading;
}

void read_readings(RequestFields& fields, Rider& rider) {
    const JsonValue* list = fields.optional("readings");
    if (!list)
        return;
    if (list->kind != JsonValue::Kind::array) {
        fields.report("readings", ProblemCode::request_field_wrong_type,
                      {{"found", list->kind_name()}, {"kind", ProblemWord::list_of_readings}});
        return;
    }
    for (const JsonValue& item : list->items) {
        const std::string place = "readings[" + std::to_string(rider.readings.size()) + "]";
        auto reading = reading_from_request(item, fields.path_of(place));
        if (!reading) {
            fields.report(std::move(reading).problem());
            return;
        }
        rider.readings.push_back(*reading);
    }
}

Length millimetres_or(std::optional<double> given, Length usual) {
    return given ? Length::millimetres(*given) : usual;
}

} // namespace

Result<Rider> rider_from_request(const JsonValue& value, const std::string& path, CalendarDate today,
                                 std::optional<Stage> unsaid_stage) {
    RequestFields fields(value, path);
    Rider rider;
    read_readings(fields, rider);
    rider.accuracy.sole =
        millimetres_or(fields.optional_number("sole_mm", possible_sole_mm), rider.accuracy.sole);
    rider.accuracy.sole_sd =
        millimetres_or(fields.optional_number("sole_sd_mm", possible_sole_mm), rider.accuracy.sole_sd);
    rider.accuracy.reading_sd =
        millimetres_or(fields.optional_number("reading_sd_mm", possible_sd_mm), rider.accuracy.reading_sd);
    rider.born = fields.optional_day_or_month("born");
    rider.sex = fields.optional_choice("sex", sex_names);
    rider.population = fields.optional_choice("population", population_names).value_or(Population::any);
    rider.stature = fields.optional_length("stature", "stature_unit", possible_length);
    rider.mass = fields.optional_mass("mass", possible_mass);
    const auto said = fields.optional_choice("stage", stage_names);
    const auto stage = said ? said : unsaid_stage;
    fields.require(stage.has_value(), "stage", ProblemWord::stages);
    rider.stage = stage.value_or(Stage::starting);
    rider.confidence = fields.optional_choice("confidence", confidence_names).value_or(Confidence::usual);
    rider.riding_from = fields.optional_day_or_month("riding_from");
    if (auto problem = fields.finish())
        return *std::move(problem);
    if (says_nothing_of_size(rider, today))
        return Problem{
            .code = ProblemCode::rider_without_measure, .figures = {}, .where = path, .position = {}};
    return rider;
}

Rider required_rider(RequestFields& fields, CalendarDate today) {
    const JsonValue* value = fields.optional("rider");
    fields.require(value != nullptr, "rider", ProblemWord::group_in_braces);
    if (value == nullptr)
        return {};
    auto rider = rider_from_request(*value, fields.path_of("rider"), today);
    if (rider)
        return std::move(rider).value();
    fields.report(std::move(rider).problem());
    return {};
}

} // namespace saddlerule
