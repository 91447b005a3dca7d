// Jeffreys' and Clopper-Pearson's intervals against published ones, and the laws they must keep.
//
// Sources: L. D. Brown, T. T. Cai, A. DasGupta, "Interval estimation for a binomial proportion",
// Statistical Science 16 (2001) 101-133, sections 3.1.2 and 4.2.1; R. G. Newcombe, Statistics in
// Medicine 17 (1998) 857-872, for the four examples. All figures to eight digits were recomputed with
// R 4.2.2: qbeta(c(.025,.975), x+.5, n-x+.5) and binom.test(x, n)$conf.int.

#include "core/statistics/proportions.h"

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

constexpr double halfOfLastPrintedDigit = 0.5e-8;

struct Row { long events; long total; double low; double high; };

}  // namespace

TEST_CASE("Jeffreys' interval is the published one", "[statistics][published]")
{
    const auto row = GENERATE(Row{81, 263, .25452194, .36564750}, Row{15, 148, .06044852, .15764314},
                              Row{0, 20, 0, .11663898}, Row{1, 29, .00374617, .15007769}, Row{0, 10, 0, .21719627},
                              Row{1, 10, .01101167, .38131477}, Row{2, 10, .04405941, .50277450},
                              Row{3, 10, .09269459, .60581832}, Row{4, 10, .15306710, .69632051},
                              Row{5, 10, .22352867, .77647133});

    const auto interval = jeffreys(row.events, row.total);

    REQUIRE(interval);
    CHECK_THAT(interval->low, WithinAbs(row.low, halfOfLastPrintedDigit + 1e-10));
    CHECK_THAT(interval->high, WithinAbs(row.high, halfOfLastPrintedDigit + 1e-10));
}

TEST_CASE("Clopper and Pearson's interval is the published one", "[statistics][published]")
{
    const auto row = GENERATE(Row{81, 263, .25273675, .36762192}, Row{15, 148, .05784401, .16165049},
                              Row{0, 20, 0, .16843347}, Row{1, 29, .00087265, .17764430});

    const auto interval = clopperPearson(row.events, row.total);

    REQUIRE(interval);
    CHECK_THAT(interval->low, WithinAbs(row.low, halfOfLastPrintedDigit + 1e-10));
    CHECK_THAT(interval->high, WithinAbs(row.high, halfOfLastPrintedDigit + 1e-10));
}

TEST_CASE("without an event the exact upper limit is 1 - 0.025^(1/n)", "[statistics]")
{
    const long total = GENERATE(1L, 7L, 200L, 100000L);
    const auto interval = clopperPearson(0, total);
    REQUIRE(interval);
    CHECK(interval->low == 0);
    CHECK_THAT(interval->high, WithinAbs(1 - std::pow(0.025, 1.0 / static_cast<double>(total)), 1e-12));
}

TEST_CASE("the intervals mirror with the complement, hold the share, and widen with the confidence",
          "[statistics][property]")
{
    CHECK(rc::check("mirror, cover, widen", [] {
        const long total = *rc::gen::inRange(1L, 3000L);
        const long events = *rc::gen::inRange(0L, total + 1);
        const double share = static_cast<double>(events) / static_cast<double>(total);
        for (const auto method : {&jeffreys, &clopperPearson, &wilson}) {
            const Interval own = method(events, total, 0.95).value();
            const Interval mirrored = method(total - events, total, 0.95).value();
            const Interval wider = method(events, total, 0.99).value();
            RC_ASSERT(own.low >= 0 && own.low <= share && share <= own.high && own.high <= 1);
            RC_ASSERT(std::abs(own.low - (1 - mirrored.high)) < 1e-10);
            RC_ASSERT(wider.low <= own.low + 1e-12 && wider.high >= own.high - 1e-12);
        }
        // The exact interval holds Jeffreys'.
        RC_ASSERT(clopperPearson(events, total).value().low <= jeffreys(events, total).value().low);
        RC_ASSERT(clopperPearson(events, total).value().high >= jeffreys(events, total).value().high);
    }));
}

TEST_CASE("counts that cannot be are refused by all intervals", "[statistics][errors]")
{
    for (const auto method : {&jeffreys, &clopperPearson, &wilson}) {
        CHECK(method(0, 0, 0.95).error().reason == Reason::outOfRange);
        CHECK(method(-1, 10, 0.95).error().reason == Reason::outOfRange);
        CHECK(method(11, 10, 0.95).error().reason == Reason::outOfRange);
        CHECK(method(1, 10, NAN).error().reason == Reason::outOfRange);
    }
}
