// Rank tests and the robust line against published examples, and their laws.
//
// Sources: M. Hollander, D. A. Wolfe, "Nonparametric Statistical Methods", 1973: Hamilton's depression
// scale, pages 29 and following, and permeability of the membrane, pages 69 and following; both as in R
// 4.2.2 help(wilcox.test), which prints the figures here. Robust line: D. R. Helsel, R. M. Hirsch,
// "Statistical Methods in Water Resources", 2002, section 10.1, example cited from memory.

#include "core/statistics/rank_sum.h"
#include "core/statistics/signed_rank.h"
#include "core/statistics/theil_sen.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

namespace {

std::vector<double> anyScores(int most)
{
    std::vector<double> scores;
    for (const int score : *rc::gen::container<std::vector<int>>(static_cast<std::size_t>(*rc::gen::inRange(1, most)),
                                                                 rc::gen::inRange(-5, 6)))
        scores.push_back(score);
    return scores;
}

std::vector<double> negated(std::vector<double> values)
{
    for (double& value : values)
        value = -value;
    return values;
}

/// Reads the probabilities off every way of giving signs to the ranks.
std::pair<double, double> bySigns(const std::vector<double>& differences, bool withZeros)
{
    std::vector<double> sizes;
    for (const double d : differences)
        if (d != 0 || withZeros)
            sizes.push_back(std::abs(d));
    std::vector<double> ranks;
    double seen = 0;
    for (const double d : differences) {
        if (d == 0)
            continue;
        const auto smaller = std::ranges::count_if(sizes, [&](double s) { return s < std::abs(d); });
        const auto equal = std::ranges::count(sizes, std::abs(d));
        ranks.push_back(static_cast<double>(smaller) + (static_cast<double>(equal) + 1) / 2);
        seen += d > 0 ? ranks.back() : 0;
    }
    double less = 0, greater = 0;
    const unsigned ways = 1U << ranks.size();
    for (unsigned way = 0; way < ways; ++way) {
        double sum = 0;
        for (std::size_t i = 0; i < ranks.size(); ++i)
            sum += (way >> i & 1U) != 0 ? ranks[i] : 0;
        less += sum <= seen;
        greater += sum >= seen;
    }
    return {less / ways, greater / ways};
}

}  // namespace

TEST_CASE("the signed ranks of nine patients are the published ones", "[statistics][published]")
{
    constexpr double first[]{1.83, .50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30};
    constexpr double second[]{.878, .647, .598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29};
    std::vector<double> differences;
    for (std::size_t i = 0; i < std::size(first); ++i)
        differences.push_back(first[i] - second[i]);

    const auto test = signedRank(differences);

    REQUIRE(test);
    CHECK(test->statistic == 40);
    CHECK_THAT(test->greater, WithinRel(0.01953125, 1e-12));
    CHECK_THAT(test->twoSided, WithinRel(0.0390625, 1e-12));
    CHECK_THAT(test->shift, WithinAbs(0.46, 1e-12));
    REQUIRE(test->limits);
    CHECK_THAT(test->limits->low, WithinAbs(0.010, 1e-12));
    CHECK_THAT(test->limits->high, WithinAbs(0.786, 1e-12));
    CHECK(test->zeros == 0);
}

TEST_CASE("the rank sum of two tissues is the published one", "[statistics][published]")
{
    const std::vector<double> first{.80, .83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, .73, 1.46};
    const std::vector<double> second{1.15, .88, .90, .74, 1.21};

    const auto test = rankSum(first, second);

    REQUIRE(test);
    CHECK(test->statistic == 35);
    CHECK_THAT(test->greater, WithinAbs(0.1272061, 0.5e-7));
    CHECK_THAT(test->twoSided, WithinAbs(0.254412254, 0.5e-9));
    CHECK_THAT(test->shift, WithinAbs(0.305, 1e-12));
    REQUIRE(test->limits);
    CHECK_THAT(test->limits->low, WithinAbs(-0.15, 1e-12));
    CHECK_THAT(test->limits->high, WithinAbs(0.76, 1e-12));
}

TEST_CASE("ties and zeros leave the signed-rank test exact", "[statistics][property]")
{
    // R 4.2.2, all 256 ways of the signs.
    const std::vector<double> differences{0, 1, 1, -1, 2, 2, -3, 4, 0, 5};
    CHECK(signedRank(differences)->statistic == 40);
    CHECK_THAT(signedRank(differences)->greater, WithinRel(0.0859375, 1e-12));
    CHECK(signedRank(differences)->zeros == 2);
    CHECK(signedRank(differences, 0.95, ZeroDifferences::leftOut)->statistic == 28);
    CHECK(signedRank(differences)->shift == 1);
    CHECK(rc::check("every way of the signs", [] {
        const auto scores = anyScores(11);
        for (const auto zeros : {ZeroDifferences::rankedThenLeftOut, ZeroDifferences::leftOut}) {
            const auto test = signedRank(scores, 0.95, zeros);
            if (!test) {
                RC_ASSERT(std::ranges::all_of(scores, [](double s) { return s == 0; }));
                continue;
            }
            const auto [less, greater] = bySigns(scores, zeros == ZeroDifferences::rankedThenLeftOut);
            RC_ASSERT(std::abs(test->less - less) < 1e-12 && std::abs(test->greater - greater) < 1e-12);
        }
    }));
}

