// What holds for every check: names, figures, and what no bad input may bring about.
#include "core/fit/checks/check_limits.h"
#include "tests/core/fit/checks/checked_bike.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>
#include <set>

using namespace saddlerule;
using namespace saddlerule::testing;
using namespace saddlerule::literals;

namespace {

std::vector<std::string_view> names_of(const std::vector<CheckResult>& results) {
    std::vector<std::string_view> names;
    for (const CheckResult& result : results)
        names.push_back(result.check->what);
    return names;
}

/// Every figure that the sentence of a reason may name is one.
void check_figures(const Finding& finding) {
    CHECK_FALSE(code_of(finding.reason).empty());
    const auto finite = [](const std::optional<Figure>& figure) {
        return !figure || std::isfinite(figure->value());
    };
    CHECK(finite(finding.figure));
    CHECK(finite(finding.limit.at_least));
    CHECK(finite(finding.limit.at_most));
    for (const NamedFigure& further : finding.further)
        CHECK(std::isfinite(further.figure.value()));
}

/// A length that somebody may have typed: usual, absent, zero, negative, in the wrong unit, or not a number.
std::optional<Length> typed(std::mt19937& random, double usual_mm) {
    switch (random() % 8) {
    case 0:
        return std::nullopt;
    case 1:
        return 0_mm;
    case 2:
        return Length::millimetres(-usual_mm);
    case 3:
        return Length::millimetres(usual_mm / 10.0);
    case 4:
        return Length::millimetres(usual_mm * 10.0);
    case 5:
        return Length::millimetres(std::numeric_limits<double>::quiet_NaN());
    default:
        return Length::millimetres(usual_mm * (0.5 + static_cast<double>(random() % 1000) / 1000.0));
    }
}

std::optional<Mass> typed_mass(std::mt19937& random, double usual_kg) {
    const auto figure = typed(random, usual_kg);
    return figure ? std::optional(Mass::kilograms(figure->in_millimetres())) : std::nullopt;
}

} // namespace

TEST_CASE("every check has a name of its own and a source", "[checks]") {
    std::set<std::string_view> names;
    for (const Check& check : all_checks()) {
        CHECK(names.insert(check.what).second);
        CHECK_FALSE(check.source.empty());
    }
    CHECK(names.size() == all_checks().size());
}

TEST_CASE("every reason has a code of its own", "[checks]") {
    std::set<std::string_view> codes;
    for (std::size_t i = 0; i < check_reason_count(); ++i)
        CHECK(codes.insert(code_of(static_cast<CheckReason>(i))).second);
}

TEST_CASE("every limit names its source and its reason", "[checks]") {
    std::set<std::string_view> names;
    for (const StatedFigure& limit : stated_limits()) {
        CHECK(names.insert(limit.name).second);
        CHECK_FALSE(limit.source.empty());
        CHECK_FALSE(limit.reason.empty());
        CHECK(limit.value.value() > 0.0);
    }
}

TEST_CASE("a measured pedal bike gets every check, each with an answer", "[checks]") {
    const Bike bike = measured_bike();
    const CheckedRider rider = measured_rider();
    const auto results = check_bike({.rider = rider, .bike = bike, .saddle_setting = 500_mm});
    REQUIRE(results.size() == all_checks().size());
    for (const CheckResult& result : results) {
        CAPTURE(result.check->what);
        CHECK(result.finding.state != CheckState::unknown);
        CHECK(result.finding.to_measure.empty());
        check_figures(result.finding);
    }
}

TEST_CASE("a bike of which nothing is known passes nothing", "[checks]") {
    Bike bike;
    bike.saddle_lowest = 495_mm;
    CheckedRider rider = measured_rider();
    rider.mass.reset();
    rider.stature.reset();
    const auto results = check_bike({.rider = rider, .bike = bike, .saddle_setting = 500_mm});
    REQUIRE(results.size() == all_checks().size());
    for (const CheckResult& result : results) {
        CAPTURE(result.check->what);
        CHECK(result.finding.state == CheckState::unknown);
        CHECK_FALSE(result.finding.to_measure.empty());
        check_figures(result.finding);
    }
}

