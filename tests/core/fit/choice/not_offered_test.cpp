// One reason for every bike that is not offered.
#include "core/fit/choice/not_offered.h"

#include <catch2/catch.hpp>

#include <array>

using namespace saddlerule;

namespace {

constexpr std::array not_its_price{Unwanted::price_over};

} // namespace

TEST_CASE("an offered bike needs no reason", "[choice]") {
    OfferFacts facts;
    facts.offered = true;
    CHECK_FALSE(reason_not_offered(facts));
}

TEST_CASE("the weightiest reason is given, and every bike has one", "[choice]") {
    OfferFacts facts;
    facts.unwanted = not_its_price;
    facts.suits_stage = false;
    facts.verdict = Verdict::too_tall;
    facts.stopped = true;
    facts.standing = Standing::beaten;
    CHECK(reason_not_offered(facts) == NotOffered::not_wanted);
    facts.unwanted = {};
    CHECK(reason_not_offered(facts) == NotOffered::wrong_stage);
    facts.suits_stage = true;
    CHECK(reason_not_offered(facts) == NotOffered::too_tall);
    facts.verdict = Verdict::outgrown;
    CHECK(reason_not_offered(facts) == NotOffered::outgrown);
    facts.verdict = Verdict::not_measured;
    CHECK(reason_not_offered(facts) == NotOffered::not_measured);
    facts.verdict = Verdict::close_call;
    CHECK(reason_not_offered(facts) == NotOffered::check_stops);
    facts.stopped = false;
    facts.available = false;
    CHECK(reason_not_offered(facts) == NotOffered::not_available);
    facts.available = true;
    CHECK(reason_not_offered(facts) == NotOffered::close_call);
    facts.verdict = Verdict::fits_now;
    CHECK(reason_not_offered(facts) == NotOffered::beaten);
    facts.standing = Standing::unbeaten;
    CHECK(reason_not_offered(facts) == NotOffered::behind_in_order);
}
