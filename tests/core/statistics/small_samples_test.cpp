// Quantiles, changes of paired answers, two means, and the distributions behind them.

#include "core/statistics/count_rate.h"
#include "core/statistics/distributions.h"
#include "core/statistics/paired_counts.h"
#include "core/statistics/quantile.h"
#include "core/statistics/welch.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

TEST_CASE("the incomplete beta, gamma and binomial sums are those of R 4.2.2", "[statistics]")
{
    CHECK_THAT(betaCdf(.3, 2, 5).value(), WithinAbs(0.579825, 1e-12));                  // pbeta(.3, 2, 5)
    CHECK_THAT(gammaCdf(2.5, 3).value(), WithinAbs(0.4561868841166704, 1e-13));         // pgamma(2.5, 3)
    CHECK_THAT(binomialCdf(2, 20, .1).value(), WithinAbs(0.6769268051894657, 1e-13));   // pbinom(2, 20, .1)
    CHECK(binomialCdf(20, 20, .1).value() == 1);
    CHECK(binomialCdf(3, 20, 0).value() == 1);
    CHECK(binomialCdf(3, 20, 1).value() == 0);
    CHECK_THAT(studentTwoSided(2.228138851986274, 10).value(), WithinAbs(0.05, 1e-13));  // qt(.975, 10)
    CHECK_FALSE(betaCdf(1.1, 2, 5));
    CHECK_FALSE(gammaCdf(-1, 3));
    CHECK_FALSE(binomialCdf(21, 20, .1));
    CHECK_FALSE(studentTwoSided(NAN, 10));
}

TEST_CASE("the 90th centile of twelve wafers is the handbook's, by three definitions", "[statistics][published]")
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.6.2, doi:10.18434/M32189.
    constexpr std::array wafers{95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682};
    constexpr double halfOfLastPrintedDigit = 0.00005;
    CHECK_THAT(quantile(wafers, .9, QuantileType::weibull).value(), WithinAbs(95.1981, halfOfLastPrintedDigit));
    CHECK_THAT(quantile(wafers, .9, QuantileType::linear).value(), WithinAbs(95.1957, halfOfLastPrintedDigit));
    CHECK_THAT(quantile(wafers, .9, QuantileType::unbiased).value(), WithinAbs(95.1972, halfOfLastPrintedDigit));
}

TEST_CASE("quantiles rise with p, stay within the values, and mirror", "[statistics][property]")
{
    CHECK(rc::check("quantile", [] {
        const auto whole = *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(-50, 51)));
        std::vector<double> values(whole.begin(), whole.end()), mirrored;
        for (const double value : values)
            mirrored.push_back(-value);
        for (const QuantileType type : {QuantileType::weibull, QuantileType::linear, QuantileType::unbiased}) {
            double before = quantile(values, 0, type).value();
            RC_ASSERT(before == *std::min_element(values.begin(), values.end()));
            for (int i = 1; i <= 20; ++i) {
                const double now = quantile(values, i / 20.0, type).value();
                RC_ASSERT(now >= before - 1e-12);
                RC_ASSERT(std::abs(now + quantile(mirrored, 1 - i / 20.0, type).value()) < 1e-9);
                before = now;
            }
            RC_ASSERT(before == *std::max_element(values.begin(), values.end()));
        }
    }));
}

TEST_CASE("quantiles refuse what they cannot answer", "[statistics][errors]")
{
    CHECK(quantile(std::vector<double>{}, .5).error().reason == Reason::notEnough);
    CHECK(quantile(std::vector<double>{1, NAN}, .5).error().reason == Reason::notFinite);
    CHECK(quantile(std::vector<double>{1}, 1.1).error().reason == Reason::outOfRange);
    CHECK(quantile(std::vector<double>{4}, .3).value() == 4);
}

TEST_CASE("approval changed as in Agresti's table", "[statistics][published]")
{
    // A. Agresti, Categorical Data Analysis, section 11.1: 794, 150 / 86, 570; recomputed with R 4.2.2
    // (mcnemar.test without correction, binom.test).
    const auto changed = mcNemar(150, 86);

    REQUIRE(changed);
    CHECK_THAT(changed->chiSquare, WithinAbs(17.3559, 0.00005));
    CHECK_THAT(changed->probability, WithinRel(3.0993e-05, 2e-5));
    CHECK_THAT(changed->exact, WithinRel(3.7159e-05, 2e-5));
    CHECK(mcNemar(86, 150)->exact == changed->exact);
    CHECK(mcNemar(5, 5)->exact == 1);
    CHECK(mcNemar(0, 0).error().reason == Reason::notEnough);
    CHECK(mcNemar(-1, 3).error().reason == Reason::outOfRange);
    // By hand: 0 of 3 has probability 1/8, twice that.
    CHECK_THAT(mcNemar(0, 3)->exact, WithinRel(0.25, 1e-12));
}