TEST_CASE("a balance bike is not asked for pedals, crank, gears or brakes", "[checks]") {
    Bike bike;
    bike.kind = BikeKind::balance;
    bike.saddle_lowest = 360_mm;
    bike.saddle_highest = 460_mm;
    const CheckedRider rider = measured_rider();
    const auto results = check_bike({.rider = rider, .bike = bike, .saddle_setting = 450_mm});
    CHECK(names_of(results) ==
          std::vector<std::string_view>{"standover", "bike_mass", "rider_mass_limit", "top_of_post"});
}

TEST_CASE("no typing slip makes an ok out of a figure that is not there", "[checks]") {
    std::mt19937 random(20261125);
    const CheckedRider rider = measured_rider();
    for (int round = 0; round < 4000; ++round) {
        Bike bike = measured_bike();
        bike.standover = typed(random, 410.0);
        bike.lever_reach = typed(random, 55.0);
        bike.crank = typed(random, 102.0);
        bike.bottom_bracket_height = typed(random, 215.0);
        bike.saddle_highest = typed(random, 630.0);
        bike.mass = typed_mass(random, 5.4);
        bike.rider_mass_limit = typed_mass(random, 50.0);
        bike.seat_tube_angle_degrees = random() % 4 == 0 ? std::numeric_limits<double>::quiet_NaN()
                                                         : static_cast<double>(random() % 180);
        const auto setting = typed(random, 500.0);
        for (const CheckResult& result :
             check_bike({.rider = rider, .bike = bike, .saddle_setting = setting})) {
            const Finding& finding = result.finding;
            CAPTURE(round, result.check->what, code_of(finding.reason));
            if (finding.figure)
                CHECK(std::isfinite(finding.figure->value()));
            const auto taken = [](const auto& figure) {
                return figure && *figure > decltype(*figure + *figure){};
            };
            if (finding.state != CheckState::unknown) {
                if (result.check->what == "standover")
                    CHECK(taken(bike.standover));
                if (result.check->what == "bike_mass" || result.check->what == "first_hill")
                    CHECK(taken(bike.mass));
                if (result.check->what == "rider_mass_limit")
                    CHECK(taken(bike.rider_mass_limit));
                if (result.check->what == "lever_reach")
                    CHECK(taken(bike.lever_reach));
                if (result.check->what == "crank" || result.check->what == "first_hill")
                    CHECK(taken(bike.crank));
                if (result.check->what == "leg_extension" || result.check->what == "saddle_height_factor")
                    CHECK((taken(bike.crank) && taken(bike.bottom_bracket_height) && taken(setting) &&
                           *bike.crank < *bike.bottom_bracket_height));
                if (result.check->what == "top_of_post" || result.check->what == "saddle_class")
                    CHECK(taken(bike.saddle_highest));
            }
            check_figures(finding);
        }
    }
}

TEST_CASE("figures are written with the name of their unit", "[checks]") {
    CHECK(field_suffix(Figure(85_mm).unit()) == "mm");
    CHECK(field_suffix(Figure(Mass::kilograms(6.44)).unit()) == "kg");
    CHECK(field_suffix(Figure(Angle::degrees(31.4)).unit()) == "degrees");
    CHECK(field_suffix(Figure::ratio(0.346).unit()) == "ratio");
    CHECK(field_suffix(Figure::metres(2507_mm).unit()) == "metres");
    CHECK(field_suffix(Figure::turns_per_minute(60.0).unit()) == "turns_per_minute");
}

TEST_CASE("what to measure is named as the list names it", "[checks]") {
    std::set<std::string_view> fields;
    for (int i = 0; i < measure_count; ++i)
        CHECK(fields.insert(field_of(static_cast<Measure>(i))).second);
    CHECK(fields.contains("saddle_highest"));
    CHECK(fields.contains("rider.mass_kg"));
}

TEST_CASE("the rider of the checks is the rider of the fit, without the sole", "[checks]") {
    Rider rider;
    rider.accuracy.sole = 15_mm;
    rider.mass = Mass::kilograms(18.5);
    const CheckedRider checked = CheckedRider::of(rider, 495_mm, {});
    check_length(checked.inseam_without_shoes, 480_mm);
    check_length(checked.sole, 15_mm);
    CHECK(checked.mass == rider.mass);
    CHECK_FALSE(checked.off_road);
}
