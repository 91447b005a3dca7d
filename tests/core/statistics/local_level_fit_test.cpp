// Variances, smoother and forecast of a local level from a diffuse start, against the Nile series.
//
// Source: J. Durbin, S. J. Koopman, "Time Series Analysis by State Space Methods", 2nd ed., Oxford 2012,
// sections 2.9 and 2.10: variances 15099 and 1469.1, missing years 21-40 and 61-80 in section 2.7.
// Recomputed with R 4.2.2 (the concentrated likelihood with optimize(tol = 1e-12); KalmanSmooth and
// KalmanForecast from the first observation on). The likelihood is flat: StructTS stops at 15098.577,
// 1469.147. Without the book's constant for the first observation its logarithm is -632.5456.

#include "core/statistics/local_level_fit.h"

#include "tests/core/statistics/nile.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

namespace {

using Steps = std::vector<std::vector<double>>;

constexpr LocalLevelVariances published{.observation = 15099, .drift = 1469.1};

Steps nileSteps(bool withGaps)
{
    Steps steps;
    for (std::size_t i = 0; i < nile.size(); ++i) {
        const bool gap = withGaps && ((i >= 20 && i < 40) || (i >= 60 && i < 80));
        steps.push_back(gap ? std::vector<double>{} : std::vector<double>{nile[i]});
    }
    return steps;
}

Steps anySteps(std::size_t count)
{
    Steps steps;
    for (std::size_t t = 0; t < count; ++t) {
        std::vector<double> step;
        for (const int value : *rc::gen::container<std::vector<int>>(
                 static_cast<std::size_t>(*rc::gen::inRange(0, 3)), rc::gen::inRange(-300, 301)))
            step.push_back(value / 100.0);
        steps.push_back(step);
    }
    steps.front() = {0.5};
    return steps;
}

}  // namespace

TEST_CASE("the likeliest variances of the Nile are the published ones", "[statistics][published]")
{
    const auto fit = fitLocalLevel(nileSteps(false));

    REQUIRE(fit);
    CHECK(fit->driftSeen);
    CHECK_THAT(fit->variances.observation, WithinAbs(15099, 0.5));   // printed
    CHECK_THAT(fit->variances.drift, WithinAbs(1469.1, 0.1));
    CHECK_THAT(fit->variances.observation, WithinRel(15098.518313732, 1e-6));
    CHECK_THAT(fit->variances.drift, WithinRel(1469.176366002, 1e-6));
    CHECK_THAT(fit->logLikelihood, WithinAbs(-632.545625103, 1e-8));
    CHECK_THAT(localLevelLogLikelihood(published, nileSteps(false)).value(), WithinAbs(-632.545625116, 1e-8));
    // The book counts log(2 pi) / 2 for the diffuse first observation, too.
    CHECK_THAT(fit->logLikelihood - 0.5 * std::log(2 * std::numbers::pi), WithinAbs(-633.4645636, 0.6e-7));
}

TEST_CASE("with forty years missing the Nile's variances are those R finds", "[statistics]")
{
    const auto fit = fitLocalLevel(nileSteps(true));

    REQUIRE(fit);
    CHECK_THAT(fit->variances.observation, WithinRel(17899.842693103, 1e-6));
    CHECK_THAT(fit->variances.drift, WithinRel(685.820910422, 1e-6));
    CHECK_THAT(fit->logLikelihood, WithinAbs(-380.007729121, 1e-8));
}

TEST_CASE("the Nile is smoothed through its gaps as in R", "[statistics]")
{
    const auto levels = smoothFromNothing(published, nileSteps(true));

    REQUIRE(levels);
    struct Row { std::size_t year; double mean; double variance; };
    for (const Row row : {Row{2, 1110.47649347, 3242.96481722}, Row{30, 903.421102958, 9715.00590246},
                          Row{50, 831.938841755, 2334.14454989}, Row{70, 837.17732371, 9715.00554901},
                          Row{100, 798.315114618, 4032.18679745}}) {
        CAPTURE(row.year);
        CHECK_THAT((*levels)[row.year - 1].mean, WithinRel(row.mean, 1e-10));
        CHECK_THAT((*levels)[row.year - 1].variance, WithinRel(row.variance, 1e-10));
    }
    const LevelEstimate fifth = filterFromNothing(published, nileSteps(true))->forecast(5);
    CHECK_THAT(fifth.mean, WithinRel(798.315114618, 1e-10));
    CHECK_THAT(fifth.variance, WithinRel(26476.6867974, 1e-10));
}