TEST_CASE("two sleeping drugs differ as in R's help", "[statistics][published]")
{
    // Cushny and Peebles 1905 as R's `sleep`; t.test(extra ~ group) of R 4.2.2.
    constexpr std::array first{.7, -1.6, -.2, -1.2, -.1, 3.4, 3.7, .8, 0., 2.};
    constexpr std::array second{1.9, .8, 1.1, .1, -.1, 4.4, 5.5, 1.6, 4.6, 3.4};

    const auto found = welch(first, second);

    REQUIRE(found);
    CHECK_THAT(found->t, WithinAbs(-1.86081, 0.000005));
    CHECK_THAT(found->degrees, WithinAbs(17.7765, 0.00005));
    CHECK_THAT(found->probability, WithinAbs(.079394, 0.0000005));
    // t.test() prints the limits as -3.3654832307 and 0.2054832307.
    CHECK_THAT(found->limits.low, WithinAbs(-3.3654832307, 5e-9));
    CHECK_THAT(found->limits.high, WithinAbs(0.2054832307, 5e-9));
    CHECK_THAT(welch(second, first)->t, WithinRel(-found->t, 1e-12));
    CHECK(welch(std::array{1.}, second).error().reason == Reason::notEnough);
    CHECK(welch(std::array{1., 1.}, std::array{2., 2.}).error().reason == Reason::notEnough);
    CHECK(welch(std::vector<double>{1, NAN}, second).error().reason == Reason::notFinite);
    CHECK(welch(first, second, 1).error().reason == Reason::outOfRange);
}

TEST_CASE("events per subject have Garwood's limits where they scatter as Poisson's do", "[statistics]")
{
    // R 4.2.2: poisson.test(10)$conf.int and poisson.test(0)$conf.int, divided by the subjects.
    const std::vector<long> ten{1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
    const auto rate = countRate(ten);
    REQUIRE(rate);
    CHECK(rate->rate == 0.5);
    CHECK(rate->scatter == 1);
    CHECK_THAT(rate->interval.low, WithinRel(4.795388696 / 20, 1e-9));
    CHECK_THAT(rate->interval.high, WithinRel(18.390356042 / 20, 1e-9));

    const auto none = countRate(std::vector<long>(50, 0));
    REQUIRE(none);
    CHECK(none->interval.low == 0);
    CHECK_THAT(none->interval.high, WithinRel(3.688879454 / 50, 1e-9));
    CHECK(countRate({}).error().reason == Reason::notEnough);
    CHECK(countRate(std::vector<long>{1, -1}).error().reason == Reason::outOfRange);
}

TEST_CASE("events that crowd on few subjects count for less", "[statistics]")
{
    std::vector<long> crowded(20, 0);
    crowded[3] = 5;
    crowded[9] = 5;
    const auto rate = countRate(crowded);
    REQUIRE(rate);
    CHECK_THAT(rate->scatter, WithinRel(45.0 / 19 / 0.5, 1e-12));  // variance / mean, by hand
    CHECK(rate->interval.low < 4.795388696 / 20);
    CHECK(rate->interval.high > 18.390356042 / 20);
    CHECK(rc::check("the rate lies within its limits", [] {
        const auto counts = *rc::gen::nonEmpty(rc::gen::container<std::vector<long>>(rc::gen::inRange<long>(0, 9)));
        const auto found = countRate(counts);
        RC_ASSERT(found.has_value());
        RC_ASSERT(found->interval.low <= found->rate + 1e-12);
        RC_ASSERT(found->rate <= found->interval.high + 1e-12);
    }));
}

TEST_CASE("a share that moved among the same subjects has an interval, and nobody moving is no certainty", "[statistics]")
{
    // By hand from the formula of Agresti and Min: n + 2 = 102, b = 4.5, c = 12.5.
    const auto moved = pairedDifference(4, 12, 100);
    REQUIRE(moved);
    CHECK_THAT(moved->value, WithinAbs(0.08, 1e-15));
    const double middle = 8.0 / 102;
    const double reach = 1.959963984540054 * std::sqrt((17.0 - 64.0 / 102) / 102 / 102);
    CHECK_THAT(moved->interval.low, WithinAbs(middle - reach, 1e-12));
    CHECK_THAT(moved->interval.high, WithinAbs(middle + reach, 1e-12));

    const auto still = pairedDifference(0, 0, 100);
    REQUIRE(still);
    CHECK(still->value == 0);
    CHECK(still->interval.high > 0.01);
    CHECK_THAT(still->interval.low, WithinAbs(-still->interval.high, 1e-15));
    CHECK(pairedDifference(3, 3, 5).error().reason == Reason::outOfRange);
    CHECK(pairedDifference(0, 0, 0).error().reason == Reason::outOfRange);
    CHECK(rc::check("the other way round it is the other way round", [] {
        const long b = *rc::gen::inRange<long>(0, 40);
        const long c = *rc::gen::inRange<long>(0, 40);
        const auto one = pairedDifference(b, c, 100);
        const auto other = pairedDifference(c, b, 100);
        RC_ASSERT(one && other);
        RC_ASSERT(std::abs(one->interval.low + other->interval.high) < 1e-12);
        RC_ASSERT(one->interval.low >= -1 && one->interval.high <= 1);
    }));
}
