// Time to an event against the leukaemia trial of 6-mercaptopurine, and the laws it must keep.
//
// Data: E. A. Gehan, "A generalized Wilcoxon test for comparing arbitrarily singly-censored samples",
// Biometrika 52 (1965) 203-223, as R's MASS::gehan: weeks of remission. Figures recomputed with R
// 4.2.2 and its package survival 3.5-3: survfit(conf.type = "log-log"), survdiff, summary(rmean = 21).

#include "core/statistics/log_rank.h"
#include "core/statistics/survival.h"

#include "core/statistics/distributions.h"

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

const std::vector<Followed> treated{{6, true},  {6, true},   {6, true},   {6, false},  {7, true},   {9, false},  {10, true},
                                    {10, false}, {11, false}, {13, true},  {16, true},  {17, false}, {19, false}, {20, false},
                                    {22, true}, {23, true},  {25, false}, {32, false}, {32, false}, {34, false}, {35, false}};
const std::vector<Followed> control{{1, true}, {1, true}, {2, true},  {2, true},  {3, true},  {4, true},  {4, true},
                                    {5, true}, {5, true}, {8, true},  {8, true},  {8, true},  {8, true},  {11, true},
                                    {11, true}, {12, true}, {12, true}, {15, true}, {17, true}, {22, true}, {23, true}};

constexpr double halfOfLastPrintedDigit = 0.00005;

std::vector<Followed> anybody(int most, bool censoring)
{
    const auto days = *rc::gen::container<std::vector<int>>(static_cast<std::size_t>(*rc::gen::inRange(1, most)),
                                                            rc::gen::inRange(0, 22));
    std::vector<Followed> followed;
    for (const int day : days)
        followed.push_back({static_cast<double>(day), !censoring || *rc::gen::inRange(0, 3) > 0});
    return followed;
}

}  // namespace

TEST_CASE("the curve of the treated falls as published, with Greenwood's error", "[statistics][published]")
{
    struct Row { double time; double survival; double error; };
    constexpr Row rows[]{{6, .8571, .0764},  {7, .8067, .0869},  {10, .7529, .0963}, {13, .6902, .1068},
                         {16, .6275, .1141}, {22, .5378, .1282}, {23, .4482, .1346}};

    const auto curve = kaplanMeier(treated);

    REQUIRE(curve);
    REQUIRE(curve->steps.size() == std::size(rows));
    for (std::size_t i = 0; i < std::size(rows); ++i) {
        CAPTURE(i);
        CHECK(curve->steps[i].time == rows[i].time);
        CHECK_THAT(curve->steps[i].survival, WithinAbs(rows[i].survival, halfOfLastPrintedDigit + 1e-9));
        CHECK_THAT(curve->steps[i].standardError.value(), WithinAbs(rows[i].error, halfOfLastPrintedDigit + 1e-9));
    }
    CHECK_THAT(curve->steps.front().limits->low, WithinAbs(.6197, halfOfLastPrintedDigit));
    CHECK_THAT(curve->steps.front().limits->high, WithinAbs(.9516, halfOfLastPrintedDigit));
    CHECK_THAT(curve->steps.back().limits->low, WithinAbs(.1881, halfOfLastPrintedDigit));
    CHECK_THAT(curve->steps.back().limits->high, WithinAbs(.6801, halfOfLastPrintedDigit));
    CHECK(curve->median() == 23.0);
}

TEST_CASE("the curve of the controls reaches zero, and claims no error there", "[statistics][published]")
{
    constexpr double survivals[]{.9048, .8095, .7619, .6667, .5714, .3810, .2857, .1905, .1429, .0952, .0476, 0};

    const auto curve = kaplanMeier(control);

    REQUIRE(curve);
    REQUIRE(curve->steps.size() == std::size(survivals));
    for (std::size_t i = 0; i < std::size(survivals); ++i)
        CHECK_THAT(curve->steps[i].survival, WithinAbs(survivals[i], halfOfLastPrintedDigit + 1e-9));
    CHECK(curve->median() == 8.0);
    CHECK_FALSE(curve->steps.back().standardError);
    CHECK_FALSE(curve->steps.back().limits);
}

