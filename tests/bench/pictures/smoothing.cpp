#include "tests/bench/pictures/picture.h"
#include "tests/bench/pictures/published.h"

#include "core/statistics/lms.h"
#include "core/statistics/local_level_fit.h"
#include "tests/core/statistics/nile.h"

#include <cmath>

namespace ebbline::bench {

namespace {

using namespace statistics;

using Series = std::vector<std::vector<double>>;

constexpr LocalLevelVariances published{.observation = 15099, .drift = 1469.1};  // Durbin and Koopman 2012, section 2.9

Series nileSteps(bool gaps)
{
    Series steps;
    for (std::size_t i = 0; i < nile.size(); ++i) {
        const bool gap = gaps && ((i >= 20 && i < 40) || (i >= 60 && i < 80));
        steps.push_back(gap ? std::vector<double>{} : std::vector<double>{nile[i]});
    }
    return steps;
}

struct Around {
    Points middle, low, high;

    void add(double x, const LevelEstimate& estimate)
    {
        const double half = 1.645 * std::sqrt(estimate.variance);
        middle.emplace_back(x, estimate.mean);
        low.emplace_back(x, estimate.mean - half);
        high.emplace_back(x, estimate.mean + half);
    }
};

Picture nilePicture(bool gaps)
{
    const Series steps = nileSteps(gaps);
    Picture picture(gaps ? "The level of the Nile through two gaps of twenty years, and a forecast: without observations it widens."
                         : "A hundred years of the Nile, and the level that wanders beneath them.",
                    axis("year", 1870, gaps ? 1990 : 1970, 20), axis("flow", 400, 1400, 200));
    Around level;
    Points seen;
    const auto smoothed = smoothFromNothing(published, steps).value();
    for (std::size_t t = 0; t < steps.size(); ++t) {
        const double year = 1871 + static_cast<double>(t);
        level.add(year, smoothed[t]);
        if (!steps[t].empty())
            seen.emplace_back(year, steps[t].front());
    }
    picture.band(level.low, level.high, ink::sand, "90 % limits of the level");
    if (gaps) {
        Around ahead;
        const LocalLevelFilter filter = filterFromNothing(published, steps).value();
        for (int i = 1; i <= 20; ++i)
            ahead.add(1970 + i, filter.forecast(i));
        picture.band(ahead.low, ahead.high, ink::wetSand, "90 % limits of an observation ahead");
        picture.line(ahead.middle, {ink::right, Dash::dashed, 2}, "forecast: the level stays");
    }
    picture.marks(seen, Mark::hollow, ink::soft, "observed");
    picture.line(level.middle, {ink::tide, Dash::solid, 2}, "smoothed level");
    return picture;
}

Picture variances()
{
    Picture picture("The likelihood of the Nile by the ratio of both variances; its top is flat.",
                    {"drift / observation variance", -4, 1, {{-4, "0.0001"}, {-3, "0.001"}, {-2, "0.01"}, {-1, "0.1"}, {0, "1"}, {1, "10"}}},
                    axis("log-likelihood", -670, -630, 10));
    const Series steps = nileSteps(false);
    const LocalLevelFit fit = fitLocalLevel(steps).value();
    // The sum of both variances stays: one number is varied.
    const double whole = fit.variances.observation + fit.variances.drift;
    Points points;
    for (int i = -80; i <= 20; ++i) {
        const double ratio = std::pow(10.0, i / 20.0);
        const LocalLevelVariances tried{whole / (1 + ratio), whole * ratio / (1 + ratio)};
        points.emplace_back(i / 20.0, localLevelLogLikelihood(tried, steps).value());
    }
    picture.line(points, {ink::tide, Dash::solid, 2}, "with the sum of both variances kept");
    picture.marks({{std::log10(fit.variances.drift / fit.variances.observation), fit.logLikelihood}}, Mark::square, ink::call,
                  "likeliest: 15098.5 and 1469.2");
    return picture;
}

Picture loessPicture()
{
    Picture picture("Twenty-one points and the curve through them.", axis("x", 0, 20, 5), axis("y", 0, 250, 50));
    Points seen;
    for (const Point& point : loessExample)
        seen.emplace_back(point.x, point.y);
    picture.marks(seen, Mark::hollow, ink::soft, "points");
    struct Span { int neighbours; Stroke stroke; };
    for (const auto& [neighbours, stroke] : {Span{7, {ink::tide, Dash::solid, 2}}, Span{14, {ink::right, Dash::dashed, 1.6}}}) {
        Points curve;
        for (int i = 0; i <= 180; ++i) {
            const double x = loessExample.front().x + (loessExample.back().x - loessExample.front().x) * i / 180;
            curve.emplace_back(x, loessAt(loessExample, {.neighbours = neighbours, .degree = 1}, x).value());
        }
        picture.line(curve, stroke, std::to_string(neighbours) + " neighbours, straight lines");
    }
    return picture;
}

/// CDC growth charts 2000, weight of boys at 9.5 months.
Picture lms()
{
    constexpr Lms skewed{.power = -0.1600954, .median = 9.476500305, .variation = 0.11218624};
    Picture picture("z of a weight under a skewed distribution.", axis("weight, kg", 6, 14, 2), axis("z", -4, 4, 2));
    Points points, straight;
    for (int i = 0; i <= 80; ++i) {
        const double weight = 6 + 0.1 * i;
        points.emplace_back(weight, lmsScore(skewed, weight).value());
        straight.emplace_back(weight, lmsScore({1, skewed.median, skewed.variation}, weight).value());
    }
    picture.line(straight, {ink::edge, Dash::dotted, 1.6}, "if it were not skewed (L = 1)");
    picture.line(points, {ink::tide, Dash::solid, 2}, "boys of 9.5 months, L = -0.16");
    picture.marks({{9.7, lmsScore(skewed, 9.7).value()}}, Mark::square, ink::call, "9.7 kg: z 0.207");
    return picture;
}

}  // namespace

std::vector<Named> smoothingPictures()
{
    return {{"local-level", nilePicture(false)}, {"forecast", nilePicture(true)}, {"variances", variances()},
            {"loess", loessPicture()}, {"lms", lms()}};
}

}  // namespace ebbline::bench
