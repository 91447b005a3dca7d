// Chance: the same on every machine, and of the shape it says.

#include "core/rehearsal/chance.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>
#include <functional>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace ebbline::rehearsal;

namespace {

/// Mean and variance of 100,000 draws.
std::pair<double, double> momentsOf(const std::function<double()>& draw)
{
    constexpr int draws = 100'000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < draws; ++i) {
        const double value = draw();
        sum += value;
        squares += value * value;
    }
    const double mean = sum / draws;
    return {mean, squares / draws - mean * mean};
}

}  // namespace

TEST_CASE("exponential and logarithm agree with the library's to the last digits", "[rehearsal][chance]")
{
    for (const double x : {-700.0, -37.2, -1.0, -1e-9, 0.0, 0.3465735902799727, 1.0, 2.5, 100.0, 700.0})
        CHECK_THAT(portableExp(x), WithinRel(std::exp(x), 1e-14));
    for (const double x : {1e-300, 1e-9, 0.5, 0.7071, 0.99999, 1.0, 1.00001, 2.0, 10.0, 1e300})
        CHECK_THAT(portableLog(x), WithinAbs(std::log(x), 1e-13));
}

TEST_CASE("a seed and a stream give the same numbers always", "[rehearsal][chance]")
{
    // std::mt19937_64 is fixed by the standard to the bit; the rest is sums and products. First
    // draws recorded once; another machine must give them too.
    Chance chance(42, 7);
    CHECK(chance.whole(0, 999'999) == 131006);
    CHECK(chance.whole(0, 999'999) == 120995);
    CHECK_THAT(chance.normal(0, 1), WithinAbs(0.18175706659628149, 0.0));
}

TEST_CASE("streams of one seed differ", "[rehearsal][chance]")
{
    Chance first(42, 0);
    Chance second(42, 1);

    CHECK(first.uniform() != second.uniform());
}

TEST_CASE("draws have the mean and the variance that they promise", "[rehearsal][chance]")
{
    // Three standard errors of 100,000 draws, rounded up.
    Chance chance(1, 0);
    const auto [uniformMean, uniformVariance] = momentsOf([&] { return chance.uniform(); });
    CHECK_THAT(uniformMean, WithinAbs(0.5, 0.003));
    CHECK_THAT(uniformVariance, WithinAbs(1.0 / 12, 0.001));
    const auto [normalMean, normalVariance] = momentsOf([&] { return chance.normal(2, 3); });
    CHECK_THAT(normalMean, WithinAbs(2, 0.03));
    CHECK_THAT(normalVariance, WithinAbs(9, 0.15));
    const auto [exponentialMean, exponentialVariance] = momentsOf([&] { return chance.exponential(2); });
    CHECK_THAT(exponentialMean, WithinAbs(2, 0.02));
    CHECK_THAT(exponentialVariance, WithinAbs(4, 0.15));
    const auto [gammaMean, gammaVariance] = momentsOf([&] { return chance.gamma(5, 1); });
    CHECK_THAT(gammaMean, WithinAbs(1, 0.005));
    CHECK_THAT(gammaVariance, WithinAbs(0.2, 0.005));
    const auto [betaMean, betaVariance] = momentsOf([&] { return chance.beta(2, 10); });
    CHECK_THAT(betaMean, WithinAbs(2.0 / 12, 0.002));
    CHECK_THAT(betaVariance, WithinAbs(20.0 / (144 * 13), 0.0005));
}
