// A bike in a message: what a seller writes back, or what the code on a bike's tag carries. Two heights among words of any order.
#pragma once

#include "core/base/outcomes/result.h"
#include "core/base/typed_text/length_text.h"

#include <string>
#include <string_view>

namespace saddlerule {

/// Each as people type it into a cell; empty where the message does not say it.
struct BikeMessage {
    std::string id;
    std::string kind;
    std::string wheel;
    std::string saddle_lowest;
    std::string saddle_highest;
    std::string price;
};

/// Reads what a message says of one bike, in English, German, French, Spanish and Dutch.
///
/// The heights are the figures that a saddle can be at: those with a unit, or where no figure has one, those that can be meant in
/// `bare`. The smaller is the lowest, whatever the words say; one alone is the lowest unless the words before it say high or up to. In a span
/// ("52-66 cm") the unit is that of both. A figure beside a word for wheel or tyre is the wheel, one beside a currency the price, and
/// what is between `#` and a colon is the id.
///
/// Problems: message_heights_unclear where there is no such figure, or more than two.
Result<BikeMessage> read_bike_message(std::string_view text, LengthUnit bare);

} // namespace saddlerule
