#include "core/exchange/read_bike_answer.h"

#include "core/exchange/json_writer.h"
#include "core/exchange/problem_answer.h"
#include "core/lists/message/bike_message.h"

namespace saddlerule {

std::string read_bike(RequestFields& fields) {
    const auto text = fields.optional_text("text");
    fields.require(text.has_value(), "text", ProblemWord::message);
    const LengthUnit units = fields.optional_choice("units", typing_units).value_or(LengthUnit::centimetre);
    if (auto problem = fields.finish())
        return error_answer(*problem);
    const auto message = read_bike_message(*text, units);
    if (!message)
        return error_answer(message.problem());
    JsonWriter json;
    json.object([&] {
        json.key("cells").object([&] {
            field(json, "id", message->id);
            field(json, "kind", message->kind);
            field(json, "wheel", message->wheel);
            field(json, "saddle_lowest", message->saddle_lowest);
            field(json, "saddle_highest", message->saddle_highest);
            field(json, "price", message->price);
        });
    });
    return json.take();
}

} // namespace saddlerule
