#include "core/lists/keeping/list_slips.h"

#include "core/base/outcomes/figure_text.h"
#include "core/base/sorting/sorting.h"
#include "core/base/typed_text/length_text.h"
#include "core/lists/catalogue/list_judgement.h"
#include "core/lists/keeping/slip_limits.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <utility>

namespace saddlerule {
namespace {

using Kind = JsonValue::Kind;

constexpr std::size_t lowest = 0; ///< in usual_lengths
constexpr std::size_t highest = 1;
constexpr std::size_t lengths = usual_lengths.size();

constexpr std::array typed_units{LengthUnit::millimetre, LengthUnit::centimetre, LengthUnit::inch};

bool is_usual(const UsualLength& usual, Length length, const std::optional<Wheel>& wheel) {
    if (length < usual.low || length > usual.high)
        return false;
    if (!wheel)
        return true;
    const double diameters = length / (wheel->rolling_radius() * 2.0);
    return diameters >= usual.low_by_wheel && diameters <= usual.high_by_wheel;
}

using Lengths = std::array<std::optional<Length>, lengths>;

/// How many ratios of two lengths are unusual.
int unusual_ratios(const Lengths& of_bike) {
    return static_cast<int>(
        std::count_if(usual_ratios.begin(), usual_ratios.end(), [&](const UsualRatio& usual) {
            const auto& of = of_bike[usual.of];
            const auto& to = of_bike[usual.to];
            return of && to && (*of < *to * usual.low || *of > *to * usual.high);
        }));
}

constexpr bool stands_in_ratio(std::size_t length) {
    for (const UsualRatio& usual : usual_ratios) {
        if (usual.of == length || usual.to == length)
            return true;
    }
    return false;
}

bool all_usual(const Bike& bike) {
    Lengths of_bike;
    for (std::size_t i = 0; i < lengths; ++i) {
        of_bike[i] = bike.*usual_lengths[i].member;
        if (of_bike[i] && !is_usual(usual_lengths[i], *of_bike[i], bike.wheel))
            return false;
    }
    return unusual_ratios(of_bike) == 0;
}

std::optional<Length> span_of(const Bike& bike) {
    if (!bike.saddle_lowest || !bike.saddle_highest)
        return std::nullopt;
    return *bike.saddle_highest - *bike.saddle_lowest;
}

bool is_odd(Length span) {
    return span < narrowest_span || span > widest_span;
}

bool says_id_is_taken(const Problem* problem) {
    return problem && (problem->code == ProblemCode::bike_id_taken ||
                       problem->code == ProblemCode::bike_id_taken_in_row ||
                       problem->code == ProblemCode::bike_id_given_twice);
}

/// A length as it was written.
struct Figure {
    bool given = false;
    bool bare = false;
    double number = 0.0; ///< of a bare one
    Length length;       ///< as the list has it read
    const JsonValue* value = nullptr;

    Length in(LengthUnit unit) const { return bare ? length_of(number, unit) : length; }
};

/// The lengths of one entry, and what their bare figures may count in.
class EntryFigures {
public:
    using Units = std::array<std::optional<LengthUnit>, lengths>;

    EntryFigures(const JsonValue& entry, std::string_view source, const ReadingFacts& facts)
        : source_(source), unit_(facts.units.value_or(LengthUnit::centimetre)) {
        if (const JsonMember* wheel = entry.find("wheel"); wheel && wheel->value.kind == Kind::text)
            wheel_ = Wheel::from_text(wheel->value.text);
        for (std::size_t i = 0; i < lengths; ++i) {
            if (const JsonMember* member = entry.find(usual_lengths[i].field))
                figures_[i] = read(member->value);
        }
    }

    const Figure& operator[](std::size_t i) const { return figures_[i]; }
    LengthUnit unit() const { return unit_; }
    /// A bare figure as a cell that counts in that unit.
    std::string with_unit(std::size_t i, LengthUnit unit) const {
        return bare_with_unit(*figures_[i].value, source_, unit);
    }
    /// The same for a problem.
    Quote quoted(std::size_t i, LengthUnit unit) const {
        return {.text = bare_figure(*figures_[i].value, source_), .unit = unit_name(unit)};
    }

