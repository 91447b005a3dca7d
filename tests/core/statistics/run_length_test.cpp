// Run lengths of CUSUM and EWMA against printed tables, and the laws they must keep.
//
// Sources: D. C. Montgomery, "Introduction to Statistical Quality Control", table 9.3 (two-sided CUSUM,
// k = 0.5); J. M. Lucas, M. S. Saccucci, "Exponentially weighted moving average control schemes:
// properties and enhancements", Technometrics 32 (1990) 1-12, for the widths that give 500. The figures
// to three digits and more were recomputed from the integral equations with R 4.2.2; where the table
// prints fewer digits it agrees to its last one, but for 139 (exact 139.494).

#include "core/statistics/run_length.h"

#include "core/statistics/distributions.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <random>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

TEST_CASE("a two-sided CUSUM runs as long as the table says", "[statistics][published]")
{
    constexpr double shifts[]{0, .25, .5, .75, 1, 1.5, 2, 2.5, 3, 4};
    struct Row { double decision; double exact[10]; double printed[10]; };
    const auto row = GENERATE(Row{4, {167.684, 74.224, 26.630, 13.285, 8.383, 4.747, 3.343, 2.620, 2.194, 1.708},
                                  {168, 74.2, 26.6, 13.3, 8.38, 4.75, 3.34, 2.62, 2.19, 1.71}},
                              Row{5, {465.444, 139.494, 37.996, 17.048, 10.376, 5.747, 4.009, 3.114, 2.573, 2.013},
                                  {465, 139, 38.0, 17.0, 10.4, 5.75, 4.01, 3.11, 2.57, 2.01}});
    for (std::size_t i = 0; i < std::size(shifts); ++i) {
        CAPTURE(row.decision, shifts[i]);
        const auto run = cusumRunLengthBothWays(0.5, row.decision, shifts[i]);
        REQUIRE(run);
        CHECK_THAT(*run, WithinAbs(row.exact[i], 0.0005 + 1e-6));
        CHECK_THAT(*run, WithinRel(row.printed[i], 0.005));
    }
}

TEST_CASE("a one-sided CUSUM in control runs as long as the integral equation says", "[statistics]")
{
    // R 4.2.2: the integral equation with midpoints, extrapolated. A Markov chain of 400 states, the usual
    // approximation, gives 1543.0 and 2552.9 for the last two.
    struct Row { double decision; double by10; double by22; double average; };
    const auto row = GENERATE(Row{3.0, .0622, .1555, 117.6}, Row{3.5, .0332, .0906, 199.6}, Row{4.0, .0175, .0523, 335.4},
                              Row{4.5, .0091, .0300, 559.9}, Row{5.0, .0047, .0172, 930.9}, Row{5.5, .0024, .0098, 1543.105},
                              Row{6.0, .0012, .0056, 2553.120});
    CAPTURE(row.decision);
    CHECK_THAT(cusumRunLength(0.5, row.decision, 0).value(), WithinAbs(row.average, 0.05 + 0.01));
    CHECK_THAT(cusumSignalProbability(0.5, row.decision, 0, 10).value(), WithinAbs(row.by10, 0.00005 + 1e-6));
    CHECK_THAT(cusumSignalProbability(0.5, row.decision, 0, 22).value(), WithinAbs(row.by22, 0.00005 + 1e-6));
    if (row.decision == 4.0)
        CHECK_THAT(cusumRunLength(0.5, 4, 0).value(), WithinAbs(335.368, 0.0006));
    if (row.decision == 5.0)
        CHECK_THAT(cusumRunLength(0.5, 5, 0).value(), WithinAbs(930.887, 0.0006));
}

TEST_CASE("an EWMA runs as long as published", "[statistics][published]")
{
    constexpr double shifts[]{0, .25, .5, .75, 1, 1.5, 2, 3, 4};
    struct Row { double weight; double width; double average[9]; };
    const auto row = GENERATE(Row{.40, 3.054, {499.95, 223.73, 71.20, 28.42, 14.26, 5.87, 3.52, 2.02, 1.44}},
                              Row{.25, 2.998, {499.84, 170.30, 48.29, 20.11, 11.14, 5.46, 3.61, 2.26, 1.73}},
                              Row{.20, 2.962, {499.74, 150.22, 41.76, 18.15, 10.54, 5.50, 3.74, 2.38, 1.86}},
                              Row{.10, 2.814, {499.58, 106.32, 31.30, 15.85, 10.33, 6.08, 4.36, 2.87, 2.19}},
                              Row{.05, 2.615, {499.93, 84.01, 28.76, 16.37, 11.38, 7.11, 5.22, 3.50, 2.69}});
    for (std::size_t i = 0; i < std::size(shifts); ++i) {
        CAPTURE(row.weight, shifts[i]);
        CHECK_THAT(ewmaRunLength(row.weight, row.width, shifts[i]).value(), WithinAbs(row.average[i], 0.005 + 1e-4));
    }
    // Lucas and Saccucci print 500 and, at weight .10 and shift 1, 10.3.
    CHECK_THAT(ewmaRunLength(row.weight, row.width, 0).value(), WithinAbs(500, 0.5));
    CHECK_THAT(ewmaRunLength(.10, 2.814, 1).value(), WithinAbs(10.3, 0.05));
    CHECK_THAT(ewmaRunLength(.50, 3.071, 0).value(), WithinAbs(499.91, 0.006));
    CHECK_THAT(ewmaRunLength(.50, 3.071, .5).value(), WithinAbs(88.80, 0.006));
    CHECK_THAT(ewmaRunLength(.50, 3.071, 1).value(), WithinAbs(17.48, 0.006));
    CHECK_THAT(ewmaRunLength(.50, 3.071, 2).value(), WithinAbs(3.63, 0.006));
}