TEST_CASE("turning the sides round turns the shift round and nothing else", "[statistics][property]")
{
    CHECK(rc::check("sides", [] {
        const auto scores = anyScores(30);
        const auto there = signedRank(scores), back = signedRank(negated(scores));
        RC_ASSERT(there.has_value() == back.has_value());
        if (there) {
            RC_ASSERT(std::abs(there->shift + back->shift) < 1e-12);
            RC_ASSERT(std::abs(there->less - back->greater) < 1e-12);
            RC_ASSERT(std::abs(there->twoSided - back->twoSided) < 1e-12);
            RC_ASSERT(there->limits.has_value() == (scores.size() >= 6));
            if (there->limits) {
                RC_ASSERT(there->limits->low == -back->limits->high);
                RC_ASSERT(there->limits->low <= there->shift && there->shift <= there->limits->high);
            }
        }
        const auto others = anyScores(20);
        const auto one = rankSum(scores, others), two = rankSum(others, scores);
        RC_ASSERT(one.has_value() == two.has_value());
        if (one) {
            RC_ASSERT(std::abs(one->shift + two->shift) < 1e-12);
            RC_ASSERT(std::abs(one->less - two->greater) < 1e-12);
            const auto pairs = static_cast<double>(scores.size() * others.size());
            RC_ASSERT(one->statistic + two->statistic == pairs);
        }
    }));
}

TEST_CASE("one wild point does not move the robust line", "[statistics]")
{
    const auto wild = theilSen(std::vector<Point>{{1, 1}, {2, 2}, {3, 3}, {4, 4}, {5, 5}, {6, 16}, {7, 7}});
    REQUIRE(wild);
    CHECK(wild->slope == 1);
    CHECK(wild->intercept == 0);
    const auto falling = theilSen(std::vector<Point>{{1, 1.26}, {2, 1.27}, {3, 1.12}, {4, 1.16}, {5, 1.03}});
    REQUIRE(falling);
    CHECK_THAT(falling->slope, WithinAbs(-.05625, 1e-12));
    // The line through the medians of x and y would have 1.32875.
    CHECK_THAT(falling->intercept, WithinAbs(1.31625, 1e-12));
}

TEST_CASE("the robust line follows a change of units", "[statistics][property]")
{
    CHECK(rc::check("units", [] {
        std::vector<Point> points, scaled;
        const auto ys = anyScores(25);
        for (std::size_t i = 0; i < ys.size(); ++i) {
            points.push_back({static_cast<double>(i / 2), ys[i]});
            scaled.push_back({2 * points.back().x + 3, -4 * ys[i] + 1});
        }
        const auto own = theilSen(points), other = theilSen(scaled);
        RC_ASSERT(own.has_value() == other.has_value());
        if (own) {
            RC_ASSERT(std::abs(other->slope + 2 * own->slope) < 1e-9);
            RC_ASSERT(std::abs(other->intercept - (1 - 4 * own->intercept - 3 * other->slope)) < 1e-9);
        }
    }));
}

TEST_CASE("too little or impossible data is refused by the rank methods", "[statistics][errors]")
{
    CHECK(signedRank({}).error().reason == Reason::notEnough);
    CHECK(signedRank(std::vector<double>{0, 0}).error().reason == Reason::notEnough);
    CHECK(signedRank(std::vector<double>{NAN}).error().reason == Reason::notFinite);
    CHECK(signedRank(std::vector<double>(401, 1)).error().reason == Reason::tooLarge);
    CHECK(signedRank(std::vector<double>{1}, 0).error().reason == Reason::outOfRange);
    CHECK_FALSE(signedRank(std::vector<double>{1, 2, 3})->limits);
    CHECK(rankSum({}, std::vector<double>{1}).error().reason == Reason::notEnough);
    CHECK(rankSum(std::vector<double>{1, 1}, std::vector<double>{1}).error().reason == Reason::notEnough);
    CHECK(rankSum(std::vector<double>{INFINITY}, std::vector<double>{1}).error().reason == Reason::notFinite);
    CHECK_FALSE(rankSum(std::vector<double>{1}, std::vector<double>{2})->limits);
    // Nothing that is no number comes out of what is one.
    CHECK(rankSum(std::vector<double>{1e308}, std::vector<double>{-1e308}).error().reason == Reason::notFinite);
    CHECK(signedRank(std::vector<double>{1e308, 1e308})->shift == 1e308);
    CHECK(theilSen(std::vector<Point>{{1, 1}, {2, 2}}).error().reason == Reason::notEnough);
    CHECK(theilSen(std::vector<Point>{{1, 1}, {1, 2}, {1, 3}}).error().reason == Reason::notEnough);
    CHECK(theilSen(std::vector<Point>{{1, 1}, {1, NAN}, {2, 3}}).error().reason == Reason::notFinite);
}
