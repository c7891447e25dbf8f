#include "core/exchange/wants_request.h"

namespace saddlerule {
namespace {

constexpr WireName<BrakeWish> brake_wishes[] = {
    {"any", BrakeWish::any},
    {"two_hand", BrakeWish::two_hand},
    {"coaster", BrakeWish::coaster},
};

constexpr WireName<KindWish> kind_wishes[] = {
    {"any", KindWish::any},
    {"pedal", KindWish::pedal},
    {"balance", KindWish::balance},
};

constexpr WireName<GearsWish> gears_wishes[] = {
    {"any", GearsWish::any},
    {"single", GearsWish::single},
    {"several", GearsWish::several},
};

constexpr WireName<Order> order_names[] = {
    {"lasts", Order::lasts},
    {"cost", Order::cost},
    {"light", Order::light},
    {"closest", Order::closest},
};

const auto possible_price = *ClosedRange<double>::between(0.0, 1e9);
const auto possible_most = *ClosedRange<Mass>::between(Mass(), Mass::kilograms(1000.0));
const auto possible_wheel = *ClosedRange<double>::between(1.0, 50.0);

} // namespace

Result<Wants> wants_from_request(const JsonValue& value, const std::string& path) {
    RequestFields fields(value, path);
    Wants wants;
    if (const auto price = fields.optional_number("max_price", possible_price))
        wants.max_price = Amount::main_units(*price);
    wants.max_mass = fields.optional_mass("max_mass", possible_most);
    wants.brakes = fields.optional_choice("brakes", brake_wishes).value_or(BrakeWish::any);
    wants.kind = fields.optional_choice("kind", kind_wishes).value_or(KindWish::any);
    wants.gears = fields.optional_choice("gears", gears_wishes).value_or(GearsWish::any);
    wants.available_only = fields.optional_flag("available_only").value_or(false);
    wants.wheel_nominal_inches = fields.optional_number("wheel", possible_wheel);
    wants.colour = fields.optional_text("colour");
    wants.off_road = fields.optional_flag("off_road").value_or(false);
    wants.order = fields.optional_choice("order", order_names).value_or(Order::lasts);
    if (auto problem = fields.finish())
        return *std::move(problem);
    return wants;
}

} // namespace saddlerule
