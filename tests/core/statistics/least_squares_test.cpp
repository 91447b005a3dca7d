// Straight lines and a curve that levels off, against the certified values of NIST.
//
// Source: NIST Statistical Reference Datasets (StRD), linear regression "Norris" and nonlinear regression
// "Misra1a", https://www.itl.nist.gov/div898/strd. Norris' data and values were written down from memory
// and reproduce each other to twelve digits.

#include "core/statistics/least_squares.h"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <rapidcheck.h>

#include <cmath>

using Catch::Matchers::WithinRel;
using namespace ebbline;
using namespace ebbline::statistics;

namespace {

const std::vector<Point> norris{
    {0.2, 0.1},     {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2},    {226.5, 228.1}, {666.3, 668.5}, {996.3, 998.5}, {448.6, 449.1},
    {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3},     {0.6, 0.1},     {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9}, {11.6, 10.8},
    {556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3},     {0.3, 0.6},     {556.8, 557.6}, {339.1, 339.3},
    {887.2, 888.0}, {999.0, 998.5}, {779.0, 778.9}, {11.1, 10.2},   {118.3, 117.6}, {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2}, {0.5, 0.2}};

const std::vector<Point> misra1a{{77.6, 10.07},  {114.9, 14.73}, {141.1, 17.94}, {190.8, 23.93}, {239.9, 29.61}, {289.0, 35.18}, {332.8, 40.02},
                                 {378.4, 44.82}, {434.8, 50.76}, {477.3, 55.05}, {536.8, 61.01}, {593.1, 66.40}, {689.1, 75.47}, {760.0, 81.78}};

}  // namespace

TEST_CASE("the line through Norris' data is the certified one", "[statistics][published]")
{
    const auto line = leastSquares(norris);

    REQUIRE(line);
    CHECK_THAT(line->intercept, WithinRel(-0.262323073774029, 1e-9));
    CHECK_THAT(line->slope, WithinRel(1.00211681802045, 1e-12));
    CHECK_THAT(line->interceptError, WithinRel(0.232818234301152, 1e-9));
    CHECK_THAT(line->slopeError, WithinRel(0.000429796848199937, 1e-9));
    CHECK_THAT(line->residualDeviation, WithinRel(0.884796396144373, 1e-9));
    CHECK_THAT(line->determination, WithinRel(0.999993745883712, 1e-12));
}

TEST_CASE("the curve through Misra's data is the certified one from both starts", "[statistics][published]")
{
    struct Start { double top; double rate; };
    for (const auto& [top, rate] : {Start{500, 1e-4}, Start{250, 5e-4}}) {
        CAPTURE(top);
        const auto curve = fitLevellingOff(misra1a, top, rate);
        REQUIRE(curve);
        CHECK_THAT(curve->top, WithinRel(2.3894212918E+02, 1e-8));
        CHECK_THAT(curve->rate, WithinRel(5.5015643181E-04, 1e-8));
        CHECK_THAT(curve->topError, WithinRel(2.7070075241E+00, 1e-7));
        CHECK_THAT(curve->rateError, WithinRel(7.2668688436E-06, 1e-7));
        CHECK_THAT(curve->squares, WithinRel(1.2455138894E-01, 1e-9));
        CHECK_THAT(curve->residualDeviation, WithinRel(1.0187876330E-01, 1e-9));
    }
}

TEST_CASE("moving or stretching the points moves and stretches the line", "[statistics][property]")
{
    CHECK(rc::check("units", [] {
        std::vector<Point> points;
        for (int i = *rc::gen::inRange(3, 30); i > 0; --i)
            points.push_back({*rc::gen::inRange(-100, 101) / 10.0, *rc::gen::inRange(-100, 101) / 10.0});
        const auto line = leastSquares(points);
        RC_PRE(line.has_value());
        for (Point& point : points)
            point = {2 * point.x + 5, -3 * point.y + 1};
        const auto other = leastSquares(points);
        RC_ASSERT(other.has_value());
        RC_ASSERT(std::abs(other->slope + 1.5 * line->slope) < 1e-9);
        RC_ASSERT(std::abs(other->slopeError - 1.5 * line->slopeError) < 1e-9);
        RC_ASSERT(std::abs(other->determination - line->determination) < 1e-9);
        // The line goes through the middle of the points.
        double x = 0, y = 0;
        for (const Point& point : points) {
            x += point.x / static_cast<double>(points.size());
            y += point.y / static_cast<double>(points.size());
        }
        RC_ASSERT(std::abs(other->intercept + other->slope * x - y) < 1e-9);
    }));
}

TEST_CASE("too few points, and points that say nothing, give no line", "[statistics][errors]")
{
    CHECK(leastSquares(std::vector<Point>{{1, 1}, {2, 2}}).error().reason == Reason::notEnough);
    CHECK(leastSquares(std::vector<Point>{{1, 1}, {1, 2}, {1, 3}}).error().reason == Reason::notEnough);
    CHECK(leastSquares(std::vector<Point>{{1, 2}, {2, 2}, {3, 2}}).error().reason == Reason::notEnough);
    CHECK(leastSquares(std::vector<Point>{{1, NAN}, {2, 2}, {3, 2}}).error().reason == Reason::notFinite);
    CHECK(leastSquares(std::vector<Point>{{-1e200, 1}, {1e200, 2}, {3, 2}}).error().reason == Reason::notFinite);
    CHECK(fitLevellingOff(misra1a, 0, 1).error().reason == Reason::outOfRange);
    CHECK(fitLevellingOff(misra1a, 1, NAN).error().reason == Reason::outOfRange);
    CHECK(fitLevellingOff(std::vector<Point>{{1, 1}, {2, 2}}, 1, 1).error().reason == Reason::notEnough);
    // A straight line never levels off.
    CHECK(fitLevellingOff(std::vector<Point>{{0, 0}, {1, 1}, {2, 2}, {3, 3}, {4, 4}}, 10, 0.1).error().reason == Reason::notEnough);
}
