// What holds for every check: names, texts, and what no bad input may bring about.
#include "core/fit/checks/check_limits.h"
#include "tests/core/fit/checks/checked_bike.h"

#include <algorithm>
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

/// A sentence with nothing left to fill in.
void check_sentence(const Finding& finding) {
    const std::string sentence = why(finding);
    CAPTURE(sentence);
    CHECK_FALSE(sentence.empty());
    CHECK(sentence.find_first_of("{}?") == std::string::npos);
    CHECK(sentence.find("  ") == std::string::npos);
    CHECK(sentence.find("()") == std::string::npos);
    CHECK(sentence.find("nan") == std::string::npos);
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

TEST_CASE("every reason has a code of its own and a sentence", "[checks]") {
    std::set<std::string_view> codes;
    for (std::size_t i = 0; i < check_reason_count(); ++i) {
        const CheckText& text = text_of(static_cast<CheckReason>(i));
        CHECK(codes.insert(text.code).second);
        CHECK_FALSE(text.sentence.empty());
        CHECK(std::count(text.sentence.begin(), text.sentence.end(), '{') ==
              std::count(text.sentence.begin(), text.sentence.end(), '}'));
    }
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
        check_sentence(result.finding);
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
        check_sentence(result.finding);
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
            CAPTURE(round, result.check->what, why(finding));
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
            check_sentence(finding);
        }
    }
}

TEST_CASE("figures are said with their unit and written with its name", "[checks]") {
    CHECK(figure_text(Figure(85_mm)) == "85 mm");
    CHECK(figure_text(Figure(Mass::kilograms(6.44))) == "6.4 kg");
    CHECK(figure_text(Figure(Angle::degrees(31.4))) == "31 degrees");
    CHECK(figure_text(Figure::ratio(0.346)) == "0.35");
    CHECK(figure_text(Figure::metres(2507_mm)) == "2.51 m");
    CHECK(field_suffix(FigureUnit::kilograms) == "kg");
    CHECK(field_suffix(FigureUnit::degrees) == "degrees");
}

TEST_CASE("what to measure is named as the list names it", "[checks]") {
    std::set<std::string_view> fields;
    for (int i = 0; i < measure_count; ++i) {
        CHECK(fields.insert(field_of(static_cast<Measure>(i))).second);
        CHECK_FALSE(words_of(static_cast<Measure>(i)).empty());
    }
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
