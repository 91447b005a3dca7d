// The local-level filter and smoother against the Nile series.
//
// Source: J. Durbin, S. J. Koopman, "Time Series Analysis by State Space Methods", 2nd ed., Oxford
// 2012, chapter 2: annual flow of the Nile at Aswan 1871-1970, variances 15099 and 1469.1, start
// 0 with variance 1e7. The figures to ten digits were recomputed with R's StructTS and KalmanSmooth.

#include "core/statistics/local_level.h"

#include "tests/core/statistics/nile.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <array>
#include <cmath>

using Catch::Matchers::WithinRel;
using namespace ebbline::statistics;

namespace {

constexpr LocalLevelModel nileModel{.observation = 15099, .drift = 1469.1, .startMean = 0, .startVariance = 1e7};

}  // namespace

TEST_CASE("predictions of the Nile's level are the published ones", "[statistics][published]")
{
    constexpr std::array means{1118.311462, 1140.108439, 1072.316018, 1116.974768};
    constexpr std::array variances{16545.33639, 9363.657531, 7248.597378, 6366.564813};
    auto filter = LocalLevelFilter::create(nileModel);
    REQUIRE(filter);

    for (std::size_t t = 0; t < nile.size(); ++t) {
        REQUIRE(filter->observe(nile[t]));
        filter->advance();
        if (t < means.size()) {
            CHECK_THAT(filter->level().mean, WithinRel(means[t], 1e-9));
            CHECK_THAT(filter->level().variance, WithinRel(variances[t], 1e-9));
        }
    }
    CHECK_THAT(filter->level().mean, WithinRel(798.3702926, 1e-9));
    CHECK_THAT(filter->level().variance, WithinRel(5501.257942, 1e-9));
}

TEST_CASE("the smoothed Nile is the published one", "[statistics][published]")
{
    std::vector<std::vector<double>> steps;
    for (const double flow : nile)
        steps.push_back({flow});

    const auto smoothed = smooth(nileModel, steps);

    REQUIRE(smoothed);
    struct Row { std::size_t year; double mean; double variance; };
    for (const Row row : {Row{1, 1111.220258, 4030.532767}, Row{2, 1110.529257, 3242.056999},
                          Row{50, 834.763259, 2326.75687}, Row{100, 798.3702926, 4032.157942}}) {
        CAPTURE(row.year);
        CHECK_THAT((*smoothed)[row.year - 1].mean, WithinRel(row.mean, 1e-9));
        CHECK_THAT((*smoothed)[row.year - 1].variance, WithinRel(row.variance, 1e-9));
    }
}

TEST_CASE("with nothing observed the level is the start and its variance grows by the drift", "[statistics]")
{
    const std::vector<std::vector<double>> steps(5);
    const LocalLevelModel model{1, 0.25, 3, 2};

    const auto smoothed = smooth(model, steps);

    REQUIRE(smoothed);
    for (std::size_t t = 0; t < 5; ++t) {
        CHECK((*smoothed)[t].mean == 3);
        CHECK_THAT((*smoothed)[t].variance, WithinRel(2 + 0.25 * static_cast<double>(t), 1e-12));
    }
}

TEST_CASE("two observations in one step are one with their mean and half the variance", "[statistics][property]")
{
    CHECK(rc::check("pooled", [] {
        const double a = *rc::gen::inRange(-300, 300) / 100.0;
        const double b = *rc::gen::inRange(-300, 300) / 100.0;
        auto twice = LocalLevelFilter::create({0.30, 0.02, 0, 0.40});
        auto once = LocalLevelFilter::create({0.15, 0.02, 0, 0.40});
        (void)twice->observe(a);
        (void)twice->observe(b);
        (void)once->observe((a + b) / 2);
        RC_ASSERT(std::abs(twice->level().mean - once->level().mean) < 1e-12);
        RC_ASSERT(std::abs(twice->level().variance - once->level().variance) < 1e-12);
    }));
}

TEST_CASE("impossible variances and values are refused", "[statistics][errors]")
{
    CHECK_FALSE(LocalLevelFilter::create({0, 1, 0, 1}));
    CHECK_FALSE(LocalLevelFilter::create({1, -1, 0, 1}));
    CHECK_FALSE(LocalLevelFilter::create({1, 1, NAN, 1}));
    CHECK_FALSE(LocalLevelFilter::create({1, 1, 0, -1}));
    auto filter = LocalLevelFilter::create({1, 1, 0, 1});
    REQUIRE(filter);
    CHECK_FALSE(filter->observe(NAN));
    CHECK(filter->level().mean == 0);
}
