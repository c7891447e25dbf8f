#include "core/exchange/bike_json.h"

#include "core/lists/catalogue/catalogue_fields.h"

namespace saddlerule {
namespace {

/// The name that a list has for `value`.
template <typename Names, typename Value>
std::string_view name_in(const Names& names, Value value) {
    for (const auto& [name, named] : names) {
        if (named == value)
            return name;
    }
    return {};
}

void brakes_field(JsonWriter& json, const std::optional<std::vector<Brake>>& brakes) {
    json.key("brakes");
    if (brakes)
        json.array_of(*brakes, [&](Brake brake) { json.text(name_in(brake_names, brake)); });
    else
        json.null();
}

} // namespace

std::string_view kind_name(BikeKind kind) {
    return name_in(kind_names, kind);
}

void price_fields(JsonWriter& json, const std::optional<Money>& price) {
    json.key("price");
    if (price)
        json.number(price->in_main_units(), 3);
    else
        json.null();
    field(json, "currency", price ? std::optional(std::string(price->currency().code())) : std::nullopt);
}

void wheel_field(JsonWriter& json, const std::optional<Wheel>& wheel) {
    json.key("wheel");
    if (!wheel) {
        json.null();
        return;
    }
    json.object([&] {
        field(json, "text", wheel->text());
        nominal_field(json, "nominal_in", wheel->nominal_inches());
        field(json, "bead_seat_mm", wheel->bead_seat());
        field(json, "tyre_mm", wheel->tyre_width());
    });
}

std::optional<double> nominal_inches(const std::optional<Wheel>& wheel) {
    return wheel ? wheel->nominal_inches() : std::nullopt;
}

void nominal_field(JsonWriter& json, std::string_view name, const std::optional<double>& inches) {
    number_field(json, name, inches, 1);
}

void write_bike_facts(JsonWriter& json, const Bike& bike) {
    json.object([&] {
        field(json, "id", bike.id);
        field(json, "name", bike.name);
        field(json, "kind", kind_name(bike.kind));
        wheel_field(json, bike.wheel);
        field(json, "saddle_lowest_mm", bike.saddle_lowest);
        field(json, "saddle_highest_mm", bike.saddle_highest);
        field(json, "standover_mm", bike.standover);
        field(json, "lever_reach_mm", bike.lever_reach);
        field(json, "crank_mm", bike.crank);
        field(json, "bottom_bracket_height_mm", bike.bottom_bracket_height);
        number_field(json, "seat_tube_angle_deg", bike.seat_tube_angle_degrees, 2);
        field(json, "mass_kg", bike.mass);
        field(json, "rider_mass_limit_kg", bike.rider_mass_limit);
        brakes_field(json, bike.brakes);
        field(json, "gears", bike.gears);
        field(json, "chainring", bike.chainring);
        field(json, "sprocket", bike.sprocket);
        price_fields(json, bike.price);
        json.key("colours").array_of(bike.colours, [&](const std::string& colour) { json.text(colour); });
        text_field(json, "condition", bike.condition);
        field(json, "available", bike.available);
        text_field(json, "notes", bike.notes);
    });
}

} // namespace saddlerule
