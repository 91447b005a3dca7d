// The risk-adjusted CUSUM against published weights, and its laws.
//
// Sources: S. H. Steiner, R. J. Cook, V. T. Farewell, T. Treasure, Biostatistics 1 (2000) 441-452, page
// 446: logit p = -3.68 + 0.077 x Parsonnet score, R = 2; the weights were computed from that model. S. E.
// Rigdon, R. D. Fricker, "Health surveillance", in "Innovative Statistical Methods for Public Health
// Data", Springer 2015, page 225: -3.67 + 0.077 x 19, a survivor, printed 0 and 0.05083. The chain of ten
// and the probabilities of signals were computed independently with R 4.2.2, following every sum that
// can occur. A chain over a grid of sums, the usual short cut, is off by up to 0.003 (0.438 for 0.4409).

#include "core/statistics/risk_cusum.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline;
using namespace ebbline::statistics;

namespace {

double logistic(double x)
{
    return 1 / (1 + std::exp(-x));
}

}  // namespace

TEST_CASE("the weights of a surgical patient are those of the published model", "[statistics][published]")
{
    CHECK_THAT(logistic(-3.68), WithinAbs(.0246024, 0.5e-7));
    CHECK_THAT(logistic(-3.68 + .077 * 50), WithinAbs(.5423979, 0.5e-7));
    CHECK_THAT(riskWeight(2, logistic(-3.68), true), WithinAbs(.668842518, 0.5e-9));
    CHECK_THAT(riskWeight(2, logistic(-3.68), false), WithinAbs(-.024304663, 0.5e-9));
    CHECK_THAT(riskWeight(2, logistic(-3.68 + .077 * 50), true), WithinAbs(.259808871, 0.5e-9));
    CHECK_THAT(riskWeight(2, logistic(-3.68 + .077 * 50), false), WithinAbs(-.433338310, 0.5e-9));
    CHECK_THAT(riskWeight(0.5, logistic(-3.68), true), WithinAbs(-.680769680, 0.5e-9));
    CHECK_THAT(riskWeight(0.5, logistic(-3.68), false), WithinAbs(.012377500, 0.5e-9));
}

TEST_CASE("a survivor with a score of 19 moves the two charts as printed", "[statistics][published]")
{
    auto worse = RiskCusum::create({2, 3});
    auto better = RiskCusum::create({0.5, 3});
    REQUIRE(worse);
    REQUIRE(better);
    REQUIRE(worse->observe(logistic(-3.67 + .077 * 19), false));
    REQUIRE(better->observe(logistic(-3.67 + .077 * 19), false));
    CHECK(worse->sum() == 0);
    CHECK_THAT(better->sum(), WithinAbs(0.0508321616, 0.5e-10));  // printed as 0.05083; to ten digits by R 4.2.2
}

TEST_CASE("ten patients run through sum and difference", "[statistics]")
{
    constexpr double risks[]{.02, .05, .10, .04, .08, .03, .15, .05, .06, .02};
    constexpr bool events[]{false, false, true, false, true, false, false, true, false, false};
    constexpr double sums[]{0, 0, .5978370, .5586163, 1.1748024, 1.1452436, 1.0054817, 1.6498387, 1.5915698, 1.5717672};
    constexpr double differences[]{.02, .07, -.83, -.79, -1.71, -1.68, -1.53, -2.48, -2.42, -2.40};
    auto chart = RiskCusum::create({2, 1.6});
    REQUIRE(chart);
    for (std::size_t i = 0; i < std::size(risks); ++i) {
        CAPTURE(i);
        const auto signal = chart->observe(risks[i], events[i]);
        REQUIRE(signal);
        CHECK(*signal == (i == 7));
        CHECK_THAT(chart->sum(), WithinAbs(sums[i], 0.5e-7 + 1e-9));
        CHECK_THAT(chart->expectedMinusObserved(), WithinAbs(differences[i], 1e-12));
    }
    chart->reset();
    CHECK(chart->sum() == 0);
    CHECK_THAT(chart->expectedMinusObserved(), WithinAbs(-2.40, 1e-12));
}

TEST_CASE("false and true signals come as often as following every sum says", "[statistics]")
{
    struct Row { double risk; double decision; double falseSignal[3]; double found[3]; };
    const auto row = GENERATE(Row{.02, 2.5, {.0185727242, .0626920941, .197930541}, {.199599971, .513605382, .905559266}},
                              Row{.05, 2.5, {.0790634473, .186728655, .440915118}, {.593487033, .889144396, .997772473}},
                              Row{.05, 3.5, {.0151700955, .0496637559, .15299975}, {.344955544, .730193589, .983959127}},
                              Row{.05, 4.5, {.0025820005, .0125227684, .049870443}, {.171371246, .553375742, .953464438}},
                              Row{.10, 3.5, {.0424951365, .107253768, .277387068}, {.671476196, .940116475, .999647621}},
                              Row{.10, 4.5, {.0099338434, .0321298653, .0987499396}, {.477928918, .862769664, .997879721}});
    constexpr int patients[]{100, 200, 500};
    for (std::size_t i = 0; i < 3; ++i) {
        CAPTURE(row.risk, row.decision, patients[i]);
        CHECK_THAT(signalProbability({2, row.decision}, row.risk, patients[i]).value(), WithinAbs(row.falseSignal[i], 1e-8));
        CHECK_THAT(signalProbability({2, row.decision}, row.risk, patients[i], 2).value(), WithinAbs(row.found[i], 1e-8));
    }
}

TEST_CASE("a few patients signal as often as counting all outcomes says", "[statistics][property]")
{
    CHECK(rc::check("counted", [] {
        const double ratio = *rc::gen::element(0.25, 0.5, 1.5, 2.0, 4.0), risk = *rc::gen::inRange(1, 95) / 100.0;
        const double decision = *rc::gen::inRange(5, 200) / 100.0 + 0.00031;
        const int patients = *rc::gen::inRange(1, 11);
        double counted = 0;
        for (unsigned outcomes = 0; outcomes < 1U << patients; ++outcomes) {
            double probability = 1;
            bool signal = false;
            auto chart = RiskCusum::create({ratio, decision});
            for (int i = 0; i < patients; ++i) {
                const bool event = (outcomes >> i & 1U) != 0;
                probability *= event ? risk : 1 - risk;
                signal = chart->observe(risk, event).value() || signal;
            }
            counted += signal ? probability : 0;
        }
        RC_ASSERT(std::abs(signalProbability({ratio, decision}, risk, patients).value() - counted) < 1e-10);
    }));
}

TEST_CASE("what cannot be a risk or a design is refused, and changes nothing", "[statistics][errors]")
{
    CHECK(RiskCusum::create({1, 3}).error().reason == Reason::outOfRange);
    CHECK(RiskCusum::create({0, 3}).error().reason == Reason::outOfRange);
    CHECK(RiskCusum::create({2, 0}).error().reason == Reason::outOfRange);
    auto chart = RiskCusum::create({2, 3});
    REQUIRE(chart);
    REQUIRE(chart->observe(0.1, true));
    const double sum = chart->sum();
    for (const double risk : std::initializer_list<double>{0.0, 1.0, -0.1, NAN})
        CHECK(chart->observe(risk, true).error().reason == Reason::outOfRange);
    CHECK(chart->sum() == sum);
    CHECK(signalProbability({2, 3}, 0, 10).error().reason == Reason::outOfRange);
    CHECK(signalProbability({2, 3}, 0.1, 0).error().reason == Reason::outOfRange);
    CHECK(signalProbability({2, 3}, 0.1, 10, -1).error().reason == Reason::outOfRange);
}