TEST_CASE("an EWMA signals within 22 observations as often as the equation says", "[statistics]")
{
    // R 4.2.2, midpoints over 2000 intervals.
    CHECK_THAT(ewmaSignalProbability(.10, 2.814, 0, 22).value(), WithinAbs(.0286465705, 1e-6));
    CHECK_THAT(ewmaSignalProbability(.25, 2.998, 0, 22).value(), WithinAbs(.0374066423, 1e-6));
    CHECK_THAT(ewmaSignalProbability(.40, 3.054, 0, 22).value(), WithinAbs(.0400241693, 1e-6));
}

TEST_CASE("with all the weight on the newest, the run is that of single observations", "[statistics][property]")
{
    CHECK(rc::check("geometric", [] {
        const double width = *rc::gen::inRange(50, 450) / 100.0, shift = *rc::gen::inRange(-300, 300) / 100.0;
        const double signal = normalCdf(-width - shift) + normalCdf(-width + shift);
        const int n = *rc::gen::inRange(0, 50);
        RC_ASSERT(std::abs(ewmaRunLength(1, width, shift).value() * signal - 1) < 1e-8);
        RC_ASSERT(std::abs(ewmaSignalProbability(1, width, shift, n).value() + std::expm1(n * std::log1p(-signal))) < 1e-9);
    }));
}

TEST_CASE("a larger shift is never found later, nor a wider chart sooner; up mirrors down", "[statistics][property]")
{
    CHECK(rc::check("order", [] {
        const double slack = *rc::gen::inRange(0, 150) / 100.0, decision = *rc::gen::inRange(50, 600) / 100.0;
        const double shift = *rc::gen::inRange(0, 300) / 100.0;
        if (const auto run = cusumRunLength(slack, decision, shift)) {
            RC_ASSERT(cusumRunLength(slack, decision, shift + 0.1).value() <= *run * (1 + 1e-9));
            if (const auto wider = cusumRunLength(slack, decision + 0.1, shift))
                RC_ASSERT(wider.value() >= *run * (1 - 1e-9));
        }
        const auto there = cusumRunLengthBothWays(slack, decision, shift);
        const auto back = cusumRunLengthBothWays(slack, decision, -shift);
        RC_ASSERT(there.value_or(0) == back.value_or(0));
        const int n = *rc::gen::inRange(1, 60);
        RC_ASSERT(cusumSignalProbability(slack, decision, shift, n).value()
                  >= cusumSignalProbability(slack, decision, shift, n - 1).value() - 1e-12);
    }));
}

TEST_CASE("a chart of invented numbers signals about as often as the equation says", "[statistics]")
{
    std::mt19937_64 random(7);
    std::normal_distribution<double> normal;
    constexpr int series = 20'000;
    int signals = 0;
    for (int i = 0; i < series; ++i) {
        double sum = 0;
        for (int t = 0; t < 22; ++t) {
            sum = std::max(0.0, sum + normal(random) + 0.5 - 0.5);
            if (sum > 4) {
                ++signals;
                break;
            }
        }
    }
    const double expected = cusumSignalProbability(0.5, 4, 0.5, 22).value();
    CHECK_THAT(static_cast<double>(signals) / series,
               WithinAbs(expected, 4 * std::sqrt(expected * (1 - expected) / series)));
}

TEST_CASE("impossible charts, and runs too long to tell, are refused", "[statistics][errors]")
{
    CHECK(cusumRunLength(-0.1, 4, 0).error().reason == Reason::outOfRange);
    CHECK(cusumRunLength(0.5, 0, 0).error().reason == Reason::outOfRange);
    CHECK(cusumRunLength(0.5, 4, NAN).error().reason == Reason::outOfRange);
    CHECK(cusumRunLength(2, 30, -10).error().reason == Reason::outOfRange);
    CHECK(ewmaRunLength(0, 3, 0).error().reason == Reason::outOfRange);
    CHECK(ewmaRunLength(0.3, 8.5, 0).error().reason == Reason::outOfRange);
    CHECK(ewmaRunLength(0.3, 8, 0).error().reason == Reason::outOfRange);
    CHECK(ewmaSignalProbability(0.3, 3, 0, -1).error().reason == Reason::outOfRange);
}
