#include "core/fit/checks/check.h"

#include "core/fit/checks/check_limits.h"
#include "core/fit/checks/check_reason.h"

#include <array>

namespace saddlerule {
namespace {

using enum CheckReason;

constexpr auto texts = std::to_array<CheckText>({
    {figure_missing, "figure_missing", "this cannot be checked without {missing}"},
    {seat_tube_impossible, "seat_tube_impossible",
     "a seat tube at {value} must be wrong: measure {missing} again"},
    {crank_reaches_floor, "crank_reaches_floor",
     "a crank of {value} with its axle {at_most} above the floor would hit the floor: measure {missing} "
     "again"},
    {saddle_below_bottom_bracket, "saddle_below_bottom_bracket",
     "the saddle would be below the bottom bracket: measure {missing} again"},

    {standover_clear, "standover_clear",
     "the top tube is {value} below the inside leg; {at_least} is enough"},
    {standover_tight, "standover_tight",
     "the top tube is only {value} below the inside leg; {at_least} is needed"},
    {standover_unsettled, "standover_unsettled",
     "the top tube is {top_tube} above the floor and should be {at_least} below the inside leg: measure the "
     "inside leg"},
    {standover_too_high, "standover_too_high",
     "the top tube is {over} higher than the inside leg: the rider cannot stand over it with both feet flat"},

    {bike_mass_easy, "bike_mass_easy", "the bike ({bike}) weighs {value} of its rider ({rider})"},
    {bike_mass_noticeable, "bike_mass_noticeable",
     "the bike ({bike}) weighs {value} of its rider ({rider}), more than {at_most}: starting and steering "
     "become hard work"},
    {bike_mass_heavy, "bike_mass_heavy",
     "the bike ({bike}) weighs {value} of its rider ({rider}), more than {at_most}: hard to hold when it "
     "tips"},

    {rider_within_limit, "rider_within_limit",
     "the rider weighs {value}, and the maker allows up to {at_most}"},
    {rider_may_exceed_limit, "rider_may_exceed_limit",
     "a child of this size weighs about {value}, many weigh more, and the maker allows up to {at_most}: "
     "weigh the child"},
    {rider_over_limit, "rider_over_limit",
     "the rider weighs {value}, more than the {at_most} the maker allows"},

    {leg_as_adults, "leg_as_adults",
     "with the pedal down the knee stays bent by {value}, as in practised adults ({at_least} to {at_most}); "
     "with the pedal up, by {most_bent}"},
    {leg_bent, "leg_bent",
     "with the pedal down the knee stays bent by {value}, more than in practised adults ({at_least} to "
     "{at_most}), as feet on the floor require; with the pedal up it bends by {most_bent}"},
    {leg_nearly_straight, "leg_nearly_straight",
     "with the pedal down the knee is bent by only {value}, where practised adults keep {at_least}: check "
     "that the hips do not rock from side to side"},
    {leg_out_of_reach, "leg_out_of_reach",
     "with the pedal down the leg is too short, if it has an adult's proportions: try a lower saddle"},
    {leg_cannot_fold, "leg_cannot_fold",
     "with the pedal up there is no room for the leg, if it has an adult's proportions"},

    {height_factor_within, "height_factor_within",
     "it is {saddle_to_pedal} from the saddle down to the pedal, {value} times the inside leg; adults use "
     "{at_most}"},
    {height_factor_over, "height_factor_over",
     "it is {saddle_to_pedal} from the saddle down to the pedal, {value} times the inside leg, more than "
     "adults use ({at_most})"},

    {height_factor_unsettled, "height_factor_unsettled",
     "it is {saddle_to_pedal} from the saddle down to the pedal, about {value} times the inside leg; adults "
     "use "
     "{at_most}: measure the inside leg"},

    {crank_usual, "crank_usual",
     "the crank ({crank}) is {value} of the inside leg; {at_least} to {at_most} is usual"},
    {crank_short, "crank_short",
     "the crank ({crank}) is {value} of the inside leg, shorter than usual ({at_least} to {at_most})"},
    {crank_long, "crank_long",
     "the crank ({crank}) is {value} of the inside leg, longer than usual ({at_least} to {at_most}): the "
     "knees come up high"},

    {crank_unsettled, "crank_unsettled",
     "the crank ({crank}) is about {value} of the inside leg; {at_least} to {at_most} is usual: measure the "
     "inside leg"},

    {lever_near, "lever_near", "the brake lever is {value} from the grip; up to {at_most} suits small hands"},
    {lever_far, "lever_far",
     "the brake lever is {value} from the grip, more than the {at_most} for young children (US: "
     "{lever_reach_us_sidewalk} on sidewalk bicycles, {lever_reach_us} on others): adjust it, or see if the "
     "child can pull it"},
    {lever_beyond_every_rule, "lever_beyond_every_rule",
     "the brake lever is {value} from the grip, more than any rule allows on any bicycle ({lever_reach_us}): "
     "a child cannot pull it safely"},

    {brakes_two_systems, "brakes_two_systems", "two separate brakes, one of them at the front"},
    {brakes_two_hands_only, "brakes_two_hands_only",
     "two separate brakes, both by hand; in the US a bike of this class needs a foot brake as well"},
    {brakes_no_front, "brakes_no_front",
     "no front brake: ISO 8098 asks for one at the front and one at the back"},
    {brakes_coaster_only, "brakes_coaster_only",
     "a coaster brake alone: enough for a sidewalk bicycle in the US, while ISO 8098 asks for a front brake "
     "too"},
    {brakes_front_only, "brakes_front_only", "a front brake alone: no rule allows that"},
    {brakes_rear_hand_only, "brakes_rear_hand_only",
     "a rear hand brake alone: no rule allows that on a bike for young children"},
    {brakes_none, "brakes_none", "it has pedals but no brakes at all: do not ride it like this"},
    {brakes_none_on_toy, "brakes_none_on_toy",
     "no brakes: by its saddle height it is a ride-on toy, which no rule for bicycles covers; keep it off "
     "slopes and roads"},

    {class_toy, "class_toy",
     "with its saddle at {value} at most it counts as a ride-on toy (up to {at_most}), not made for traffic"},
    {class_young_children, "class_young_children",
     "going by its highest saddle height, {value}, the rules for young children's bicycles apply (ISO 8098; "
     "in the US those for sidewalk bicycles); whether it meets them is not checked"},
    {class_at_both, "class_at_both",
     "its highest saddle height, {value}, is where two rules meet: a young adult bicycle by ISO 4210, a "
     "sidewalk bicycle in the US"},
    {class_young_adult, "class_young_adult",
     "going by its highest saddle height, {value}, the rules for young adult bicycles apply (ISO 4210), for "
     "larger hands: check that the child can reach the brake levers"},
    {class_full_size, "class_full_size",
     "going by its highest saddle height, {value}, it counts as a full-size bicycle (ISO 4210), for larger "
     "hands: check that the child can reach the brake levers"},

    {post_below_top, "post_below_top", "the saddle is {value} below its highest position"},
    {post_near_top, "post_near_top",
     "the saddle is {value} below its highest position: make sure the minimum-insertion mark stays inside "
     "the frame"},
    {post_above_top, "post_above_top",
     "the saddle would be {over} too high, past the minimum-insertion mark: do not ride it like that"},

    {gears_single, "gears_single",
     "one turn of the crank moves the bike {value} ({gear_inches}): {easy_speed} at {easy_cadence}, "
     "{brisk_speed} at {brisk_cadence}"},
    {gears_one_of_several, "gears_one_of_several",
     "in the gear listed one turn of the crank moves the bike {value} ({gear_inches}): {easy_speed} at "
     "{easy_cadence}, {brisk_speed} at {brisk_cadence}; it has other gears"},

    {hill_light, "hill_light",
     "a gentle climb ({slope} up for 1 along) takes a push of {value} of the rider's weight: light"},
    {hill_firm, "hill_firm",
     "a gentle climb ({slope} up for 1 along) takes a push of {value} of the rider's weight: firm"},
    {hill_heavy, "hill_heavy",
     "a gentle climb ({slope} up for 1 along) takes a push of {value} of the rider's weight: heavy, expect "
     "to walk up"},
});

/// The table is indexed by reason, so its rows must be in the order of the enumeration.
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
        return " (the rider's weight is estimated: weigh to be sure)";
    case FindingBasis::estimated_stature:
        return " (the rider's height is estimated)";
    case FindingBasis::estimated_inseam:
        return " (the inside leg is estimated: measure it to be sure)";
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
