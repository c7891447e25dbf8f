#include "core/fit/growth/growth_constants.h"

#include "core/fit/growth/drift_constants.h"
#include "core/fit/growth/growth_limits.h"
#include "core/fit/growth/leg_length_table.h"
#include "core/fit/growth/leg_share_table.h"
#include "core/fit/growth/population.h"
#include "core/fit/growth/population_table.h"
#include "core/fit/growth/stature_table.h"
#include "core/fit/growth/weight_table.h"
#include "core/fit/rider/rider.h"

#include <string>
#include <utility>

namespace saddlerule {
namespace {

constexpr std::string_view assumption = "assumption";
constexpr std::string_view decision = "decision of this project";
constexpr std::string_view memory = "from memory";
constexpr std::string_view berkeley = "fitted on the odd-numbered children of the Berkeley growth study";
constexpr std::string_view dutch = "Fredriks and others, Arch Dis Child 2005;90:807-812";
constexpr std::string_view american = "Snyder and others 1977, UM-HSRI-77-17";
constexpr std::string_view british =
    "Freeman and others 1995, Cole and others 1998; leg length after Dangour and others 2002";
constexpr std::string_view cdc = "Kuczmarski and others 2002, CDC 2000 growth charts";
constexpr std::string_view by_age = "at 2, 3, ... 18 years";
constexpr std::string_view none = "pure number";

class ConstantList {
public:
    void add(std::string name, double value, std::string_view unit, std::string_view source,
             std::string_view reason) {
        all_.push_back({"growth." + std::move(name), {value}, unit, source, reason});
    }
    void add(std::string name, Length value, std::string_view source, std::string_view reason) {
        add(std::move(name), value.in_millimetres(), "mm", source, reason);
    }
    void add(std::string name, Days value, std::string_view source, std::string_view reason) {
        add(std::move(name), value.in_years(), "years", source, reason);
    }
    template <typename Values>
    void add_column(std::string name, const Values& values, std::string_view unit, std::string_view source,
                    std::string_view reason = by_age) {
        all_.push_back({"growth." + std::move(name), {values.begin(), values.end()}, unit, source, reason});
    }
    void add_lms(const std::string& name, const LmsTable& table, std::string_view unit,
                 std::string_view source) {
        add_column(name + ".l", column(table, &LmsTableRow::l), none, source);
        add_column(name + ".m", column(table, &LmsTableRow::m), unit, source);
        add_column(name + ".s", column(table, &LmsTableRow::s), none, source);
    }
    void add_survey(const std::string& name, const SurveyedLegsTable& table) {
        add_column(name + ".leg", column(table, &SurveyedLegsRow::leg), "mm", american);
        add_column(name + ".leg_sd", column(table, &SurveyedLegsRow::leg_sd), "mm", american);
        add_column(name + ".share", column(table, &SurveyedLegsRow::share), none, american);
        add_column(name + ".share_sd", column(table, &SurveyedLegsRow::share_sd), none, american);
    }
    void add_shares(const std::string& name, const LegShareTable& table) {
        add_column(name + ".mean", column(table, &LegShareRow::mean), none, dutch);
        add_column(name + ".sd", column(table, &LegShareRow::sd), none, dutch);
        add_column(name + ".p1", column(table, &LegShareRow::first_percentile), none, dutch);
        add_column(name + ".p99", column(table, &LegShareRow::last_percentile), none, dutch);
    }

