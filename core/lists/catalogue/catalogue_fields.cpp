#include "core/lists/catalogue/catalogue_fields.h"

#include "core/base/text/ascii_case.h"

#include <algorithm>
#include <cstddef>

namespace saddlerule {
namespace {

constexpr FieldLimits none{};
constexpr FieldLimits saddle_height{150.0, 1300.0};

/// What each means, and how it is measured: catalogue-samples/catalogue.schema.json.
constexpr std::array all_fields{
    CatalogueField{"id", &Bike::id, none},
    CatalogueField{"name", &Bike::name, none},
    CatalogueField{"kind", &Bike::kind, none},
    CatalogueField{"wheel", &Bike::wheel, none},
    CatalogueField{"saddle_lowest", &Bike::saddle_lowest, saddle_height},
    CatalogueField{"saddle_highest", &Bike::saddle_highest, saddle_height},
    CatalogueField{"standover", &Bike::standover, {100.0, 1100.0}},
    CatalogueField{"mass_kg", &Bike::mass, {0.5, 60.0}},
    CatalogueField{"rider_mass_limit_kg", &Bike::rider_mass_limit, {5.0, 300.0}},
    CatalogueField{"brakes", &Bike::brakes, none},
    CatalogueField{"lever_reach", &Bike::lever_reach, {20.0, 150.0}},
    CatalogueField{"gears", &Bike::gears, {0.0, 40.0}},
    CatalogueField{"chainring", &Bike::chainring, {8.0, 80.0}},
    CatalogueField{"sprocket", &Bike::sprocket, {6.0, 80.0}},
    CatalogueField{"crank", &Bike::crank, {40.0, 250.0}},
    CatalogueField{"bottom_bracket_height", &Bike::bottom_bracket_height, {80.0, 450.0}},
    CatalogueField{"seat_tube_angle_deg", &Bike::seat_tube_angle_degrees, {45.0, 90.0}},
    CatalogueField{"price", &Bike::price, {0.0, 1e9}},
    CatalogueField{"colours", &Bike::colours, none},
    CatalogueField{"condition", &Bike::condition, none},
    CatalogueField{"available", &Bike::available, none},
    CatalogueField{"notes", &Bike::notes, none},
};

/// How many letters must be put in, left out or changed to turn one into the other (Levenshtein).
std::size_t slips_between(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({changed, row[j] + 1, row[j - 1] + 1});
        }
    }
    return row[b.size()];
}

} // namespace

std::string letters_of(std::string_view name) {
    constexpr std::string_view between_words = "_-. \t\r\n";
    std::string letters;
    for (const char c : name) {
        if (between_words.find(c) == std::string_view::npos)
            letters += in_lower_case(c);
    }
    return letters;
}

std::span<const CatalogueField> catalogue_fields() {
    return all_fields;
}

const CatalogueField* field_named(std::string_view name) {
    const auto* field = std::find_if(all_fields.begin(), all_fields.end(),
                                     [&](const CatalogueField& f) { return f.name == name; });
    return field == all_fields.end() ? nullptr : field;
}

const CatalogueField* field_meant_by(std::string_view name) {
    constexpr std::size_t longest_worth_comparing = 40;
    if (name.size() > longest_worth_comparing)
        return nullptr;
    // A unit behind the name, as tables have it, is no part of it.
    const std::string letters = letters_of(name.substr(0, name.find_first_of("[(")));
    const CatalogueField* nearest = nullptr;
    std::size_t fewest_slips = 3;
    for (const CatalogueField& field : all_fields) {
        // A short name is mistaken for another by a single slip.
        const std::size_t allowed = field.name.size() < 5 ? 0 : field.name.size() < 8 ? 1 : 2;
        const std::size_t slips = slips_between(letters, letters_of(field.name));
        if (slips <= allowed && slips < fewest_slips) {
            nearest = &field;
            fewest_slips = slips;
        }
    }
    return nearest;
}

} // namespace saddlerule
