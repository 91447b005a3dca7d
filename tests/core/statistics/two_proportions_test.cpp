// Two proportions against published values, and the laws they must keep.
//
// Sources: R. G. Newcombe, "Interval estimation for the difference between independent proportions:
// comparison of eleven methods", Statistics in Medicine 17 (1998) 873-890, table II, method 10.
// R. A. Fisher, "The Design of Experiments", 1935, chapter 2 (the lady tasting tea), and "Statistical
// Methods for Research Workers" (convictions of criminal twins), both as in R 4.2.2 help(fisher.test).
//
// The probabilities are those that R prints. Its odds ratios and limits are not: fisher.test() stops
// its root search at a relative 1e-4, and prints 621.9337505 where the equation is solved by 626.2435.
// The figures here solve R's own equations with uniroot(tol = 1e-14) over the logarithm of the odds.

#include "core/statistics/fisher.h"
#include "core/statistics/two_proportions.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

namespace {

Counts anyCounts(long most)
{
    const long total = *rc::gen::inRange(1L, most);
    return {*rc::gen::inRange(0L, total + 1), total};
}

}  // namespace

TEST_CASE("the difference of two proportions is the published one", "[statistics][published]")
{
    struct Row { Counts first; Counts second; double low; double high; };
    const auto row = GENERATE(Row{{56, 70}, {48, 80}, .0524, .3339}, Row{{9, 10}, {3, 10}, .1705, .8090},
                              Row{{10, 10}, {0, 20}, .6791, 1.0000});

    const auto found = newcombe(row.first, row.second);

    REQUIRE(found);
    CHECK_THAT(found->low, WithinAbs(row.low, 0.00005 + 1e-9));
    CHECK_THAT(found->high, WithinAbs(row.high, 0.00005 + 1e-9));
}

TEST_CASE("exchanging the two groups turns the difference round and nothing else", "[statistics][property]")
{
    CHECK(rc::check("exchange", [] {
        const Counts a = anyCounts(2000), b = anyCounts(2000);
        const Difference there = newcombe(a, b).value(), back = newcombe(b, a).value();
        RC_ASSERT(std::abs(there.low + back.high) < 1e-12 && std::abs(there.high + back.low) < 1e-12);
        const Difference others = newcombe({a.total - a.events, a.total}, {b.total - b.events, b.total}).value();
        RC_ASSERT(std::abs(there.low + others.high) < 1e-12 && std::abs(there.high + others.low) < 1e-12);
        RC_ASSERT(there.low >= -1 && there.low <= there.difference && there.difference <= there.high && there.high <= 1);
        RC_ASSERT(std::abs(probabilityLower(a, b).value() + probabilityLower(b, a).value() - 1) < 1e-7);
    }));
}

TEST_CASE("the probability that the first proportion is lower agrees with R's integral", "[statistics]")
{
    // R 4.2.2: integrate(function(x) dbeta(x,1.5,29.5) * pbeta(x,5.5,25.5,lower=FALSE), 0, 1)
    CHECK_THAT(probabilityLower({1, 30}, {5, 30}).value(), WithinAbs(0.960812332181, 1e-8));
    CHECK_THAT(probabilityLower({7, 19}, {7, 19}).value(), WithinAbs(0.5, 1e-8));
}

TEST_CASE("Fisher's test finds the lady tasting tea undecided", "[statistics][published]")
{
    const auto test = fisherExact({3, 1, 1, 3});

    REQUIRE(test);
    CHECK_THAT(test->twoSided, WithinRel(34.0 / 70, 1e-12));
    CHECK_THAT(test->greater, WithinRel(17.0 / 70, 1e-12));
    CHECK_THAT(test->less, WithinRel(69.0 / 70, 1e-12));
    CHECK_THAT(test->oddsRatio.value(), WithinRel(6.40831965819967, 1e-10));  // fisher.test: 6.408309
    CHECK_THAT(test->oddsRatioLow, WithinRel(0.211735595446579, 1e-10));      // fisher.test: 0.2117329
    CHECK_THAT(test->oddsRatioHigh.value(), WithinRel(626.243530588814, 1e-10));  // fisher.test: 621.9337505
    // With all of the error on one side; fisher.test(alternative = "greater") prints 0.3135693.
    CHECK_THAT(fisherExact({3, 1, 1, 3}, 0.90)->oddsRatioLow, WithinRel(0.3135693, 1e-4));
}

