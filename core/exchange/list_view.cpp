#include "core/exchange/list_view.h"

#include "core/base/sorting/sorting.h"
#include "core/base/text/ascii_case.h"
#include "core/base/typed_text/length_text.h"
#include "core/exchange/bike_json.h"
#include "core/exchange/problem_answer.h"
#include "core/lists/catalogue/list_header.h"
#include "core/lists/catalogue/list_judgement.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <string_view>
#include <utility>

namespace saddlerule {
namespace {

constexpr WireName<ListShow> show_names[] = {
    {"all", ListShow::all},
    {"bikes", ListShow::bikes},
    {"set_aside", ListShow::set_aside},
    {"slips", ListShow::slips},
};

/// So many colours are offered, the most frequent ones: nobody looks through more.
constexpr std::size_t most_colours = 60;

/// The byte in lower case, of ASCII and of the Latin letters with marks that follow a byte 0xC3 in UTF-8.
char folded(std::string_view text, std::size_t i) {
    const auto byte = static_cast<unsigned char>(in_lower_case(text[i]));
    constexpr unsigned char multiplication_sign = 0x97;
    const bool marked = i > 0 && static_cast<unsigned char>(text[i - 1]) == 0xC3 && byte >= 0x80 &&
                        byte <= 0x9E && byte != multiplication_sign;
    return static_cast<char>(marked ? byte + 0x20 : byte);
}

std::string folded(std::string_view text) {
    std::string result;
    result.reserve(text.size());
    for (std::size_t i = 0; i < text.size(); ++i)
        result += folded(text, i);
    return result;
}

/// Whether the folded `wanted` is in `text`.
bool holds(std::string_view text, std::string_view wanted) {
    for (std::size_t begin = 0; begin + wanted.size() <= text.size(); ++begin) {
        std::size_t same = 0;
        while (same < wanted.size() && folded(text, begin + same) == wanted[same])
            ++same;
        if (same == wanted.size())
            return true;
    }
    return false;
}

bool holds(const Bike& bike, std::string_view wanted) {
    return holds(bike.id, wanted) || holds(bike.name, wanted) || holds(bike.condition, wanted) ||
           holds(bike.notes, wanted) || (bike.wheel && holds(bike.wheel->text(), wanted)) ||
           std::any_of(bike.colours.begin(), bike.colours.end(),
                       [&](const std::string& colour) { return holds(colour, wanted); });
}

/// Goes through the entries of a list in their order.
class EntryWalk {
public:
    explicit EntryWalk(const Catalogue& catalogue) : catalogue_(catalogue) {}

