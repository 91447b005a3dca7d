#include "tests/bench/pictures/picture.h"
#include "tests/bench/pictures/published.h"

#include "core/statistics/hazard_ratio.h"
#include "core/statistics/least_squares.h"
#include "core/statistics/median_regression.h"
#include "core/statistics/paired_counts.h"
#include "core/statistics/quantile.h"
#include "core/statistics/shrinkage.h"
#include "core/statistics/welch.h"

#include <cmath>

namespace ebbline::bench {

namespace {

using namespace statistics;

/// Seven points of which one is wild.
const std::vector<Point> oneWild{{1, 1}, {2, 2}, {3, 3}, {4, 4}, {5, 5}, {6, 16}, {7, 7}};

Picture lines()
{
    Picture picture("One wild point moves the line of least squares and leaves that of the medians.", axis("x", 0, 8, 2), axis("y", 0, 18, 3));
    std::vector<std::vector<double>> rows;
    std::vector<double> values;
    Points seen;
    for (const Point& point : oneWild) {
        rows.push_back({point.x});
        values.push_back(point.y);
        seen.emplace_back(point.x, point.y);
    }
    const LineFit mean = leastSquares(oneWild).value();
    const std::vector<double> median = medianRegression(rows, values).value();
    picture.line({{0, mean.intercept}, {8, mean.intercept + 8 * mean.slope}}, {ink::right, Dash::dashed, 2}, "least squares");
    picture.line({{0, median[0]}, {8, median[0] + 8 * median[1]}}, {ink::tide, Dash::solid, 2}, "median regression");
    picture.marks(seen, Mark::round, ink::soft, "points, one of them wild");
    return picture;
}

/// NIST Statistical Reference Datasets, Misra1a.
Picture levellingOff()
{
    const std::vector<Point> points{{77.6, 10.07},  {114.9, 14.73}, {141.1, 17.94}, {190.8, 23.93}, {239.9, 29.61}, {289.0, 35.18}, {332.8, 40.02},
                                    {378.4, 44.82}, {434.8, 50.76}, {477.3, 55.05}, {536.8, 61.01}, {593.1, 66.40}, {689.1, 75.47}, {760.0, 81.78}};
    const LevellingOff fit = fitLevellingOff(points, 500, 1e-4).value();
    Picture picture("Fourteen points and the curve that levels off through them.", axis("x", 0, 4000, 1000), axis("y", 0, 250, 50));
    Points seen, curve;
    for (const Point& point : points)
        seen.emplace_back(point.x, point.y);
    for (int x = 0; x <= 4000; x += 40)
        curve.emplace_back(x, fit.top * (1 - std::exp(-fit.rate * x)));
    picture.across(fit.top, {ink::edge, Dash::dotted, 1.4}, "top: 239, four times beyond the last point");
    picture.line(curve, {ink::tide, Dash::solid, 2}, "top (1 - exp(-rate x))");
    picture.marks(seen, Mark::hollow, ink::soft, "points");
    return picture;
}

/// NIST/SEMATECH e-Handbook, section 7.2.6.2.
Picture quantiles()
{
    constexpr std::array wafers{95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610, 95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682};
    Picture picture("Three definitions of a quantile of twelve values: they part at the ends.", axis("p", 0, 1, 0.2, 1),
                    axis("quantile", 95.05, 95.20, 0.05, 2));
    struct Look { QuantileType type; Stroke stroke; const char* name; };
    for (const auto& [type, stroke, name] : {Look{QuantileType::weibull, {ink::left, Dash::dashed, 1.6}, "type 6: p (n + 1)"},
                                             Look{QuantileType::linear, {ink::right, Dash::dotted, 2}, "type 7: 1 + p (n - 1)"},
                                             Look{QuantileType::unbiased, {ink::tide, Dash::solid, 1.8}, "type 8: p (n + 1/3) + 1/3"}}) {
        Points points;
        for (int i = 0; i <= 200; ++i)
            points.emplace_back(i / 200.0, quantile(wafers, i / 200.0, type).value());
        picture.line(points, stroke, name);
    }
    return picture;
}

Picture changes()
{
    Picture picture("Twenty of the same subjects changed their answer: how uneven that must be.", axis("of twenty, changed from yes to no", 0, 20, 5),
                    axis("two-sided probability", 0, 1, 0.2, 1));
    Points exact, large;
    for (long changed = 0; changed <= 20; ++changed) {
        const McNemar found = mcNemar(changed, 20 - changed).value();
        exact.emplace_back(static_cast<double>(changed), found.exact);
        large.emplace_back(static_cast<double>(changed), found.probability);
    }
    picture.across(0.05, {ink::edge, Dash::dotted, 1.2}, "5 %");
    picture.marks(exact, Mark::round, ink::tide, "exact");
    picture.marks(large, Mark::cross, ink::right, "by chi-square, without correction");
    return picture;
}

/// Cushny and Peebles 1905 as R's `sleep`.
Picture means()
{
    constexpr std::array first{.7, -1.6, -.2, -1.2, -.1, 3.4, 3.7, .8, 0., 2.};
    constexpr std::array second{1.9, .8, 1.1, .1, -.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    const Welch found = welch(first, second).value();
    Picture picture("Hours of sleep gained under two drugs, and the difference of the means with its limits.",
                    axis("hours", -4, 6, 2), {"", 0, 4, {{3, "first"}, {2, "second"}, {1, "difference"}}});
    Points one, two;
    for (const double value : first)
        one.emplace_back(value, 3);
    for (const double value : second)
        two.emplace_back(value, 2);
    picture.upright(0, {ink::edge, Dash::dotted, 1.2});
    picture.marks(one, Mark::hollow, ink::left, "first drug");
    picture.marks(two, Mark::square, ink::right, "second drug");
    picture.reach(1, found.limits.low, found.limits.high, {ink::tide, Dash::solid, 2});
    picture.marks({{found.difference, 1}}, Mark::round, ink::tide, "difference, 95 %");
    return picture;
}

Picture hazards()
{
    Picture picture("How many times faster the controls relapse, by the weeks that are known.", axis("weeks", 0, 35, 5), axis("ratio of hazards", 0, 14, 2));
    Points ratio, low, high;
    for (int week = 6; week <= 35; ++week) {
        std::vector<Followed> first = treatedWeeks, second = controlWeeks;
        for (auto* const group : {&first, &second})
            for (Followed& one : *group)
                if (one.time > week)
                    one = {static_cast<double>(week), false};
        if (const auto found = hazardRatio(first, second)) {
            ratio.emplace_back(week, found->ratio);
            low.emplace_back(week, found->limits.low);
            high.emplace_back(week, found->limits.high);
        }
    }
    picture.band(low, high, ink::sand, "95 % limits");
    picture.line(ratio, {ink::tide, Dash::solid, 2}, "hazard of the controls to that of the treated");
    picture.across(1, {ink::edge, Dash::dotted, 1.4}, "no difference");
    return picture;
}

Picture drawnTogether()
{
    std::vector<double> averages;
    double mean = 0;
    for (const int hits : {18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7}) {
        averages.push_back(hits / 45.0);
        mean += hits / 45.0 / 18;
    }
    const Shrinkage together = shrunkMeans(averages, mean * (1 - mean) / 45).value();
    Picture picture("Eighteen batting averages, each alone and drawn towards their mean.", axis("player", 0, 19, 3), axis("average", 0.1, 0.45, 0.05, 2));
    Points own, drawn;
    for (std::size_t i = 0; i < averages.size(); ++i) {
        const double x = static_cast<double>(i + 1);
        own.emplace_back(x, averages[i]);
        drawn.emplace_back(x, together.shrunk[i]);
    }
    picture.across(together.mean, {ink::edge, Dash::dotted, 1.2}, "mean of all");
    picture.marks(own, Mark::hollow, ink::right, "alone, 45 times at bat");
    picture.marks(drawn, Mark::round, ink::tide, "drawn together, factor 0.21");
    return picture;
}

}  // namespace

std::vector<Named> regressionPictures()
{
    return {{"lines", lines()}, {"levelling-off", levellingOff()}, {"quantiles", quantiles()}, {"changes", changes()},
            {"two-means", means()}, {"hazards", hazards()}, {"drawn-together", drawnTogether()}};
}

}  // namespace ebbline::bench
