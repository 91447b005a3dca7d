// The tabular CUSUM against a published worked example.
//
// Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.3 "CUSUM Control Charts",
// doi:10.18434/M32189: target 325, k 0.3175, h 4.1959.

#include "core/statistics/cusum.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <array>

using Catch::Matchers::WithinAbs;
using namespace ebbline::statistics;

TEST_CASE("CUSUM follows the NIST example and signals at group 14", "[statistics][published]")
{
    constexpr std::array x{324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600,
                           324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350};
    constexpr std::array high{0.0,    0.0,  0.0,    0.0,   0.0325,  0.0,    0.0,     0.0, 0.0, 0.0,
                              0.0,    0.0,  3.0075, 4.94,  7.4475,  10.63,  11.9875, 14.445, 16.0025, 19.035};
    constexpr std::array low{0.0, 0.0075, 0.0, 0.3325, 0.0, 0.0, 0.5575, 0.715, 0.1725, 0.255,
                             0.3125, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0};
    // The plain sum of the differences, printed beside: of what is charted, not of the chart.
    constexpr std::array sums{-0.075, -0.4,   -0.675, -1.325, -0.975, -0.75, -1.625, -2.1,  -1.875, -2.275,
                              -2.65,  -2.5, 0.825,  3.075,  5.9,    9.4,   11.075, 13.85, 15.725, 19.075};
    auto cusum = Cusum::create({.target = 325, .slack = 0.3175, .decision = 4.1959});
    REQUIRE(cusum);
    double sum = 0;

    int firstSignal = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        CAPTURE(i);
        const auto signal = cusum->observe(x[i]);
        REQUIRE(signal);
        if (*signal && firstSignal == 0)
            firstSignal = static_cast<int>(i) + 1;
        sum += x[i] - 325;
        CHECK_THAT(sum, WithinAbs(sums[i], 1e-9));
        CHECK_THAT(cusum->high(), WithinAbs(high[i], 1e-9));
        CHECK_THAT(cusum->low(), WithinAbs(low[i], 1e-9));
    }
    CHECK(firstSignal == 14);
}

TEST_CASE("a CUSUM needs a positive decision value and finite observations", "[statistics][errors]")
{
    CHECK_FALSE(Cusum::create({0, -1, 4}));
    CHECK_FALSE(Cusum::create({0, 0.5, 0}));
    auto cusum = Cusum::create({0, 0.5, 4});
    REQUIRE(cusum);
    CHECK_FALSE(cusum->observe(1.0 / 0.0));
    CHECK(cusum->high() == 0);
}
