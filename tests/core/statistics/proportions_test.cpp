// Wilson's interval against published values, and the laws any interval must keep.
//
// Source: R. G. Newcombe, "Two-sided confidence intervals for the single proportion: comparison of
// seven methods", Statistics in Medicine 17 (1998) 857-872, table I, method 3.

#include "core/statistics/proportions.h"

#include "core/statistics/distributions.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/generators/catch_generators.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <cmath>

using Catch::Matchers::WithinAbs;
using namespace ebbline::statistics;

TEST_CASE("Wilson's interval is the published one", "[statistics][published]")
{
    // To eight digits by R 4.2.2 from the formula.
    struct Row { long events; long total; double low; double high; double lowByR; double highByR; };
    const auto row = GENERATE(Row{81, 263, 0.2553, 0.3662, .25528852, .36620958}, Row{15, 148, 0.0624, 0.1605, .06238640, .16048724},
                              Row{0, 20, 0.0, 0.1611, 0, .16112516}, Row{1, 29, 0.0061, 0.1718, .00611321, .17175522});
    constexpr double halfOfLastPrintedDigit = 0.00005;

    const auto interval = wilson(row.events, row.total);

    REQUIRE(interval);
    CHECK_THAT(interval->low, WithinAbs(row.low, halfOfLastPrintedDigit + 1e-9));
    CHECK_THAT(interval->high, WithinAbs(row.high, halfOfLastPrintedDigit + 1e-9));
    CHECK_THAT(interval->low, WithinAbs(row.lowByR, 0.51e-8));
    CHECK_THAT(interval->high, WithinAbs(row.highByR, 0.51e-8));
}

TEST_CASE("the interval lies within 0 and 1 and mirrors with the complement", "[statistics][property]")
{
    CHECK(rc::check("mirror", [] {
        const long total = *rc::gen::inRange(1L, 5000L);
        const long events = *rc::gen::inRange(0L, total + 1);
        const auto interval = wilson(events, total);
        const auto mirrored = wilson(total - events, total);
        RC_ASSERT(interval.has_value() && mirrored.has_value());
        RC_ASSERT(interval->low >= 0 && interval->low <= interval->high && interval->high <= 1);
        RC_ASSERT(std::abs(interval->low - (1 - mirrored->high)) < 1e-12);
    }));
}

TEST_CASE("counts that cannot be are refused", "[statistics][errors]")
{
    CHECK_FALSE(wilson(0, 0));
    CHECK_FALSE(wilson(-1, 10));
    CHECK_FALSE(wilson(11, 10));
    CHECK_FALSE(wilson(1, 10, 1.0));
}

TEST_CASE("the normal distribution agrees with R 4.2.2", "[statistics]")
{
    CHECK_THAT(normalCdf(1.96), WithinAbs(0.9750021048517796, 1e-15));          // pnorm(1.96)
    CHECK_THAT(normalQuantile(0.975).value(), WithinAbs(1.959963984540054, 1e-13));  // qnorm(.975)
    CHECK_THAT(betaQuantile(0.025, 5.5, 95.5).value(), WithinAbs(0.01933181198586674, 1e-12));  // qbeta
    CHECK_FALSE(normalQuantile(0));
    CHECK_FALSE(normalQuantile(1));
}