    /// For each bare figure that counts in another unit than the list's, that unit: the one reading of all figures
    /// together with which the fewest lengths and ratios are unusual, and among those the one that changes the
    /// fewest figures. None where the figures are as usual as they are, or two readings are equally good.
    Units other_units() const {
        std::size_t readings = 1;
        for (std::size_t i = 0; i < lengths; ++i)
            readings *= figures_[i].bare && stands_in_ratio(i) ? typed_units.size() : 1;
        const Cost as_written = cost_of({});
        Units best;
        Cost least{as_written.unusual + 1, 0};
        bool only_one = false;
        for (std::size_t reading = 0; reading < readings; ++reading) {
            const Units units = units_of(reading);
            const Cost cost = cost_of(units);
            only_one = cost < least || (only_one && least < cost);
            if (cost < least) {
                least = cost;
                best = units;
            }
        }
        Units units = only_one && least.unusual < as_written.unusual ? best : Units();
        for (std::size_t i = 0; i < lengths; ++i) {
            if (figures_[i].bare && !stands_in_ratio(i))
                units[i] = only_usual_unit(i);
        }
        return units;
    }

    /// Whether lowest and highest are usual the other way round.
    bool usual_when_swapped() const {
        Units as_written;
        Lengths swapped = lengths_in(as_written);
        std::swap(swapped[lowest], swapped[highest]);
        return swapped[lowest] && swapped[highest] &&
               is_usual(usual_lengths[lowest], *swapped[lowest], wheel_) &&
               is_usual(usual_lengths[highest], *swapped[highest], wheel_) && unusual_ratios(swapped) == 0;
    }

private:
    Figure read(const JsonValue& value) const {
        if (value.kind == Kind::number) {
            return {.given = true,
                    .bare = true,
                    .number = value.number,
                    .length = length_of(value.number, unit_),
                    .value = &value};
        }
        if (value.kind != Kind::text)
            return {};
        const auto in_millimetres = read_length(value.text, LengthUnit::millimetre);
        const auto in_list = read_length(value.text, unit_);
        const auto in_inches = read_length(value.text, LengthUnit::inch);
        if (!in_list || !in_millimetres || !in_inches)
            return {};
        return {.given = true,
                .bare = *in_millimetres != *in_inches,
                .number = in_millimetres->in_millimetres(),
                .length = *in_list,
                .value = &value};
    }

    /// What a reading of the figures costs.
    struct Cost {
        int unusual;
        int changes;

        friend auto operator<=>(const Cost&, const Cost&) = default;
    };

    Lengths lengths_in(const Units& units) const {
        Lengths result;
        for (std::size_t i = 0; i < lengths; ++i) {
            if (figures_[i].given)
                result[i] = figures_[i].in(units[i].value_or(unit_));
        }
        return result;
    }

    Cost cost_of(const Units& units) const {
        const Lengths read = lengths_in(units);
        Cost cost{unusual_ratios(read), 0};
        for (std::size_t i = 0; i < lengths; ++i) {
            cost.changes += units[i] ? 1 : 0;
            cost.unusual += read[i] && !is_usual(usual_lengths[i], *read[i], wheel_) ? 1 : 0;
        }
        return cost;
    }

    /// Of a length that no other says anything about: the one unit in which it is usual, if it is not usual already.
    std::optional<LengthUnit> only_usual_unit(std::size_t i) const {
        std::optional<LengthUnit> only;
        for (const LengthUnit unit : typed_units) {
            if (!is_usual(usual_lengths[i], figures_[i].in(unit), wheel_))
                continue;
            if (only || unit == unit_)
                return std::nullopt;
            only = unit;
        }
        return only;
    }

