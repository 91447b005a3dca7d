// What a comparison of so many can find by Fisher's test.

#include "core/statistics/fisher.h"
#include "core/statistics/fisher_power.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::statistics;

TEST_CASE("the power of Fisher's test is that of adding up all tables in R", "[statistics][fisher]")
{
    // Recomputed with R 4.2.2, fisher.test over all pairs of counts weighted by dbinom; two decimals.
    struct Row { long size; double first; double second; double power; };
    for (const Row& row : {Row{20, 0.05, 0.15, 0.07}, Row{40, 0.05, 0.15, 0.18}, Row{60, 0.05, 0.15, 0.33},
                           Row{20, 0.05, 0.30, 0.45}, Row{40, 0.05, 0.30, 0.82}, Row{60, 0.05, 0.30, 0.95}}) {
        CAPTURE(row.size, row.second);
        const auto test = FisherPower::create(row.size, row.size);
        REQUIRE(test);
        CHECK_THAT(*test->power(row.first, row.second), WithinAbs(row.power, 0.005));
    }
}

TEST_CASE("power is the sum over the tables that the test itself rejects", "[statistics][fisher][property]")
{
    CHECK(rc::check("by enumeration", [] {
        const long first = *rc::gen::inRange(1L, 15L);
        const long second = *rc::gen::inRange(1L, 15L);
        const double p = *rc::gen::inRange(0, 101) / 100.0;
        const double q = *rc::gen::inRange(0, 101) / 100.0;
        const auto choose = [](long n, long k) {
            return std::exp(std::lgamma(static_cast<double>(n) + 1) - std::lgamma(static_cast<double>(k) + 1)
                            - std::lgamma(static_cast<double>(n - k) + 1));
        };
        const auto chance = [&](long n, long k, double share) {
            return choose(n, k) * std::pow(share, static_cast<double>(k)) * std::pow(1 - share, static_cast<double>(n - k));
        };
        double wanted = 0;
        for (long a = 0; a <= first; ++a)
            for (long c = 0; c <= second; ++c) {
                const auto test = fisherExact({a, first - a, c, second - c});
                if (test && test->twoSided <= 0.05)
                    wanted += chance(first, a, p) * chance(second, c, q);
            }
        const auto power = FisherPower::create(first, second);
        RC_ASSERT(power.has_value());
        RC_ASSERT(std::abs(power->power(p, q).value() - wanted) < 1e-9);
        // Nothing to find is found at most as often as the error allows.
        RC_ASSERT(power->power(p, p).value() <= 0.05 + 1e-12);
    }));
}

TEST_CASE("the smallest share that is found is found, and one below it is not", "[statistics][fisher]")
{
    for (const long size : {20L, 60L, 400L}) {
        CAPTURE(size);
        const auto test = FisherPower::create(size, size);
        REQUIRE(test);
        const auto found = test->smallestAbove(0.05);
        REQUIRE((found && *found));
        CHECK(*test->power(0.05, **found) >= 0.8);
        CHECK(*test->power(0.05, **found - 1e-3) < 0.8);
    }
    // Three against three can never reach an error of 5 %: the most extreme table has 2/20.
    const auto tiny = FisherPower::create(3, 3);
    REQUIRE(tiny);
    CHECK_FALSE(tiny->smallestAbove(0.0)->has_value());
    CHECK(*tiny->power(0, 1) == 0);
}

TEST_CASE("sizes, shares and errors that cannot be are refused", "[statistics][fisher][errors]")
{
    CHECK(FisherPower::create(0, 5).error().reason == Reason::outOfRange);
    CHECK(FisherPower::create(5, FisherPower::mostTrials + 1).error().reason == Reason::outOfRange);
    CHECK(FisherPower::create(5, 5, 0).error().reason == Reason::outOfRange);
    const auto test = FisherPower::create(5, 5);
    REQUIRE(test);
    CHECK(test->power(-0.1, 0.5).error().reason == Reason::outOfRange);
    CHECK(test->power(0.1, std::nan("")).error().reason == Reason::outOfRange);
    CHECK(test->smallestAbove(0.1, 1).error().reason == Reason::outOfRange);
}
