// Pooling of groups against the rat tumours, and its laws.
//
// Sources: data of R. E. Tarone, "The use of historical control information in testing for a trend in
// proportions", Biometrics 38 (1982) 215-220, as in A. Gelman et al., "Bayesian Data Analysis", 3rd
// ed., 2013, section 5.1: the book rounds the moments' answer to 1.4 and 8.6. Maximum likelihood was
// recomputed with R 4.2.2: optim() over log a, log b, then Newton's steps until the gradient was
// below 1e-12 (optim() alone stops at 2.304778, 14.079776: five digits).

#include "core/statistics/pooling.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

namespace {

std::vector<Counts> ratTumours(std::size_t groups)
{
    constexpr std::array y{0, 0, 0, 0, 0, 0, 0, 0, 0, 0,  0, 0, 0, 0, 1, 1, 1, 1, 1,  1,  1, 1, 2, 2,
                           2, 2, 2, 2, 2, 2, 2, 1, 5, 2,  5, 3, 2, 7, 7, 3, 3, 2, 9,  10, 4, 4, 4, 4,
                           4, 4, 4, 10, 4, 4, 4, 5, 11, 12, 5, 5, 6, 5, 6, 6, 6, 6, 16, 15, 15, 9, 4};
    constexpr std::array n{20, 20, 20, 20, 20, 20, 20, 19, 19, 19, 19, 18, 18, 17, 20, 20, 20, 20, 19, 19, 18, 18, 25, 24,
                           23, 20, 20, 20, 20, 20, 20, 10, 49, 19, 46, 27, 17, 49, 47, 20, 20, 13, 48, 50, 20, 20, 20, 20,
                           20, 20, 20, 48, 19, 19, 19, 22, 46, 49, 20, 20, 23, 19, 22, 20, 20, 20, 52, 46, 47, 24, 14};
    static_assert(y.size() == 71 && n.size() == 71);
    std::vector<Counts> counts;
    for (std::size_t i = 0; i < groups; ++i)
        counts.push_back({y[i], n[i]});
    return counts;
}

}  // namespace

TEST_CASE("the moments of 70 groups of rats give the published distribution", "[statistics][published]")
{
    const auto between = betaFromMoments(ratTumours(70));

    REQUIRE(between);
    CHECK_THAT(between->a, WithinAbs(1.4, 0.05));  // printed
    CHECK_THAT(between->b, WithinAbs(8.6, 0.05));
    CHECK_THAT(between->a, WithinRel(1.35614939103, 1e-9));  // R
    CHECK_THAT(between->b, WithinRel(8.61505789132, 1e-9));
    CHECK_THAT(between->mean(), WithinAbs(.1360065, 0.5e-7));
    CHECK_THAT(std::sqrt(between->variance()), WithinAbs(.1034923, 0.5e-7));
    const Beta last = updated({1.4, 8.6}, {4, 14});
    CHECK_THAT(last.a, WithinAbs(5.4, 1e-12));
    CHECK_THAT(last.b, WithinAbs(18.6, 1e-12));
    // The book prints .223 from unrounded values.
    CHECK_THAT(last.mean(), WithinAbs(0.225, 1e-12));
    CHECK_THAT(updated(*between, {4, 14}).mean(), WithinAbs(0.223, 0.0005));
    CHECK_THAT(std::sqrt(last.variance()), WithinAbs(0.0835, 0.0001));
}

TEST_CASE("the most likely distribution between the groups is the one R finds", "[statistics]")
{
    struct Row { std::size_t groups; double a; double b; double logLikelihood; };
    for (const Row row : {Row{70, 2.30478331212438, 14.0798090315483, -721.001019527043},
                         Row{71, 2.34161440333372, 14.1148042984418, -730.338454524389}}) {
        const auto groups = ratTumours(row.groups);
        const auto between = fitBetaBinomial(groups);
        REQUIRE(between);
        CHECK_THAT(between->a, WithinRel(row.a, 1e-9));
        CHECK_THAT(between->b, WithinRel(row.b, 1e-9));
        CHECK_THAT(betaBinomialLogLikelihood(*between, groups).value(), WithinAbs(row.logLikelihood, 1e-9));
    }
}

TEST_CASE("with two categories the weight of the seed is that of the beta-binomial distribution", "[statistics]")
{
    const auto groups = ratTumours(70);
    std::vector<CategoryCounts> counts;
    for (const Counts& group : groups)
        counts.push_back({group.events, group.total - group.events});
    const Beta between = fitBetaBinomial(groups).value();
    const std::array seed{between.mean(), 1 - between.mean()};

    const auto weight = fitSeedWeight(seed, counts);

    REQUIRE(weight);
    CHECK_THAT(*weight, WithinRel(between.a + between.b, 1e-5));
    CHECK_THAT(dirichletMultinomialLogLikelihood(seed, *weight, counts).value(), WithinAbs(-721.0010195, 1e-6));
}

