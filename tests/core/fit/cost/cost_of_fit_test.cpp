// Cost a month: (price - resale) / months of fit.
#include "core/fit/cost/cost_of_fit.h"

#include "tests/domain_checkers.h"

#include <cmath>

using namespace saddlerule;

namespace {

const Currency euro = *Currency::from_code("EUR");

std::optional<TimeOfFit> months(double p10, double mean, double p90) {
    return TimeOfFit{.mean = Days::months(mean), .p10 = Days::months(p10), .p90 = Days::months(p90)};
}

CostPerMonth cost(double price, const std::optional<TimeOfFit>& fits,
                  double resale_share = usual_resale_share) {
    const auto outcome = cost_per_month(Money::amount(price, euro), fits, resale_share);
    REQUIRE(std::holds_alternative<CostPerMonth>(outcome));
    return *std::get_if<CostPerMonth>(&outcome);
}

CostGap gap(const std::optional<Money>& price, const std::optional<TimeOfFit>& fits,
            double resale_share = 0.5) {
    const auto outcome = cost_per_month(price, fits, resale_share);
    REQUIRE(std::holds_alternative<CostGap>(outcome));
    return *std::get_if<CostGap>(&outcome);
}

} // namespace

TEST_CASE("half the price over 20 months", "[cost]") {
    const CostPerMonth result = cost(120.0, months(15.0, 20.0, 24.0));
    CHECK(result.expected == Money::amount(3.0, euro));
    CHECK(result.low == Money::amount(2.5, euro));
    REQUIRE(result.high);
    CHECK(*result.high == Money::amount(4.0, euro));
}

TEST_CASE("resale is the family's guess, from nothing to all of it", "[cost]") {
    CHECK(cost(120.0, months(15.0, 20.0, 24.0), 0.0).expected == Money::amount(6.0, euro));
    CHECK(cost(120.0, months(15.0, 20.0, 24.0), 1.0).expected == Money::amount(0.0, euro));
    CHECK(gap(Money::amount(120.0, euro), months(15.0, 20.0, 24.0), 1.01) ==
          CostGap::resale_share_out_of_range);
    CHECK(gap(Money::amount(120.0, euro), months(15.0, 20.0, 24.0), -0.01) ==
          CostGap::resale_share_out_of_range);
    CHECK(gap(Money::amount(120.0, euro), months(15.0, 20.0, 24.0), std::nan("")) ==
          CostGap::resale_share_out_of_range);
}

TEST_CASE("without a price there is no figure, and a bike for nothing costs nothing", "[cost]") {
    CHECK(gap({}, months(15.0, 20.0, 24.0)) == CostGap::no_price);
    CHECK(cost(0.0, months(15.0, 20.0, 24.0)).expected == Money::amount(0.0, euro));
}

TEST_CASE("a bike that hardly fits for a month has no monthly cost", "[cost]") {
    const Money price = Money::amount(120.0, euro);
    CHECK(gap(price, months(0.0, 0.0, 0.0)) == CostGap::fits_too_briefly);
    CHECK(gap(price, months(0.1, 0.9, 2.0)) == CostGap::fits_too_briefly);
    CHECK(gap(price, months(0.0, std::nan(""), 2.0)) == CostGap::fits_too_briefly);
    CHECK(gap(price, {}) == CostGap::no_forecast);
    CHECK(cost(120.0, months(1.0, 1.0, 1.0)).expected == Money::amount(60.0, euro));
}

TEST_CASE("a forecast whose short end is under a month has no upper bound", "[cost]") {
    CHECK_FALSE(cost(120.0, months(0.2, 6.0, 12.0)).high);
}

TEST_CASE("the cost stays in the currency of the price", "[cost]") {
    const Currency krona = *Currency::from_code("SEK");
    const auto outcome = cost_per_month(Money::amount(1200.0, krona), months(15.0, 20.0, 24.0));
    CHECK(std::get_if<CostPerMonth>(&outcome)->expected == Money::amount(30.0, krona));
}