    std::vector<StatedConstant> take() && { return std::move(all_); }

private:
    std::vector<StatedConstant> all_;
};

void add_limits(ConstantList& list) {
    using namespace growth_limits;
    list.add("youngest_pedaller", youngest_pedaller, decision,
             "youngest age that is tried where none is known");
    list.add("youngest_glider", youngest_glider, decision, "the same where the rider glides");
    list.add("oldest_guess", oldest_guess, decision, "oldest age that is tried where none is known");
    list.add("validated_from", validated_from, berkeley, "below, the spread of growth rests on stature");
    list.add("impossible_score", impossible_score, "standard deviations", decision,
             "legs farther from the median: the date of birth is left out");
    list.add("negligible_weight", negligible_weight, "share of 1", decision, "less likely ages are left out");
    list.add("shortest_leg", shortest_leg, decision, "shorter legs are scored as this");
    list.add("least_reading_sd", least_reading_sd, assumption, "no tape is better");
    list.add("shared_error_share", shared_error_share, "of a reading's sd", assumption,
             "one error is common to all readings of a day");
    list.add("beyond_chance", beyond_chance, "standard deviations", decision,
             "readings farther apart contradict each other");
    list.add("fresh_for", fresh_for, decision, "older readings say so");
    list.add("stature_sd", stature_sd, assumption, "a tape at the height of a child's head");
    list.add("stature_holds_for", stature_holds_for, decision,
             "older readings are held against the age, not the stature");
    list.add("far_out_stature", far_out_stature, "standard deviations", decision,
             "statures beyond are questioned");
    list.add("usual_stature", usual_stature, "standard deviations", decision,
             "ages at which a stature is farther out are not tried");
    list.add("shortest_rider", shortest_rider, memory, "shorter statures are questioned");
    list.add("tallest_rider", tallest_rider, memory, "taller statures are questioned");
    list.add("central_99", central_99, "standard deviations", "normal distribution",
             "readings outside are questioned");
    list.add("shortest_glider_inseam", shortest_glider_inseam, "third centile at one year",
             "shorter readings are questioned where nothing else is known");
    list.add("shortest_pedaller_inseam", shortest_pedaller_inseam, "third centile at two years",
             "the same for who pedals");
    list.add("longest_inseam", longest_inseam, assumption, "longer readings are questioned");
    list.add("fastest_growth", fastest_growth_mm_per_year, "mm a year", dutch,
             "medians stay below 70: readings that rise faster are questioned");
    list.add("usual_spread", usual_spread, decision, "readings of a day farther apart ask for another one");
}

void add_drift(ConstantList& list) {
    std::vector<double> from;
    std::vector<double> boys;
    std::vector<double> girls;
    for (const drift::Band& band : drift::bands) {
        from.push_back(band.from_year);
        boys.push_back(band.boys);
        girls.push_back(band.girls);
    }
    constexpr std::string_view per_root_year = "standard deviations a root year";
    list.add_column("drift.from", from, "years", berkeley, "from this age on, up to the next");
    list.add_column("drift.boys", boys, per_root_year, berkeley,
                    "from 18 to 21 assumed, below 8 from stature");
    list.add_column("drift.girls", girls, per_root_year, berkeley,
                    "from 18 to 21 assumed, below 8 from stature");
    list.add_column("maturing.rate", drift::maturing_rate, "standard deviations a year", berkeley,
                    "boys at 8, 9, ... 18 years");
    list.add("maturing.girls_ahead", drift::girls_ahead_years, "years", berkeley, "girls mature earlier");
    list.add("spread.boys", drift::boys_spread, "factor", berkeley,
             "makes bands of 80 % hold 80 % of boys from 8 on");
    list.add("spread.girls", drift::girls_spread, "factor", berkeley,
             "makes bands of 80 % hold 80 % of girls from 8 on");
}

} // namespace

std::vector<StatedConstant> growth_constants() {
    ConstantList list;
    list.add("crotch_doubt", crotch_doubt, assumption,
             "sd of the crotch around stature less sitting height: open between -20 and +15 mm");
    add_limits(list);
    add_drift(list);
    list.add_lms("leg.nl.boys", boys_leg_length, "mm", dutch);
    list.add_lms("leg.nl.girls", girls_leg_length, "mm", dutch);
    list.add_survey("us.boys", boys_us_legs);
    list.add_survey("us.girls", girls_us_legs);
    list.add_column("leg.gb.boys", boys_gb_legs, "mm", british);
    list.add_column("leg.gb.girls", girls_gb_legs, "mm", british);
    list.add("leg.gb.boys.s", boys_gb_spread, none, british, "spread at all ages");
    list.add("leg.gb.girls.s", girls_gb_spread, none, british, "spread at all ages");
    list.add_shares("share.nl.boys", boys_leg_share);
    list.add_shares("share.nl.girls", girls_leg_share);
    list.add_lms("stature.boys", boys_stature, "mm", cdc);
    list.add_lms("stature.girls", girls_stature, "mm", cdc);
    list.add_lms("weight.boys", boys_weight, "kg", cdc);
    list.add_lms("weight.girls", girls_weight, "kg", cdc);
    return std::move(list).take();
}

} // namespace saddlerule
