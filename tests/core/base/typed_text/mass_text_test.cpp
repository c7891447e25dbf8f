// Weights as people type them. Outside check: the pound of the international agreement of 1959, 0.45359237 kg, and the handbook's
// 1 kg = 2.20462 lb (NIST SP 811, appendix B.8, from memory).
#include "core/base/typed_text/mass_text.h"

#include <catch2/catch.hpp>

#include <string>

using namespace saddlerule;

namespace {

double kilograms(std::string_view text, MassUnit bare = MassUnit::kilogram) {
    auto mass = read_mass(text, bare);
    CAPTURE(std::string(text));
    REQUIRE(mass);
    return mass->in_kilograms();
}

ProblemCode refused(std::string_view text) {
    auto mass = read_mass(text, MassUnit::kilogram);
    CAPTURE(std::string(text));
    REQUIRE_FALSE(mass);
    return mass.problem().code;
}

} // namespace

TEST_CASE("weights are read in kilograms and pounds, a bare number in the stated unit", "[typed_text]") {
    CHECK(kilograms("18") == 18.0);
    CHECK(kilograms("18,5 kg") == 18.5);
    CHECK(kilograms(" 18.5kg ") == 18.5);
    CHECK(kilograms("18 kg", MassUnit::pound) == 18.0);
    CHECK(kilograms("40", MassUnit::pound) == Approx(18.1436948).epsilon(1e-12));
    CHECK(kilograms("40 lb") == Approx(18.1436948).epsilon(1e-12));
    CHECK(kilograms("2.20462 lbs.") == Approx(1.0).epsilon(2e-6));
    CHECK(kilograms("1 Pound") == Approx(0.45359237).epsilon(1e-12));
}

TEST_CASE("what is no weight is refused with a code", "[typed_text]") {
    CHECK(refused("") == ProblemCode::figure_empty);
    CHECK(refused("light") == ProblemCode::figure_not_a_number);
    CHECK(refused("1.2.3") == ProblemCode::figure_not_a_number);
    CHECK(refused("19 1/2") == ProblemCode::figure_not_a_number);
    CHECK(refused("3 stone") == ProblemCode::figure_unit_unknown);
    CHECK(refused("-4") == ProblemCode::figure_negative);
    CHECK(refused("99999999") == ProblemCode::figure_too_large);
}

TEST_CASE("a text is a mass of its own only where it names its unit", "[typed_text]") {
    CHECK(mass_with_unit("14 lb") == Mass::pounds(14));
    CHECK(mass_with_unit("6,4 kg") == Mass::kilograms(6.4));
    CHECK_FALSE(mass_with_unit("6.4"));
    CHECK_FALSE(mass_with_unit("14 stone"));
    CHECK_FALSE(mass_with_unit("lb"));
}
