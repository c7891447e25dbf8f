#include "core/exchange/filter_counts_json.h"

#include <array>
#include <string_view>
#include <vector>

namespace saddlerule {
namespace {

struct OfferedFigures {
    std::string_view name;
    std::vector<FigureCount> FilterCounts::*counts = nullptr;
};

/// One filter as it is on the wire; what it has not has no name.
struct WireFilter {
    std::string_view name;
    Filter filter;
    std::array<std::string_view, 2> values;
    std::string_view figure;
    std::array<OfferedFigures, 2> figures;
};

constexpr WireFilter wire_filters[] = {
    {"max_price", Filter::price, {}, "limit", {{{"limits", &FilterCounts::prices}}}},
    {"max_mass",
     Filter::mass,
     {},
     "limit",
     {{{"limits_kg", &FilterCounts::kilograms}, {"limits_lb", &FilterCounts::pounds}}}},
    {"brakes", Filter::brakes, {"two_hand", "coaster"}, "", {}},
    {"kind", Filter::kind, {"pedal", "balance"}, "", {}},
    {"gears", Filter::gears, {"single", "several"}, "", {}},
    {"available_only", Filter::available, {"available"}, "", {}},
    {"wheel", Filter::wheel, {}, "nominal_in", {{{"sizes", &FilterCounts::wheels}}}},
    {"colour", Filter::colour, {}, "", {}},
};

void colour_fields(JsonWriter& json, const FilterCounts& counts) {
    json.key("colours").array_of(counts.colours, [&](const ColourCount& colour) {
        json.object([&] {
            field(json, "colour", colour.colour);
            field(json, "bikes", colour.bikes);
        });
    });
    field(json, "more_colours", counts.more_colours);
}

void write(JsonWriter& json, const WireFilter& filter, const FilterCounts& counts) {
    const auto place = static_cast<std::size_t>(filter.filter);
    json.object([&] {
        field(json, "any", counts.without[place]);
        for (std::size_t i = 0; i < 2; ++i) {
            if (!filter.values[i].empty())
                field(json, filter.values[i], counts.values[place][i]);
            if (filter.figures[i].counts == nullptr)
                continue;
            json.key(filter.figures[i].name)
                .array_of(counts.*filter.figures[i].counts, [&](const FigureCount& figure) {
                    json.object([&] {
                        number_field(json, filter.figure, figure.figure, 1);
                        field(json, "bikes", figure.bikes);
                    });
                });
        }
        if (filter.filter == Filter::colour)
            colour_fields(json, counts);
    });
}

} // namespace

void filter_counts_field(JsonWriter& json, const FilterCounts& counts) {
    json.key("filter_counts").object([&] {
        for (const WireFilter& filter : wire_filters)
            write(json.key(filter.name), filter, counts);
    });
}

} // namespace saddlerule