TEST_CASE("groups that do not differ more than chance give no distribution", "[statistics][errors]")
{
    const std::vector<Counts> alike(8, {5, 50});
    CHECK(fitBetaBinomial(alike).error().reason == Reason::notEnough);
    CHECK(betaFromMoments(alike).error().reason == Reason::notEnough);
    const std::vector<Counts> none(8, {0, 50});
    CHECK(fitBetaBinomial(none).error().reason == Reason::notEnough);
    const std::vector<Counts> opposites{{0, 30}, {30, 30}, {0, 30}, {30, 30}};
    CHECK(fitBetaBinomial(opposites).error().reason == Reason::notEnough);
    // Which of the two it is: alike as far as anybody can see, or further apart than can be said.
    CHECK_FALSE(spreadBetween(alike).value());
    CHECK_FALSE(spreadBetween(none).value());
    CHECK(spreadBetween(opposites).error().reason == Reason::notEnough);
    CHECK(fitBetaBinomial({}).error().reason == Reason::notEnough);
    CHECK(fitBetaBinomial(std::vector<Counts>{{3, 2}, {1, 2}}).error().reason == Reason::outOfRange);
    const std::array seed{0.5, 0.5};
    CHECK(fitSeedWeight(seed, std::vector<CategoryCounts>(6, {20, 20})).error().reason == Reason::notEnough);
    CHECK(fitSeedWeight(seed, std::vector<CategoryCounts>(6, {20, 20, 1})).error().reason == Reason::outOfRange);
    const std::array heavy{0.5, 0.6};
    CHECK(pooledShares(heavy, 30, {1, 1}).error().reason == Reason::outOfRange);
    CHECK(pooledShares(seed, 0, {1, 1}).error().reason == Reason::outOfRange);
}

TEST_CASE("shares are drawn between the seed and the group's own, and sum to 1", "[statistics][property]")
{
    CHECK(rc::check("drawn", [] {
        const CategoryCounts counts = *rc::gen::container<std::vector<long>>(11, rc::gen::inRange(0L, 200L));
        const double weight = *rc::gen::inRange(1, 1000) / 10.0;
        std::array<double, 11> seed{};
        seed.fill(1.0 / 11);
        const auto sum = static_cast<double>(std::accumulate(counts.begin(), counts.end(), 0L));
        const auto shares = pooledShares(seed, weight, counts).value();
        double total = 0;
        for (std::size_t i = 0; i < seed.size(); ++i) {
            const double own = sum > 0 ? static_cast<double>(counts[i]) / sum : seed[i];
            RC_ASSERT(shares[i] >= std::min(own, seed[i]) - 1e-12 && shares[i] <= std::max(own, seed[i]) + 1e-12);
            total += shares[i];
        }
        RC_ASSERT(std::abs(total - 1) < 1e-12);
    }));
}

TEST_CASE("a fitted distribution is nowhere less likely than close by", "[statistics][property]")
{
    CHECK(rc::check("a maximum", [] {
        std::vector<Counts> groups;
        for (int i = 0; i < 6; ++i) {
            const long total = *rc::gen::inRange(5L, 60L);
            groups.push_back({*rc::gen::inRange(0L, total + 1), total});
        }
        const auto between = fitBetaBinomial(groups);
        if (!between) {
            RC_ASSERT(between.error().reason == Reason::notEnough);
            return;
        }
        const double best = betaBinomialLogLikelihood(*between, groups).value();
        for (const double a : {0.99, 1.0, 1.01})
            for (const double b : {0.99, 1.0, 1.01})
                RC_ASSERT(betaBinomialLogLikelihood({between->a * a, between->b * b}, groups).value() <= best + 1e-9);
    }));
}

TEST_CASE("a silence of r days under Beta(2, 10) has probability 1/6, 1/26, 1/91, 1/273", "[statistics]")
{
    // B(2 + r, 10) / B(2, 10), exact fractions.
    CHECK_THAT(probabilityOfRun({2, 10}, 1), WithinRel(1.0 / 6, 1e-14));
    CHECK_THAT(probabilityOfRun({2, 10}, 2), WithinRel(1.0 / 26, 1e-14));
    CHECK_THAT(probabilityOfRun({2, 10}, 3), WithinRel(1.0 / 91, 1e-14));
    CHECK_THAT(probabilityOfRun({2, 10}, 4), WithinRel(1.0 / 273, 1e-14));
    CHECK(probabilityOfRun({2, 10}, 0) == 1);
}
