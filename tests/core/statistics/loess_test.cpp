// LOESS and LMS against published examples, and their laws.
//
// Sources: NIST/SEMATECH e-Handbook of Statistical Methods, section 4.1.4.4 "LOESS (aka LOWESS)",
// doi:10.18434/M32189, worked example with 7 neighbours, degree 1. Kuczmarski et al., "2000 CDC growth
// charts for the United States", National Center for Health Statistics, data file wtageinf: boys, weight
// in kg at 9.5 and 0.5 months.

#include "core/statistics/lms.h"
#include "core/statistics/loess.h"

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

const std::vector<Point> nist{{0.5578196, 18.63654},  {2.0217271, 103.49646}, {2.5773252, 150.35391},
                              {3.4140288, 190.51031}, {4.3014084, 208.70115}, {4.7448394, 213.71135},
                              {5.1073781, 228.49353}, {6.5411662, 233.55387}, {6.7216176, 234.55054},
                              {7.2600583, 223.89225}, {8.1335874, 227.68339}, {9.1224379, 223.91982},
                              {11.9296663, 168.01999}, {12.3797674, 164.95750}, {13.2728619, 152.61107},
                              {14.2767453, 160.78742}, {15.3731026, 168.55567}, {15.6476637, 152.42658},
                              {18.5605355, 221.70702}, {18.5866354, 222.69040}, {18.7572812, 243.18828}};
constexpr double nistCurve[]{20.59302, 107.1603, 139.7674, 174.2630, 207.2334, 216.6616, 220.5445,
                             229.8607, 229.8347, 229.4301, 226.6045, 220.3904, 172.3480, 163.8417,
                             161.8490, 160.3351, 160.1920, 161.0556, 227.3400, 227.8985, 231.5586};

constexpr Lms boysNineAndAHalfMonths{-0.1600954, 9.476500305, 0.11218624};
constexpr Lms boysHalfAMonth{1.547523128, 4.003106424, 0.146025021};

}  // namespace

TEST_CASE("LOESS draws the NIST example", "[statistics][published]")
{
    const auto curve = loess(nist, {.neighbours = 7});

    REQUIRE(curve);
    REQUIRE(curve->size() == std::size(nistCurve));
    for (std::size_t i = 0; i < curve->size(); ++i) {
        CAPTURE(i);
        CHECK_THAT((*curve)[i], WithinAbs(nistCurve[i], i == 0 ? 0.000005 + 1e-6 : 0.00005 + 1e-5));
        CHECK_THAT(loessAt(nist, {.neighbours = 7}, nist[i].x).value(), WithinRel((*curve)[i], 1e-12));
    }
}

TEST_CASE("the neighbours of the first point weigh what the handbook prints", "[statistics][published]")
{
    // Of degree 0 the curve is the weighted mean: a 1 among zeros gives that point's share of the weight.
    constexpr double weights[]{1, .90334913, .75988974, .42621714, .08686171, .01072308, 0};
    std::vector<double> shares;
    for (std::size_t one = 0; one < std::size(weights); ++one) {
        std::vector<Point> points(std::begin(nist), std::end(nist));
        for (std::size_t i = 0; i < points.size(); ++i)
            points[i].y = i == one ? 1 : 0;
        shares.push_back(loess(points, {.neighbours = 7, .degree = 0})->front());
    }
    for (std::size_t i = 0; i < shares.size(); ++i) {
        CAPTURE(i);
        CHECK_THAT(shares[i] / shares[0], WithinAbs(weights[i], 3e-8));  // the x of the page have seven decimals
    }
}

TEST_CASE("LOESS returns a polynomial of its degree unchanged, in whatever order the points come",
          "[statistics][property]")
{
    CHECK(rc::check("polynomial", [] {
        const int degree = *rc::gen::inRange(0, 3);
        const auto coefficient = rc::gen::inRange(-50, 50);
        const double a = *coefficient, b = degree > 0 ? *coefficient : 0, c = degree > 1 ? *coefficient : 0;
        auto xs = *rc::gen::unique<std::vector<int>>(30, rc::gen::inRange(-300, 300));
        std::vector<Point> points;
        for (const int each : xs) {
            const double x = each / 10.0;
            points.push_back({x, a + b * x + c * x * x});
        }
        const auto curve = loess(points, {.neighbours = *rc::gen::inRange(degree + 3, 31), .degree = degree}).value();
        for (std::size_t i = 0; i < points.size(); ++i)
            RC_ASSERT(std::abs(curve[i] - points[i].y) < 1e-6 * (1 + std::abs(points[i].y)));
    }));
}