TEST_CASE("the log-rank test of the trial is the published one", "[statistics][published]")
{
    const auto test = logRank(treated, control);

    REQUIRE(test);
    CHECK(test->observedFirst == 9);
    CHECK(test->observedSecond == 21);
    CHECK_THAT(test->expectedFirst, WithinAbs(19.250501, 0.5e-6));
    CHECK_THAT(test->expectedSecond, WithinAbs(10.749499, 0.5e-6));
    CHECK_THAT(test->variance, WithinAbs(6.2569606, 0.5e-7));
    CHECK_THAT(test->chiSquare, WithinAbs(16.79294099, 0.5e-8 + 1e-9));
    CHECK_THAT(test->probability, WithinRel(4.168809e-05, 1e-6));
    // The sum of (O - E)^2 / E, often mistaken for it.
    const double excess = test->observedFirst - test->expectedFirst;
    CHECK_THAT(excess * excess * (1 / test->expectedFirst + 1 / test->expectedSecond), WithinAbs(15.2328504, 0.5e-6));
    CHECK_THAT(logRank(treated, control, Emphasis::early)->chiSquare, WithinAbs(14.457151, 0.5e-6));
}

TEST_CASE("the mean time within 21 weeks is the published one", "[statistics][published]")
{
    const auto first = restrictedMean(*kaplanMeier(treated), 21);
    const auto second = restrictedMean(*kaplanMeier(control), 21);

    REQUIRE(first);
    REQUIRE(second);
    CHECK_THAT(first->mean, WithinAbs(16.7439776, 0.5e-7));
    CHECK_THAT(std::sqrt(first->variance.value()), WithinAbs(1.354966, 0.5e-6));
    CHECK_THAT(second->mean, WithinAbs(8.5238095, 0.5e-7));
    CHECK_THAT(std::sqrt(second->variance.value()), WithinAbs(1.310379, 0.5e-6));
}

TEST_CASE("chi-square's 95th centile is that of R 4.2.2", "[statistics]")
{
    CHECK_THAT(chiSquareUpper(3.841458820694124, 1).value(), WithinAbs(0.05, 1e-14));  // qchisq(.95, 1)
    CHECK_FALSE(chiSquareUpper(-1, 1));
    CHECK_FALSE(chiSquareUpper(1, 0));
}

TEST_CASE("without censoring the curve is the share not yet reached, and order does not matter",
          "[statistics][property]")
{
    CHECK(rc::check("empirical", [] {
        auto followed = anybody(60, false);
        const SurvivalCurve curve = kaplanMeier(followed).value();
        const auto n = static_cast<double>(followed.size());
        for (const SurvivalStep& step : curve.steps) {
            const auto later = static_cast<double>(
                std::ranges::count_if(followed, [&](const Followed& one) { return one.time > step.time; }));
            RC_ASSERT(std::abs(step.survival - later / n) < 1e-12);
            // Greenwood's variance is then the binomial one.
            if (step.standardError)
                RC_ASSERT(std::abs(*step.standardError * *step.standardError - later / n * (1 - later / n) / n) < 1e-12);
        }
        // The area up to the end is the mean.
        double mean = 0;
        for (const Followed& one : followed)
            mean += one.time / n;
        RC_ASSERT(std::abs(restrictedMean(curve, 25).value().mean - mean) < 1e-9);
    }));
    CHECK(rc::check("order", [] {
        auto followed = anybody(60, true);
        const SurvivalCurve curve = kaplanMeier(followed).value();
        std::ranges::reverse(followed);
        std::ranges::partition(followed, &Followed::event);
        const SurvivalCurve again = kaplanMeier(followed).value();
        RC_ASSERT(curve.steps.size() == again.steps.size());
        double last = 1;
        for (std::size_t i = 0; i < curve.steps.size(); ++i) {
            RC_ASSERT(curve.steps[i].survival == again.steps[i].survival);
            RC_ASSERT(curve.steps[i].survival <= last && curve.steps[i].survival >= 0);
            last = curve.steps[i].survival;
            if (curve.steps[i].limits) {
                RC_ASSERT(curve.steps[i].limits->low <= last && last <= curve.steps[i].limits->high);
                RC_ASSERT(curve.steps[i].limits->low >= 0 && curve.steps[i].limits->high <= 1);
            }
        }
    }));
}