TEST_CASE("Fisher's test finds twins of one egg convicted together more often", "[statistics][published]")
{
    const auto test = fisherExact({2, 10, 15, 3});

    REQUIRE(test);
    CHECK_THAT(test->twoSided, WithinRel(0.000536724119143, 1e-9));
    CHECK_THAT(test->less, WithinRel(0.000465180943363, 1e-9));
    CHECK_THAT(test->oddsRatio.value(), WithinRel(0.04693663904968, 1e-10));    // fisher.test: 0.046936609
    CHECK_THAT(test->oddsRatioLow, WithinRel(0.00331716395065736, 1e-10));    // fisher.test: 0.003325764
    CHECK_THAT(test->oddsRatioHigh.value(), WithinRel(0.363189602356681, 1e-10));  // fisher.test: 0.363182271
    CHECK_THAT(fisherExact({1, 29, 5, 25})->twoSided, WithinAbs(0.194509772119, 1e-9));
}

TEST_CASE("an odds ratio without an event on one side has a limit on the other only", "[statistics]")
{
    const auto none = fisherExact({0, 10, 4, 6});
    REQUIRE(none);
    CHECK(none->oddsRatio == 0.0);
    CHECK(none->oddsRatioLow == 0.0);
    CHECK_THAT(none->oddsRatioHigh.value(), WithinRel(1.29802246900634, 1e-10));  // fisher.test: 1.298045
    const auto all = fisherExact({4, 6, 0, 10});
    REQUIRE(all);
    CHECK_FALSE(all->oddsRatio);
    CHECK_FALSE(all->oddsRatioHigh);
    CHECK_THAT(all->oddsRatioLow, WithinRel(1 / 1.29802246900634, 1e-10));
}

TEST_CASE("Fisher's test does not care how the table is turned", "[statistics][property]")
{
    CHECK(rc::check("turned", [] {
        const auto count = rc::gen::inRange(0L, 60L);
        const TwoByTwo t{*count, *count, *count, *count};
        RC_PRE(t.a + t.b > 0 && t.c + t.d > 0 && t.a + t.c > 0 && t.b + t.d > 0);
        const FisherTest own = fisherExact(t).value();
        const FisherTest sideways = fisherExact({t.a, t.c, t.b, t.d}).value();
        const FisherTest exchanged = fisherExact({t.c, t.d, t.a, t.b}).value();
        RC_ASSERT(std::abs(own.twoSided - sideways.twoSided) < 1e-10);
        RC_ASSERT(std::abs(own.twoSided - exchanged.twoSided) < 1e-10);
        RC_ASSERT(std::abs(own.less - exchanged.greater) < 1e-10);
        RC_ASSERT(own.twoSided > 0 && own.twoSided <= 1);
        // Both tails hold the table itself.
        RC_ASSERT(own.less + own.greater > 1 - 1e-10);
        RC_ASSERT(own.twoSided >= std::min(own.less, own.greater) - 1e-10);
        if (own.oddsRatio)
            RC_ASSERT(own.oddsRatioLow <= *own.oddsRatio * (1 + 1e-9));
        if (own.oddsRatio && own.oddsRatioHigh)
            RC_ASSERT(*own.oddsRatio <= *own.oddsRatioHigh * (1 + 1e-9));
    }));
}

TEST_CASE("a table with an empty row or column says nothing, and impossible counts are refused", "[statistics][errors]")
{
    CHECK(fisherExact({0, 0, 4, 6}).error().reason == Reason::notEnough);
    CHECK(fisherExact({0, 4, 0, 6}).error().reason == Reason::notEnough);
    CHECK(fisherExact({-1, 4, 1, 6}).error().reason == Reason::outOfRange);
    CHECK(fisherExact({maximumFisherTotal, 4, 1, 6}).error().reason == Reason::outOfRange);
    CHECK(fisherExact({1, 4, 1, 6}, 1).error().reason == Reason::outOfRange);
    CHECK(newcombe({1, 0}, {1, 2}).error().reason == Reason::outOfRange);
    CHECK(newcombe({1, 2}, {3, 2}).error().reason == Reason::outOfRange);
    CHECK(probabilityLower({1, 2}, {0, 0}).error().reason == Reason::outOfRange);
}