    /// The reading of that number: a unit for each bare figure that others say something about.
    Units units_of(std::size_t reading) const {
        Units units;
        for (std::size_t i = 0; i < lengths; ++i) {
            if (!figures_[i].bare || !stands_in_ratio(i))
                continue;
            const LengthUnit unit = typed_units[reading % typed_units.size()];
            if (unit != unit_)
                units[i] = unit;
            reading /= typed_units.size();
        }
        return units;
    }

    std::string_view source_;
    std::array<Figure, lengths> figures_;
    std::optional<Wheel> wheel_;
    LengthUnit unit_;
};

bool any(const EntryFigures::Units& units) {
    return std::any_of(units.begin(), units.end(), [](const auto& unit) { return unit.has_value(); });
}

Slip slip(ProblemCode code, std::string_view where, Figures figures, std::vector<FieldCell> repair = {}) {
    return {.problem = {.code = code,
                        .figures = std::move(figures),
                        .where = std::string(where),
                        .position = {},
                        .cell = {}},
            .repair = std::move(repair)};
}

Slip unit_slip(const EntryFigures& figures, const EntryFigures::Units& units) {
    std::vector<FieldCell> repair;
    for (std::size_t i = 0; i < lengths; ++i) {
        if (units[i])
            repair.push_back({std::string(usual_lengths[i].field), figures.with_unit(i, *units[i])});
    }
    const std::string field = repair.front().name;
    const auto first = static_cast<std::size_t>(
        std::find_if(units.begin(), units.end(), [](const auto& unit) { return unit.has_value(); }) -
        units.begin());
    Figures said{{"field", field},
                 {"value", figures.quoted(first, figures.unit())},
                 {"meant", figures.quoted(first, *units[first])},
                 {"count", repair.size()}};
    return slip(ProblemCode::slip_unit, field, std::move(said), std::move(repair));
}

constexpr Length beyond_all = Length::metres(1000.0);

} // namespace

std::vector<SlipMark> SlipFinder::find() {
    std::vector<SlipMark> marks;
    for (std::size_t number = 1; number <= list_.entries.size(); ++number) {
        const SlipQuestion entry = question(number);
        if (entry.bike) {
            const auto span = span_of(*entry.bike);
            if (all_usual(*entry.bike) && !(span && is_odd(*span)) && !distance_from_others(entry))
                continue;
        }
        unsigned kinds = 0;
        for (const Slip& slip : slips_of(entry))
            kinds |= 1U << slip_kind(slip.problem.code);
        if (kinds != 0)
            marks.push_back({static_cast<std::uint32_t>(number), static_cast<std::uint8_t>(kinds)});
    }
    return marks;
}

SlipQuestion SlipFinder::question(std::size_t number) const {
    const JudgedEntry entry = judged_entry(list_.catalogue, number);
    return {.source = list_.entries[number - 1].source,
            .bike = entry.bike,
            .problem = entry.set_aside ? &entry.set_aside->problem : nullptr,
            .replaced = entry.bike};
}

std::vector<Slip> SlipFinder::slips_of(const SlipQuestion& entry) {
    std::vector<Slip> slips;
    const auto value = read_entry(entry.source);
    if (!value || value->kind != Kind::object)
        return slips;
    const CellContext cells = cell_context(list_.facts);
    const EntryFigures figures(*value, entry.source, list_.facts);
    const bool length_at_fault =
        entry.problem && (entry.problem->code == ProblemCode::bike_figure_out_of_range ||
                          entry.problem->code == ProblemCode::bike_highest_below_lowest);
    EntryFigures::Units units;
    const bool swapped = entry.problem && entry.problem->code == ProblemCode::bike_highest_below_lowest &&
                         figures.usual_when_swapped();
    if (!swapped && (entry.bike || length_at_fault || says_id_is_taken(entry.problem)))
        units = figures.other_units();
    if (any(units))
        slips.push_back(unit_slip(figures, units));
    if (says_id_is_taken(entry.problem)) {
        const std::string id = cell_of(*value, entry.source, "id", cells);
        std::string free = free_ids_.like(id);
        slips.push_back(slip(ProblemCode::slip_id_taken, "id", {{"id", excerpt(id)}, {"free", excerpt(free)}},
                             {{"id", free}}));
    }
    if (units[lowest] || units[highest])
        return slips; // once they are right, the rest can be looked at
    if (swapped) {
        std::string low = cell_of(*value, entry.source, "saddle_lowest", cells);
        std::string high = cell_of(*value, entry.source, "saddle_highest", cells);
        slips.push_back(slip(ProblemCode::slip_swapped, "saddle_lowest",
                             {{"lowest", length_figure(figures[lowest].length, figures.unit())},
                              {"highest", length_figure(figures[highest].length, figures.unit())}},
                             {{"saddle_lowest", std::move(high)}, {"saddle_highest", std::move(low)}}));
    }
    if (!entry.bike)
        return slips;
    const auto span = span_of(*entry.bike);
    if (span && *span < narrowest_span) {
        slips.push_back(slip(ProblemCode::slip_span_narrow, "saddle_highest",
                             {{"span", length_figure(*span, figures.unit())},
                              {"limit", length_figure(narrowest_span, figures.unit())}},
                             {{"saddle_highest", {}}}));
    } else if (span && *span > widest_span) {
        slips.push_back(slip(ProblemCode::slip_span_wide, "saddle_highest",
                             {{"span", length_figure(*span, figures.unit())},
                              {"limit", length_figure(widest_span, figures.unit())}}));
    }
    if (const auto distance = distance_from_others(entry)) {
        slips.push_back(slip(ProblemCode::slip_unlike_others, "saddle_lowest",
                             {{"value", length_figure(*entry.bike->saddle_lowest, figures.unit())},
                              {"distance", length_figure(*distance, figures.unit())},
                              {"wheel", Number{*entry.bike->wheel->nominal_inches()}}}));
    }
    return slips;
}

std::optional<Length> SlipFinder::distance_from_others(const SlipQuestion& entry) {
    const auto peer_of = [](const Bike& bike) -> std::optional<Peer> {
        if (!bike.wheel || !bike.wheel->nominal_inches() || !bike.saddle_lowest)
            return std::nullopt;
        return Peer{*bike.wheel->nominal_inches(), bike.kind, *bike.saddle_lowest};
    };
    const auto of_list = [&](const Bike& bike) {
        const auto peer = peer_of(bike);
        return peer && is_usual(usual_lengths[lowest], peer->lowest, bike.wheel) ? peer : std::nullopt;
    };
    if (!peers_) {
        peers_.emplace();
        for (const Bike& bike : list_.catalogue.bikes) {
            if (const auto peer = of_list(bike))
                peers_->push_back(*peer);
        }
        heap_sort(*peers_);
    }
    const auto peer = peer_of(*entry.bike);
    if (!peer)
        return std::nullopt;
    const auto first =
        std::lower_bound(peers_->begin(), peers_->end(), Peer{peer->inches, peer->kind, Length()});
    const auto last = std::lower_bound(first, peers_->end(), Peer{peer->inches, peer->kind, beyond_all});
    auto not_counted = entry.replaced ? of_list(*entry.replaced) : std::nullopt;
    if (not_counted && !std::binary_search(first, last, *not_counted))
        not_counted.reset();
    const std::ptrdiff_t others = last - first - (not_counted ? 1 : 0);
    // The nearest is next to its place in the order; one of those there may not count.
    const auto place = std::lower_bound(first, last, *peer);
    Length nearest = beyond_all;
    for (auto other = place - std::min<std::ptrdiff_t>(2, place - first);
         other != place + std::min<std::ptrdiff_t>(2, last - place); ++other) {
        if (not_counted == *other)
            not_counted.reset();
        else
            nearest = std::min(
                nearest, Length::millimetres(std::abs((other->lowest - peer->lowest).in_millimetres())));
    }
    if (others < fewest_others || nearest <= farthest_from_others)
        return std::nullopt;
    return nearest;
}

} // namespace saddlerule