TEST_CASE("nothing close by is likelier than the fit", "[statistics][property]")
{
    CHECK(rc::check("a maximum", [] {
        const Steps steps = anySteps(25);
        const auto fit = fitLocalLevel(steps);
        if (!fit) {
            RC_ASSERT(fit.error().reason == Reason::notEnough);
            return;
        }
        const auto [observation, drift] = fit->variances;
        RC_ASSERT(std::abs(localLevelLogLikelihood(fit->variances, steps).value() - fit->logLikelihood) < 1e-8);
        for (const double a : {0.98, 1.0, 1.02})
            for (const double b : {0.98, 1.0, 1.02})
                RC_ASSERT(localLevelLogLikelihood({observation * a, drift * b}, steps).value() <= fit->logLikelihood + 1e-9);
        if (!fit->driftSeen)
            RC_ASSERT(localLevelLogLikelihood({observation, observation * 1e-3}, steps).value() <= fit->logLikelihood);
    }));
}

TEST_CASE("the likelihood does not care for the order within a step, nor for time turned round", "[statistics][property]")
{
    CHECK(rc::check("turned round", [] {
        const Steps steps = anySteps(20);
        Steps back(steps.rbegin(), steps.rend());
        for (auto& step : back)
            step = {step.rbegin(), step.rend()};
        const LocalLevelVariances variances{0.4, 0.1};
        const auto there = localLevelLogLikelihood(variances, steps), turned = localLevelLogLikelihood(variances, back);
        RC_ASSERT(there.has_value() == turned.has_value());
        if (there)
            RC_ASSERT(std::abs(*there - *turned) < 1e-8);
        const auto levels = smoothFromNothing(variances, steps).value(), levelsBack = smoothFromNothing(variances, back).value();
        for (std::size_t t = 0; t < steps.size(); ++t) {
            RC_ASSERT(std::abs(levels[t].mean - levelsBack[steps.size() - 1 - t].mean) < 1e-8);
            RC_ASSERT(std::abs(levels[t].variance - levelsBack[steps.size() - 1 - t].variance) < 1e-8);
        }
    }));
}

TEST_CASE("a start of nothing is one of enormous variance", "[statistics]")
{
    const auto own = smoothFromNothing(published, nileSteps(true));
    const auto wide = smooth({published.observation, published.drift, 0, 1e13}, nileSteps(true));
    REQUIRE(own);
    REQUIRE(wide);
    for (std::size_t t = 0; t < own->size(); ++t) {
        CHECK_THAT((*own)[t].mean, WithinRel((*wide)[t].mean, 1e-6));
        CHECK_THAT((*own)[t].variance, WithinRel((*wide)[t].variance, 1e-6));
    }
}

TEST_CASE("the forecast keeps the level, and its variance grows by the drift a step", "[statistics]")
{
    const auto filter = filterFromNothing(published, nileSteps(false));
    REQUIRE(filter);
    const LevelEstimate next = filter->forecast(1), tenth = filter->forecast(10);
    // Prediction of 1971: 798.37 with variance 5501.26 of the level, Durbin and Koopman, section 2.2.
    CHECK_THAT(next.mean, WithinAbs(798.3703, 0.001));
    CHECK_THAT(next.variance, WithinAbs(5501.258 + 15099, 0.01));
    CHECK(tenth.mean == next.mean);
    CHECK_THAT(tenth.variance, WithinRel(next.variance + 9 * 1469.1, 1e-12));
}

TEST_CASE("a series that says nothing about its variances is not given any", "[statistics][errors]")
{
    CHECK(fitLocalLevel(Steps{}).error().reason == Reason::notEnough);
    CHECK(fitLocalLevel(Steps{{1}, {}, {2}, {3}}).error().reason == Reason::notEnough);
    CHECK(fitLocalLevel(Steps(10, {4})).error().reason == Reason::notEnough);
    CHECK(fitLocalLevel(Steps{{1}, {NAN}, {2}, {3}, {3}}).error().reason == Reason::notFinite);
    CHECK(fitLocalLevel(Steps{{1e308}, {-1e308}, {1e308}, {-1e308}}).error().reason == Reason::notFinite);
    // A straight climb: all of it is drift.
    CHECK(fitLocalLevel(Steps{{1}, {2}, {3}, {4}, {5}, {6}, {7}}).error().reason == Reason::notEnough);
    // Noise alone: no drift is seen, and said so.
    const auto still = fitLocalLevel(Steps{{1}, {-1}, {1}, {-1}, {1}, {-1}, {1}, {-1}});
    REQUIRE(still);
    CHECK_FALSE(still->driftSeen);
    CHECK(still->variances.drift == 0);
    CHECK(localLevelLogLikelihood({0, 1}, Steps{{1}, {2}}).error().reason == Reason::outOfRange);
    CHECK(localLevelLogLikelihood({1, 1}, Steps{{1}}).error().reason == Reason::notEnough);
    CHECK(filterFromNothing({1, 1}, Steps{{}, {}}).error().reason == Reason::notEnough);
    CHECK(smoothFromNothing({1, 1}, Steps{{}, {2}})->front().variance == 2);
}