    JudgedEntry next() {
        ++number_;
        if (aside_ < catalogue_.set_aside.size() && catalogue_.set_aside[aside_].number == number_)
            return {.bike = nullptr, .set_aside = &catalogue_.set_aside[aside_++]};
        return {.bike = &catalogue_.bikes[bike_++], .set_aside = nullptr};
    }

private:
    const Catalogue& catalogue_;
    std::size_t number_ = 0;
    std::size_t bike_ = 0;
    std::size_t aside_ = 0;
};

/// The numbers of the entries that the view lets through.
std::vector<std::size_t> shown_numbers(const KeptList& list, const std::vector<SlipMark>& slips,
                                       const ListView& view) {
    std::vector<std::size_t> numbers;
    const std::string wanted = folded(view.find);
    EntryWalk walk(list.catalogue);
    auto slip = slips.begin();
    for (std::size_t number = 1; number <= list.entries.size(); ++number) {
        const JudgedEntry entry = walk.next();
        const bool has_slip = slip != slips.end() && slip->number == number;
        if (has_slip)
            ++slip;
        if ((view.show == ListShow::bikes && !entry.bike) ||
            (view.show == ListShow::set_aside && entry.bike) || (view.show == ListShow::slips && !has_slip))
            continue;
        if (wanted.empty() ||
            (entry.bike ? holds(*entry.bike, wanted) : holds(list.entries[number - 1].source, wanted)))
            numbers.push_back(number);
    }
    return numbers;
}

/// The one field that has to be typed anew; null where the fault is in no field alone.
const CatalogueField* field_to_mend(const Problem& problem) {
    if (problem.code == ProblemCode::riders_row_of_totals || problem.code == ProblemCode::bike_field_twice)
        return nullptr;
    const std::string_view where = problem.where;
    const std::size_t entry_end = where.find("].");
    if (entry_end == std::string_view::npos)
        return nullptr;
    const std::string_view field = where.substr(entry_end + 2);
    return field_named(field.substr(0, field.find_first_of(".[")));
}

void to_mend_field(JsonWriter& json, const KeptList& list, const SetAside* entry) {
    const CatalogueField* faulty = entry ? field_to_mend(entry->problem) : nullptr;
    json.key("to_mend");
    if (!faulty) {
        json.null();
        return;
    }
    const std::string_view source = list.entries[entry->number - 1].source;
    const auto value = read_entry(source);
    json.object([&] {
        field(json, "field", faulty->name);
        field(json, "text",
              value ? cell_of(*value, source, faulty->name, cell_context(list.facts)) : std::string());
    });
}

void write_entry(JsonWriter& json, const KeptList& list, std::size_t number, const std::vector<Slip>& slips) {
    const JudgedEntry entry = judged_entry(list.catalogue, number);
    constexpr auto none = std::optional<Length>();
    json.object([&] {
        field(json, "number", number);
        text_field(json, "id", entry.id());
        text_field(json, "name", entry.name());
        text_field(json, "kind", entry.bike ? kind_name(entry.bike->kind) : std::string_view());
        wheel_field(json, entry.bike ? entry.bike->wheel : std::nullopt);
        field(json, "saddle_lowest_mm", entry.bike ? entry.bike->saddle_lowest : none);
        field(json, "saddle_highest_mm", entry.bike ? entry.bike->saddle_highest : none);
        price_fields(json, entry.bike ? entry.bike->price : std::nullopt);
        field(json, "mass_kg", entry.bike ? entry.bike->mass : std::nullopt);
        json.key("problem");
        if (entry.set_aside)
            write(json, entry.set_aside->problem);
        else
            json.null();
        to_mend_field(json, list, entry.set_aside);
        json.key("slips");
        write_slips(json, slips, number);
    });
}

void write_slip_kinds(JsonWriter& json, const std::vector<SlipMark>& slips) {
    json.key("slip_kinds").array([&] {
        for (std::size_t kind = 0; kind < slip_kinds; ++kind) {
            const auto count = std::count_if(slips.begin(), slips.end(),
                                             [&](const SlipMark& mark) { return mark.has(slip_code(kind)); });
            if (count == 0)
                continue;
            json.object([&] {
                field(json, "code", code_name(slip_code(kind)));
                field(json, "count", count);
            });
        }
    });
}

void heights_field(JsonWriter& json, const std::vector<Bike>& bikes) {
    std::optional<Length> lowest;
    std::optional<Length> highest;
    for (const Bike& bike : bikes) {
        for (const auto& height : {bike.saddle_lowest, bike.saddle_highest}) {
            if (height && (!lowest || *height < *lowest))
                lowest = height;
            if (height && (!highest || *height > *highest))
                highest = height;
        }
    }
    json.key("heights_mm").object([&] {
        field(json, "lowest", lowest);
        field(json, "highest", highest);
    });
}

/// How often each value is in the sorted `values`.
template <typename Value>
std::vector<std::pair<Value, std::size_t>> tally(std::vector<Value> values) {
    heap_sort(values);
    std::vector<std::pair<Value, std::size_t>> counts;
    for (const Value& value : values) {
        if (counts.empty() || counts.back().first != value)
            counts.emplace_back(value, 0);
        ++counts.back().second;
    }
    return counts;
}

} // namespace

std::optional<ListView> optional_list_view(RequestFields& fields) {
    const auto rows = optional_rows(fields);
    const auto show = fields.optional_choice("show", show_names);
    auto find = fields.optional_text("find");
    if (!rows)
        return std::nullopt;
    return ListView{*rows, show.value_or(ListShow::all), std::move(find).value_or(std::string())};
}

void list_summary_field(JsonWriter& json, const KeptList& list) {
    json.key("list").object([&] {
        text_field(json, "title", list.catalogue.title);
        field(json, "measured_on", list.catalogue.measured_on);
        text_field(json, "units", list.facts.units ? unit_name(*list.facts.units) : std::string_view());
        text_field(json, "currency",
                   list.catalogue.currency ? list.catalogue.currency->code() : std::string_view());
        field(json, "bikes", list.catalogue.bikes.size());
        field(json, "entries", list.entries.size());
        field(json, "form", list.form == ListForm::json ? "json" : "table");
    });
}

std::string list_surroundings(const KeptList& list, const std::vector<SlipMark>& slips) {
    JsonWriter json;
    list_offers_field(json, list);
    heights_field(json, list.catalogue.bikes);
    field(json, "notes", list.catalogue.notes);
    write_slip_kinds(json, slips);
    return json.take();
}

void list_view_fields(JsonWriter& json, const KeptList& list, const std::vector<SlipMark>& slips,
                      const std::string& surroundings, const ListView& view) {
    const std::vector<std::size_t> numbers = shown_numbers(list, slips, view);
    list_summary_field(json, list);
    list_counts_field(json, list, slips, numbers.size());
    json.raw(surroundings);
    SlipFinder finder(list);
    json.key("entries").array([&] {
        const std::size_t end = std::min(numbers.size(), view.rows.from + view.rows.count);
        for (std::size_t i = view.rows.from; i < end; ++i) {
            const bool has_slips = std::binary_search(
                slips.begin(), slips.end(), SlipMark{static_cast<std::uint32_t>(numbers[i]), 0},
                [](const SlipMark& a, const SlipMark& b) { return a.number < b.number; });
            write_entry(json, list, numbers[i],
                        has_slips ? finder.slips_of(numbers[i]) : std::vector<Slip>());
        }
    });
}

void no_list_fields(JsonWriter& json) {
    json.key("list").null();
    list_counts_field(json, KeptList(), {}, 0);
    json.raw(list_surroundings(KeptList(), {}));
    json.key("entries").array([] {});
}

void list_counts_field(JsonWriter& json, const KeptList& list, const std::vector<SlipMark>& slips,
                       std::optional<std::size_t> shown) {
    json.key("counts").object([&] {
        field(json, "entries", list.entries.size());
        field(json, "bikes", list.catalogue.bikes.size());
        field(json, "set_aside", list.catalogue.set_aside.size());
        field(json, "slips", slips.size());
        if (shown)
            field(json, "shown", *shown);
    });
}

void list_offers_field(JsonWriter& json, const KeptList& list) {
    std::vector<double> wheels;
    std::vector<std::string_view> colours;
    for (const Bike& bike : list.catalogue.bikes) {
        if (const auto inches = nominal_inches(bike.wheel))
            wheels.push_back(*inches);
        colours.insert(colours.end(), bike.colours.begin(), bike.colours.end());
    }
    auto by_colour = tally(std::move(colours));
    heap_sort(by_colour, [](const auto& a, const auto& b) {
        return a.second != b.second ? a.second > b.second : a.first < b.first;
    });
    by_colour.resize(std::min(by_colour.size(), most_colours));
    json.key("offers").object([&] {
        json.key("wheels").array_of(tally(std::move(wheels)), [&](const auto& wheel) {
            json.object([&] {
                nominal_field(json, "nominal_in", wheel.first);
                field(json, "count", wheel.second);
            });
        });
        json.key("colours").array_of(by_colour, [&](const auto& colour) {
            json.object([&] {
                field(json, "colour", colour.first);
                field(json, "count", colour.second);
            });
        });
    });
}

void write_slips(JsonWriter& json, const std::vector<Slip>& slips, std::size_t number) {
    json.array_of(slips, [&](const Slip& slip) {
        json.object([&] {
            field(json, "number", number);
            Problem problem = slip.problem;
            problem_fields(json, number == 0 ? problem : std::move(problem).within(entry_path(number)));
            json.key("changes").array([&] {
                if (slip.repair.empty())
                    return;
                json.object([&] {
                    json.key("set").object([&] {
                        for (const FieldCell& cell : slip.repair)
                            field(json, cell.name, cell.cell);
                    });
                    field(json, "number", number);
                });
            });
        });
    });
}

} // namespace saddlerule