TEST_CASE("LOESS refuses what it cannot draw", "[statistics][errors]")
{
    CHECK(loess(nist, {.neighbours = 2}).error().reason == Reason::outOfRange);
    CHECK(loess(nist, {.neighbours = 22}).error().reason == Reason::outOfRange);
    CHECK(loess(nist, {.neighbours = 7, .degree = 3}).error().reason == Reason::outOfRange);
    CHECK(loess(std::vector<Point>(7, {1, NAN}), {.neighbours = 7}).error().reason == Reason::notFinite);
    CHECK(loess(std::vector<Point>{{1, 1}, {1, 2}, {1, 3}}, {.neighbours = 3}).error().reason == Reason::notEnough);
    CHECK(loess(std::vector<Point>{{1, 1}, {1, 2}, {1, 6}}, {.neighbours = 3, .degree = 0})->front() == 3);
    std::vector<Point> large;
    for (int i = 0; i < 8; ++i)
        large.push_back({static_cast<double>(i), 1e308});
    CHECK(loess(large, {.neighbours = 8}).error().reason == Reason::notFinite);
    CHECK(loessAt(nist, {.neighbours = 7}, 20).error().reason == Reason::outOfRange);
}

TEST_CASE("LMS scores are the published ones", "[statistics][published]")
{
    CHECK_THAT(lmsValue(boysNineAndAHalfMonths, -1.645).value(), WithinAbs(7.90, 0.005));
    CHECK_THAT(lmsScore(boysNineAndAHalfMonths, 9.7).value(), WithinAbs(0.207, 0.0005));
    CHECK_THAT(normalCdf(lmsScore(boysNineAndAHalfMonths, 9.7).value()), WithinAbs(0.58, 0.005));
    CHECK_THAT(lmsScore(boysNineAndAHalfMonths, 9.7).value(), WithinAbs(0.2073994118625, 0.5e-13 + 1e-13));  // R 4.2.2
    CHECK_THAT(normalCdf(lmsScore(boysNineAndAHalfMonths, 9.7).value()), WithinAbs(0.58215, 0.5e-5));
    struct Row { Lms reference; double centile; double value; };
    for (const Row& row : {Row{boysNineAndAHalfMonths, 0.03, 7.700624405}, Row{boysNineAndAHalfMonths, 0.05, 7.900755165},
                           Row{boysNineAndAHalfMonths, 0.90, 10.96017225}, Row{boysHalfAMonth, 0.03, 2.799548646},
                           Row{boysHalfAMonth, 0.90, 4.718161281}, Row{boysHalfAMonth, 0.95, 4.910130105},
                           Row{boysHalfAMonth, 0.97, 5.032624979}}) {
        CAPTURE(row.value);
        CHECK_THAT(lmsValue(row.reference, normalQuantile(row.centile).value()).value(), WithinAbs(row.value, 1e-8));
    }
    CHECK_THAT(lmsScore({0, 2, 0.1}, 2 * std::exp(0.15)).value(), WithinRel(1.5, 1e-12));
}

TEST_CASE("a measurement has one z and back, rising with it, and nearly the same close to power 0",
          "[statistics][property]")
{
    CHECK(rc::check("there and back", [] {
        const Lms reference{*rc::gen::inRange(-300, 301) / 100.0, *rc::gen::inRange(1, 5000) / 10.0,
                            *rc::gen::inRange(1, 40) / 100.0};
        const double value = reference.median * *rc::gen::inRange(20, 400) / 100.0;
        const double z = lmsScore(reference, value).value();
        RC_ASSERT(std::abs(lmsValue(reference, z).value() - value) < 1e-7 * value);
        RC_ASSERT(lmsScore(reference, value * 1.01).value() > z);
        const double atZero = lmsScore({0, reference.median, reference.variation}, value).value();
        const double closeBy = lmsScore({1e-9, reference.median, reference.variation}, value).value();
        RC_ASSERT(std::abs(atZero - closeBy) < 1e-6 * (1 + std::abs(atZero)));
    }));
}

TEST_CASE("LMS refuses zeros and a z that no measurement has", "[statistics][errors]")
{
    CHECK(lmsScore(boysHalfAMonth, 0).error().reason == Reason::outOfRange);
    CHECK(lmsScore({NAN, 1, 1}, 1).error().reason == Reason::outOfRange);
    CHECK(lmsScore({1, 0, 1}, 1).error().reason == Reason::outOfRange);
    CHECK(lmsScore({1, 1, 0}, 1).error().reason == Reason::outOfRange);
    CHECK(lmsValue({1, 1, 0.2}, -5).error().reason == Reason::outOfRange);
    CHECK(lmsValue({1, 1, 0.2}, NAN).error().reason == Reason::outOfRange);
}
