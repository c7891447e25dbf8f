#include "core/exchange/filter_counts_json.h"

#include <initializer_list>
#include <string_view>

namespace saddlerule {
namespace {

struct Named {
    std::string_view name;
    int bikes;
};

struct Listed {
    std::string_view name;
    std::string_view figure_name;
    const std::vector<FigureCount>& figures;
};

class Writer {
public:
    Writer(JsonWriter& json, const FilterCounts& counts) : json_(json), counts_(counts) {}

    void filter(std::string_view name, Filter which, std::initializer_list<Named> values,
                std::initializer_list<Listed> lists) {
        json_.key(name).object([&] {
            field(json_, "any", counts_.without[static_cast<std::size_t>(which)]);
            for (const Named& value : values)
                field(json_, value.name, value.bikes);
            for (const Listed& list : lists) {
                json_.key(list.name).array_of(list.figures, [&](const FigureCount& figure) {
                    json_.object([&] {
                        number_field(json_, list.figure_name, figure.figure, 1);
                        field(json_, "bikes", figure.bikes);
                    });
                });
            }
            if (which == Filter::colour)
                colours();
        });
    }

private:
    void colours() {
        json_.key("colours").array_of(counts_.colours, [&](const ColourCount& colour) {
            json_.object([&] {
                field(json_, "colour", colour.colour);
                field(json_, "bikes", colour.bikes);
            });
        });
        field(json_, "more_colours", counts_.more_colours);
    }

    JsonWriter& json_;
    const FilterCounts& counts_;
};

template <typename Wish>
int of(const std::array<int, 3>& counts, Wish wish) {
    return counts[static_cast<std::size_t>(wish)];
}

} // namespace

void filter_counts_field(JsonWriter& json, const FilterCounts& counts) {
    Writer writer(json, counts);
    json.key("filter_counts").object([&] {
        writer.filter("max_price", Filter::price, {}, {{"limits", "limit", counts.prices}});
        writer.filter("max_mass", Filter::mass, {},
                      {{"limits_kg", "limit", counts.kilograms}, {"limits_lb", "limit", counts.pounds}});
        writer.filter("brakes", Filter::brakes,
                      {{"two_hand", of(counts.brakes, BrakeWish::two_hand)},
                       {"coaster", of(counts.brakes, BrakeWish::coaster)}},
                      {});
        writer.filter(
            "kind", Filter::kind,
            {{"pedal", of(counts.kinds, KindWish::pedal)}, {"balance", of(counts.kinds, KindWish::balance)}},
            {});
        writer.filter("gears", Filter::gears,
                      {{"single", of(counts.gears, GearsWish::single)},
                       {"several", of(counts.gears, GearsWish::several)}},
                      {});
        writer.filter("available_only", Filter::available, {{"available", counts.available}}, {});
        writer.filter("wheel", Filter::wheel, {}, {{"sizes", "nominal_in", counts.wheels}});
        writer.filter("colour", Filter::colour, {}, {});
    });
}

} // namespace saddlerule
