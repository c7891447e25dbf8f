#include "core/fit/checks/check.h"

#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/check_reason.h"

#include <array>

namespace saddlerule {
namespace {

using enum CheckReason;

constexpr auto texts = std::to_array<CheckText>({
    {figure_missing, "figure_missing", "cannot be judged without {missing}"},
    {seat_tube_impossible, "seat_tube_impossible",
     "a seat tube at {value} cannot be right: measure {missing} again"},
    {crank_reaches_floor, "crank_reaches_floor",
     "a crank of {value} with its axle {at_most} above the floor would strike the floor: measure {missing} "
     "again"},
    {saddle_below_bottom_bracket, "saddle_below_bottom_bracket",
     "the saddle would stand below the bottom bracket: measure {missing} again"},

    {standover_clear, "standover_clear", "the top tube is {value} below the inseam; {at_least} is enough"},
    {standover_tight, "standover_tight",
     "the top tube is only {value} below the inseam, where {at_least} is wanted"},
    {standover_too_high, "standover_too_high",
     "the top tube is {over} higher than the inseam: the rider cannot stand over it with both feet flat"},

    {bike_mass_easy, "bike_mass_easy", "the bike ({bike}) weighs {value} of its rider ({rider})"},
    {bike_mass_noticeable, "bike_mass_noticeable",
     "the bike ({bike}) weighs {value} of its rider ({rider}), more than {at_most}: starting and steering "
     "turn to work"},
    {bike_mass_heavy, "bike_mass_heavy",
     "the bike ({bike}) weighs {value} of its rider ({rider}), more than {at_most}: hard to hold when it "
     "tips"},

    {rider_within_limit, "rider_within_limit", "the rider weighs {value}, and the maker allows {at_most}"},
    {rider_may_exceed_limit, "rider_may_exceed_limit",
     "a rider of this age weighs about {value}, many weigh more, and the maker allows {at_most}: weigh the "
     "rider"},
    {rider_over_limit, "rider_over_limit",
     "the rider weighs {value}, more than the {at_most} the maker allows"},

    {leg_as_adults, "leg_as_adults",
     "with the pedal down the knee stays bent by {value}, as trained adults ride ({at_least} to {at_most}); "
     "pedal up, by {most_bent}"},
    {leg_bent, "leg_bent",
     "with the pedal down the knee stays bent by {value}, more than trained adults ride with ({at_least} to "
     "{at_most}): what feet on the floor cost; pedal up, it bends by {most_bent}"},
    {leg_nearly_straight, "leg_nearly_straight",
     "with the pedal down the knee is bent by {value} only, where trained adults keep {at_least}: look "
     "whether the hips rock from side to side"},
    {leg_out_of_reach, "leg_out_of_reach",
     "with the pedal down the leg is too short for it, as far as an adult's proportions hold: try a lower "
     "saddle"},
    {leg_cannot_fold, "leg_cannot_fold",
     "with the pedal up there is no room for the leg, as far as an adult's proportions hold"},

    {height_factor_within, "height_factor_within",
     "from the saddle down to the pedal it is {saddle_to_pedal}, {value} times the inseam; adults are set up "
     "at {at_most}"},
    {height_factor_over, "height_factor_over",
     "from the saddle down to the pedal it is {saddle_to_pedal}, {value} times the inseam, more than adults "
     "are set up with ({at_most})"},

    {crank_usual, "crank_usual",
     "the crank ({crank}) is {value} of the inseam; {at_least} to {at_most} is usual"},
    {crank_short, "crank_short",
     "the crank ({crank}) is {value} of the inseam, shorter than usual ({at_least} to {at_most})"},
    {crank_long, "crank_long",
     "the crank ({crank}) is {value} of the inseam, longer than usual ({at_least} to {at_most}): knees come "
     "up high"},

    {lever_near, "lever_near", "the brake lever is {value} from the grip; up to {at_most} suits small hands"},
    {lever_far, "lever_far",
     "the brake lever is {value} from the grip, more than the {at_most} for young children (US: "
     "{lever_reach_us_sidewalk} on sidewalk bicycles, {lever_reach_us} on others): adjust it, or try whether "
     "the child can pull it"},
    {lever_beyond_every_rule, "lever_beyond_every_rule",
     "the brake lever is {value} from the grip, more than any rule allows on any bicycle ({lever_reach_us}): "
     "a child cannot pull it safely"},

    {brakes_two_systems, "brakes_two_systems", "two brakes that work on their own, one of them in front"},
    {brakes_two_hands_only, "brakes_two_hands_only",
     "two brakes that work on their own, both by hand; in the US a bike of this class needs a foot brake as "
     "well"},
    {brakes_no_front, "brakes_no_front", "no brake in front: ISO 8098 wants one there and one behind"},
    {brakes_coaster_only, "brakes_coaster_only",
     "a coaster brake alone: enough for a sidewalk bicycle in the US, while ISO 8098 wants a second one in "
     "front"},
    {brakes_front_only, "brakes_front_only", "a front brake alone: no rule is content with that"},
    {brakes_none, "brakes_none", "no brake at all, and it has pedals"},
    {brakes_none_on_toy, "brakes_none_on_toy",
     "no brake at all: its saddle is that of a ride-on toy, of which no rule for bicycles asks one; keep it "
     "off slopes and roads"},

    {class_toy, "class_toy",
     "with its saddle at {value} at most it counts as a ride-on toy (up to {at_most}), not made for traffic"},
    {class_young_children, "class_young_children",
     "a bicycle for young children by its highest saddle, {value} (ISO 8098); in the US a sidewalk bicycle"},
    {class_at_both, "class_at_both",
     "its highest saddle, {value}, is where two rules meet: a young adult bicycle by ISO 4210, a sidewalk "
     "bicycle in the US"},
    {class_young_adult, "class_young_adult",
     "a young adult bicycle by its highest saddle, {value} (ISO 4210): made for grown hands, so look at the "
     "levers"},
    {class_full_size, "class_full_size",
     "a full-size bicycle by its highest saddle, {value} (ISO 4210): made for grown hands, so look at the "
     "levers"},

    {post_below_top, "post_below_top", "the saddle stands {value} below its highest"},
    {post_near_top, "post_near_top",
     "the saddle stands {value} below its highest: make sure the minimum-insertion mark stays inside the "
     "frame"},
    {post_above_top, "post_above_top",
     "the saddle would stand {over} above its highest, past the minimum-insertion mark"},

    {gears_single, "gears_single",
     "one turn of the crank goes {value} ({gear_inches}): {easy_speed} at {easy_cadence}, {brisk_speed} at "
     "{brisk_cadence}"},
    {gears_one_of_several, "gears_one_of_several",
     "in the gear of the list one turn of the crank goes {value} ({gear_inches}): {easy_speed} at "
     "{easy_cadence}, {brisk_speed} at {brisk_cadence}; it has others"},

    {hill_light, "hill_light",
     "a gentle climb ({slope} up for 1 along) takes a push of {value} of the rider's weight: light"},
    {hill_firm, "hill_firm",
     "a gentle climb ({slope} up for 1 along) takes a push of {value} of the rider's weight: firm"},
    {hill_heavy, "hill_heavy",
     "a gentle climb ({slope} up for 1 along) takes a push of {value} of the rider's weight: heavy, expect "
     "to walk it"},
});

/// The table is indexed by reason, so its rows must stand in the order of the enumeration.
constexpr bool rows_in_order() {
    for (std::size_t i = 0; i < texts.size(); ++i) {
        if (static_cast<std::size_t>(texts[i].reason) != i)
            return false;
    }
    return true;
}
static_assert(rows_in_order());

std::string missing_words(const MeasureSet& missing) {
    std::string words;
    missing.for_each([&](Measure measure) {
        words += words.empty() ? "" : ", ";
        words += words_of(measure);
    });
    return words;
}

/// The text of a `{name}`; empty for one that the finding does not have.
std::string figure_named(std::string_view name, const Finding& finding) {
    const auto text = [](const std::optional<Figure>& figure) { return figure ? figure_text(*figure) : ""; };
    if (name == "value")
        return text(finding.figure);
    if (name == "at_least")
        return text(finding.limit.at_least);
    if (name == "at_most")
        return text(finding.limit.at_most);
    if (name == "missing")
        return missing_words(finding.to_measure);
    for (const NamedFigure& further : finding.further) {
        if (further.name == name)
            return figure_text(further.figure);
    }
    for (const StatedFigure& limit : stated_limits()) {
        if (limit.name == name)
            return figure_text(limit.value);
    }
    return {};
}

std::string_view basis_remark(FindingBasis basis) {
    switch (basis) {
    case FindingBasis::estimated_rider_mass:
        return " (the rider's weight is estimated from age and sex: weigh to be sure)";
    case FindingBasis::estimated_stature:
        return " (the rider's height is estimated from the inseam)";
    case FindingBasis::measured:
        break;
    }
    return "";
}

} // namespace

const CheckText& text_of(CheckReason reason) {
    return texts[static_cast<std::size_t>(reason)];
}

std::size_t check_reason_count() {
    return texts.size();
}

std::string why(const Finding& finding) {
    std::string result;
    std::string_view text = text_of(finding.reason).sentence;
    for (std::size_t open = text.find('{'); open != std::string_view::npos; open = text.find('{')) {
        const std::size_t close = text.find('}', open);
        result += text.substr(0, open);
        result += figure_named(text.substr(open + 1, close - open - 1), finding);
        text.remove_prefix(close + 1);
    }
    result += text;
    result += basis_remark(finding.basis);
    return result;
}

} // namespace saddlerule