TEST_CASE("the log-rank test does not care which group is named first", "[statistics][property]")
{
    CHECK(rc::check("labels", [] {
        const auto a = anybody(40, true), b = anybody(40, true);
        for (const Emphasis emphasis : {Emphasis::equal, Emphasis::early}) {
            const auto there = logRank(a, b, emphasis), back = logRank(b, a, emphasis);
            RC_ASSERT(there.has_value() == back.has_value());
            if (!there) {
                RC_ASSERT(there.error().reason == Reason::notEnough);
                continue;
            }
            RC_ASSERT(std::abs(there->chiSquare - back->chiSquare) < 1e-8 * (1 + there->chiSquare));
            RC_ASSERT(there->probability > 0 && there->probability <= 1);
            RC_ASSERT(std::abs(there->observedFirst + there->observedSecond - there->expectedFirst - there->expectedSecond)
                      < 1e-9);
        }
    }));
}

TEST_CASE("a curve says nothing beyond the last who was seen", "[statistics][errors]")
{
    const auto curve = kaplanMeier(std::vector<Followed>{{3, true}, {7, false}, {8, false}});
    REQUIRE(curve);
    CHECK(curve->at(2) == 1.0);
    CHECK_THAT(curve->at(8).value(), WithinRel(2.0 / 3, 1e-12));
    CHECK_FALSE(curve->at(8.1));
    CHECK_FALSE(curve->median());
    CHECK(restrictedMean(*curve, 21).error().reason == Reason::notEnough);
    CHECK(restrictedMean(*curve, 0).error().reason == Reason::outOfRange);
    // Nothing happened before day 2: the mean is 2, and there is no telling how sure that is.
    CHECK(restrictedMean(*curve, 2)->mean == 2);
    CHECK_FALSE(restrictedMean(*curve, 2)->variance);
}

TEST_CASE("half of the followed exactly is the median, in spite of rounding", "[statistics]")
{
    // 3/4 x 2/3 is one half on paper.
    CHECK(kaplanMeier(std::vector<Followed>{{1, true}, {2, true}, {3, false}, {4, false}})->median() == 2.0);
    CHECK(kaplanMeier(std::vector<Followed>{{1, true}, {2, true}, {3, true}, {4, false}, {5, false}, {6, false}})->median()
          == 3.0);
}

TEST_CASE("nobody, impossible times and groups that never meet are refused", "[statistics][errors]")
{
    CHECK(kaplanMeier({}).error().reason == Reason::notEnough);
    CHECK(kaplanMeier(std::vector<Followed>{{-1, true}}).error().reason == Reason::outOfRange);
    CHECK(kaplanMeier(std::vector<Followed>{{NAN, true}}).error().reason == Reason::outOfRange);
    CHECK(kaplanMeier(std::vector<Followed>{{1, true}}, 1.5).error().reason == Reason::outOfRange);
    CHECK(logRank(treated, {}).error().reason == Reason::notEnough);
    CHECK(logRank(std::vector<Followed>{{1, false}}, std::vector<Followed>{{2, true}}).error().reason == Reason::notEnough);
    CHECK(logRank(std::vector<Followed>{{INFINITY, true}}, treated).error().reason == Reason::outOfRange);
}
