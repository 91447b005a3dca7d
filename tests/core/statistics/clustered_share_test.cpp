// Shares whose readings come in groups.

#include "core/statistics/clustered_share.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <random>
#include <utility>
#include <vector>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::statistics;

TEST_CASE("a share over groups of unequal size, worked by hand in whole fractions", "[statistics][clustered]")
{
    // p = 8/50, sum of (events - p readings)^2 = 11.184, var = 5/4 x 11.184/50^2 = 699/125000,
    // p (1 - p) / var = 5600/233, times (z/t)^2 with 4 degrees of freedom; then the exact interval with that
    // number (R 4.2.2, qnorm, qt and qbeta, own script).
    const std::vector<Group> groups{{0, 10}, {2, 12}, {1, 8}, {5, 14}, {0, 6}};

    const auto share = clusteredShare(groups);

    REQUIRE(share);
    CHECK_THAT(share->share, WithinAbs(0.16, 1e-15));
    CHECK_THAT(share->effective, WithinAbs(11.97705670295319, 1e-9));
    CHECK_THAT(share->interval.low, WithinAbs(0.01865355286553675, 1e-9));
    CHECK_THAT(share->interval.high, WithinAbs(0.4770518957569881, 1e-9));
}

TEST_CASE("readings that repeat each other count as one", "[statistics][clustered]")
{
    // Twenty people, each asked once, and the same twenty asked ten times with the same answer.
    std::vector<Group> once;
    std::vector<Group> tenTimes;
    for (int i = 0; i < 20; ++i) {
        once.push_back({i < 4 ? 1 : 0, 1});
        tenTimes.push_back({i < 4 ? 10 : 0, 10});
    }
    const auto few = clusteredShare(once);
    const auto many = clusteredShare(tenTimes);

    REQUIRE((few && many));
    CHECK_THAT(many->effective, WithinAbs(few->effective, 1e-9));
    CHECK_THAT(many->interval.low, WithinAbs(few->interval.low, 1e-12));
    CHECK_THAT(many->interval.high, WithinAbs(few->interval.high, 1e-12));
    // k - 1 of single readings, because the mean is estimated, times (z/t)^2, because the variance is (R 4.2.2).
    CHECK_THAT(few->effective, WithinAbs(16.6610107217375, 1e-9));
}

TEST_CASE("nothing seen in any group is no proof of nothing", "[statistics][clustered]")
{
    const std::vector<Group> groups(20, Group{0, 50});

    const auto share = clusteredShare(groups);

    REQUIRE(share);
    CHECK(share->share == 0);
    CHECK(share->effective == 20);
    // As if twenty had been asked once: 0 of 20 by the exact method is 0 to 0.1684 (Newcombe 1998, table I).
    CHECK_THAT(share->interval.high, WithinAbs(0.16843347, 1e-8));
    CHECK(share->interval.low == 0);
}

TEST_CASE("the interval holds the true share about as often as it says", "[statistics][clustered]")
{
    // Groups of 20 readings whose own shares follow a beta distribution of mean 0.1 and correlation 0.3 between readings.
    // R 4.2.2, own script, 4,000 tries: 0.919 with 10 groups, 0.947 with 30, 0.955 with 100.
    const auto [groupCount, least] = GENERATE(std::pair{10, 0.89}, std::pair{30, 0.93}, std::pair{100, 0.935});
    std::mt19937_64 chance(20260101);
    std::gamma_distribution<double> yes(0.1 * (1 / 0.3 - 1)), no(0.9 * (1 / 0.3 - 1));
    constexpr int tries = 2000;
    int held = 0;
    for (int i = 0; i < tries; ++i) {
        std::vector<Group> groups;
        for (int k = 0; k < groupCount; ++k) {
            const double a = yes(chance), b = no(chance);
            std::binomial_distribution<long> events(20, a / (a + b));
            groups.push_back({events(chance), 20});
        }
        const auto share = clusteredShare(groups).value();
        held += share.interval.low <= 0.1 && 0.1 <= share.interval.high ? 1 : 0;
    }
    CAPTURE(groupCount);
    CHECK(held >= least * tries);
    CHECK(held <= 0.98 * tries);
}

TEST_CASE("what is no group is refused", "[statistics][clustered][errors]")
{
    CHECK(clusteredShare({}).error().reason == Reason::notEnough);
    CHECK(clusteredShare(std::vector<Group>{{1, 2}}).error().reason == Reason::notEnough);
    for (const Group& bad : {Group{0, 0}, Group{-1, 4}, Group{5, 4}})
        CHECK(clusteredShare(std::vector<Group>{{1, 2}, bad}).error().reason == Reason::outOfRange);
    for (const double confidence : {0.0, 1.0, std::nan("")})
        CHECK(clusteredShare(std::vector<Group>{{1, 2}, {0, 2}}, confidence).error().reason == Reason::outOfRange);
}

TEST_CASE("the interval holds the share, stays within 0 and 1, and mirrors", "[statistics][clustered][property]")
{
    CHECK(rc::check("laws", [] {
        std::vector<Group> groups;
        std::vector<Group> mirrored;
        const auto count = *rc::gen::inRange(2, 30);
        for (int i = 0; i < count; ++i) {
            const long readings = *rc::gen::inRange(1, 40);
            const long events = *rc::gen::inRange(0L, readings + 1);
            groups.push_back({events, readings});
            mirrored.push_back({readings - events, readings});
        }
        const auto share = clusteredShare(groups);
        const auto other = clusteredShare(mirrored);
        RC_ASSERT(share.has_value() && other.has_value());
        RC_ASSERT(share->interval.low >= 0 && share->interval.low <= share->share);
        RC_ASSERT(share->interval.high <= 1 && share->interval.high >= share->share);
        RC_ASSERT(std::abs(share->interval.low - (1 - other->interval.high)) < 1e-9);
    }));
}
